import { describe, expect, it } from 'vitest';
import { checkArrangement } from '../../../shared/layout/check.ts';
import type { Position } from '../../../shared/layout/position.ts';

const designs = [{ name: 'Supper', bleed: 9, turned: 'head-to-head' as const, hasBack: true }];
const turned = {
  size: { w: 792, h: 1224 },
  unprintable: { lead: 14.4, tail: 21.6, left: 9, right: 9 },
  work: { style: 'work-and-turn' as const },
};
const backed = { ...turned, work: { style: 'work-and-back' as const, turn: 'side-to-side' as const } };

const at = (x: number, y: number, face: 'front' | 'back' = 'front'): Position => ({
  piece: 'Supper',
  face,
  trim: { x, y, w: 360, h: 504 },
  head: 0,
});

/** Two fronts on the left, their backs on the right: 27 pt from each side. */
const clean = [at(27, 99), at(405, 99, 'back'), at(27, 621), at(405, 621, 'back')];

const check = (arrangement: readonly Position[], sheet: Parameters<typeof checkArrangement>[2] = turned) =>
  checkArrangement(arrangement, designs, sheet, 'in');

describe('checking an arrangement', () => {
  it('finds nothing in four up, work-and-turn, with equal side margins', () => {
    expect(check(clean)).toEqual([]);
  });

  it('says which piece runs off the sheet, before anything else of it', () => {
    expect(check([at(600, 99)], backed)).toEqual([
      { kind: 'off-sheet', positions: [0], message: 'Position 1 ("Supper", front) runs off the sheet.' },
    ]);
  });

  it('says which piece lies where the printer cannot print', () => {
    expect(check([at(8, 99)], backed)).toEqual([
      {
        kind: 'trim-unprintable',
        positions: [0],
        message:
          'Position 1 ("Supper", front) lies partly where the printer cannot print, on one side of the sheet or the other.',
      },
    ]);
    expect(check([at(8, 99)], { ...backed, work: { style: 'simplex' } })[0]?.message).toBe(
      'Position 1 ("Supper", front) lies partly where the printer cannot print.',
    );
  });

  it('says whose bleed the printer cannot print', () => {
    expect(check([at(17, 99)], backed)).toEqual([
      {
        kind: 'bleed-unprintable',
        positions: [0],
        message:
          'Position 1 ("Supper", front) has bleed where the printer cannot print, on one side of the sheet or the other.',
      },
    ]);
    expect(check([at(18, 99)], backed)).toEqual([]);
  });

  it('counts the border of the second pass as well', () => {
    const wideRight = { ...backed, unprintable: { ...backed.unprintable, right: 30 } };
    expect(check([at(27, 99)], wideRight).map((f) => f.kind)).toEqual(['trim-unprintable']);
    expect(check([at(27, 99)], { ...wideRight, work: { style: 'simplex' } })).toEqual([]);
  });

  it('names both pieces that lie over one another, once', () => {
    expect(check([at(27, 99), at(300, 99)], backed).filter((f) => f.kind === 'overlap')).toEqual([
      {
        kind: 'overlap',
        positions: [0, 1],
        message: 'Position 1 ("Supper", front) lies over Position 2 ("Supper", front).',
      },
    ]);
  });

  it('says how much of a bleed is left beside a near neighbour', () => {
    expect(check([at(30, 99), at(399, 99)], backed)).toEqual([
      {
        kind: 'bleed-clipped',
        positions: [0],
        message:
          'Position 1 ("Supper", front) keeps only part of its 0.125 in bleed, because a neighbour is too near: 0.063 in at the right edge.',
      },
      {
        kind: 'bleed-clipped',
        positions: [1],
        message:
          'Position 2 ("Supper", front) keeps only part of its 0.125 in bleed, because a neighbour is too near: 0.063 in at the left edge.',
      },
    ]);
    // The second stands half beside the first; the two columns are 9 pt, the two bleeds 18 pt.
    const [low, high] = check([at(30, 99), at(399, 400)], backed).filter((f) => f.kind === 'bleed-clipped');
    expect(low?.message).toContain(': 0.063 in at part of the right edge.');
    expect(high?.message).toContain(': 0.063 in at part of the left edge.');
    expect(check([at(27, 90), at(27, 90 + 504 + 9)], backed).map((f) => f.kind)).toEqual([
      'bleed-clipped',
      'bleed-clipped',
    ]);
  });

  it('misses the partner of a piece that has been moved alone', () => {
    const [first, ...rest] = clean;
    const moved = [{ ...first!, trim: { ...first!.trim, y: 90 } }, ...rest];
    expect(check(moved).map((f) => [f.kind, f.positions])).toEqual([
      ['no-partner', [0]],
      ['no-partner', [1]],
    ]);
    expect(check(moved)[0]?.message).toBe(
      'Position 1 ("Supper", front) has no back behind it when the sheet is turned side-to-side.',
    );
  });

  it('misses a partner with the wrong head or the wrong face', () => {
    const wrongHead = clean.map((p, i) => (i === 1 ? { ...p, head: 180 as const } : p));
    expect(check(wrongHead).map((f) => f.positions)).toEqual([[0], [1]]);
    const wrongFace = clean.map((p, i) => (i === 1 ? { ...p, face: 'front' as const } : p));
    expect(check(wrongFace).map((f) => f.positions)).toEqual([[0], [1]]);
  });

  it('measures unequal margins on the edges that register', () => {
    const shifted = clean.map((p) => ({ ...p, trim: { ...p.trim, x: p.trim.x + 4.5 } }));
    expect(check(shifted).at(-1)).toEqual({
      kind: 'margins-unequal',
      positions: [],
      message:
        'The left margin is 0.438 in and the right margin 0.313 in; they register the second pass and must be equal.',
    });
    const tumbled = { ...turned, work: { style: 'work-and-tumble' as const } };
    expect(check([at(27, 99), at(27, 650, 'back')], tumbled).at(-1)?.message).toBe(
      'The lead margin is 0.972 in and the tail margin 1.375 in; they register the second pass and must be equal.',
    );
  });

  it('asks for no partners where there are two forms, and finds nothing on an empty sheet', () => {
    expect(check([at(27, 99)], backed)).toEqual([]);
    expect(check([])).toEqual([]);
  });
});
