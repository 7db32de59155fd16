import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS, lying } from '../../../shared/geometry/head.ts';
import { layInto } from '../../../shared/geometry/lie.ts';
import { edgeOfTurn } from '../../../shared/geometry/perfecting.ts';
import { apply, applyToRect } from '../../../shared/geometry/transform.ts';
import { numberFrom } from '../../kit/anyNumber.ts';

describe('something upright, laid into its room', () => {
  const size = { w: 5, h: 7 };

  it('fills that room whatever its head', () => {
    const lengths = numberFrom(-1000, 1000);
    fc.assert(
      fc.property(lengths, lengths, fc.constantFrom(...HEADS), (x, y, head) => {
        const room = { x, y, ...lying(size, head) };
        const laid = applyToRect(layInto(room, head), { x: 0, y: 0, ...size });
        for (const key of ['x', 'y', 'w', 'h'] as const) expect(laid[key]).toBeCloseTo(room[key], 9);
      }),
    );
  });

  it.each([
    [0, 'up', { x: 102.5, y: 207 }],
    [90, 'to the left', { x: 100, y: 202.5 }],
    [180, 'down', { x: 102.5, y: 200 }],
    [270, 'to the right', { x: 107, y: 202.5 }],
  ] as const)('has its head, turned by %i degrees counter-clockwise, %s', (head, _where, middleOfHead) => {
    const room = { x: 100, y: 200, ...lying(size, head) };
    expect(apply(layInto(room, head), { x: 2.5, y: 7 })).toEqual(middleOfHead);
  });

  it('is turned and not mirrored', () => {
    for (const head of HEADS) {
      const { a, b, c, d } = layInto({ x: 0, y: 0, w: 1, h: 1 }, head);
      expect(a * d - b * c).toBe(1);
    }
  });
});

describe('a printer that turns the sheet itself', () => {
  it.each([
    ['side-to-side', { w: 792, h: 1224 }, 'long'],
    ['end-to-end', { w: 792, h: 1224 }, 'short'],
    ['side-to-side', { w: 1224, h: 792 }, 'short'],
    ['end-to-end', { w: 1224, h: 792 }, 'long'],
    ['side-to-side', { w: 792, h: 792 }, 'long'],
    ['end-to-end', { w: 792, h: 792 }, 'short'],
  ] as const)('turns it %s, for %o, about its %s edge', (turn, sheet, edge) => {
    expect(edgeOfTurn(turn, sheet)).toBe(edge);
  });
});
