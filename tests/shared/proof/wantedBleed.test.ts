import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Edges, Size } from '../../../shared/geometry/space.ts';
import { type ArrangeInput, arrange } from '../../../shared/layout/arrange.ts';
import type { Bleeding } from '../../../shared/layout/bleeding.ts';
import { leastReach } from '../../../shared/layout/bleedReach.ts';
import { wantedBleeds } from '../../../shared/proof/wantedBleed.ts';
import { arrangeInputs } from '../../kit/arrangeInputs.ts';

const MM = 72 / 25.4;
const SHEET = { w: 500, h: 700 };
/** What is wanted all along each edge of the first. */
function wantedBleed(one: Bleeding<'side1'>, others: readonly Bleeding<'side1'>[], sheet: Size): Edges {
  const [first] = wantedBleeds([one, ...others], sheet);
  return leastReach(first!);
}

const at = (x: number, y: number, w = 100, h = 60, bleed = 9) => ({ trim: { x, y, w, h }, bleed });

describe('The bleed that must be seen', () => {
  const one = at(200, 300);
  const all = { left: 9, right: 9, top: 9, bottom: 9 };

  it('is the whole bleed of a piece that lies alone', () => {
    expect(wantedBleed(one, [], SHEET)).toEqual(all);
  });

  it('ends at the edge of the sheet', () => {
    expect(wantedBleed(at(4, 300), [], SHEET)).toEqual({ ...all, left: 4 });
    expect(wantedBleed(at(395, 300), [], SHEET)).toEqual({ ...all, right: 5 });
    expect(wantedBleed(at(200, 3), [], SHEET)).toEqual({ ...all, bottom: 3 });
    expect(wantedBleed(at(200, 638), [], SHEET)).toEqual({ ...all, top: 2 });
    expect(wantedBleed(at(-2, 300), [], SHEET).left).toBe(0);
    expect(wantedBleed(at(200, 642), [], SHEET).top).toBe(0);
    expect(wantedBleed(at(402, 300), [], SHEET).right).toBe(0);
    expect(wantedBleed(at(200, -1), [], SHEET).bottom).toBe(0);
  });

  it('ends in the middle of a gutter too narrow for two bleeds', () => {
    expect(wantedBleed(one, [at(310, 300)], SHEET)).toEqual({ ...all, right: 5 });
    expect(wantedBleed(one, [at(86, 300)], SHEET)).toEqual({ ...all, left: 7 });
    expect(wantedBleed(one, [at(200, 372)], SHEET)).toEqual({ ...all, top: 6 });
    expect(wantedBleed(one, [at(200, 232)], SHEET)).toEqual({ ...all, bottom: 4 });
  });

  it('is none where two pieces share a cut', () => {
    expect(wantedBleed(one, [at(300, 300)], SHEET)).toEqual({ ...all, right: 0 });
  });

  it('is whole where the gutter has room for both bleeds', () => {
    expect(wantedBleed(one, [at(318, 300)], SHEET)).toEqual(all);
    expect(wantedBleed(one, [at(314, 300, 100, 60, 4)], SHEET)).toEqual(all);
  });

  it('is not limited by a piece that lies farther along', () => {
    expect(wantedBleed(one, [at(310, 400)], SHEET)).toEqual(all);
    expect(wantedBleed(one, [at(40, 300)], SHEET)).toEqual(all);
  });

  it('is whole along the edges towards a neighbour across the corner', () => {
    expect(wantedBleed(one, [at(310, 372)], SHEET)).toEqual(all);
  });

  it('has a step where a neighbour faces part of an edge', () => {
    // 10 pt above stands a card over the left 40 pt; beside it, its own bleed of 9 pt begins where it stands.
    const [first] = wantedBleeds([one, at(140, 370)], SHEET);
    expect(first!.top).toEqual([
      { from: 0, to: 45, reach: 5 },
      { from: 45, to: 100, reach: 9 },
    ]);
    expect(first!.left).toEqual([{ from: 0, to: 60, reach: 9 }]);
  });

  it('is none at a shared cut that rounding has made a hair less than one', () => {
    expect(wantedBleed(one, [at(300 - 1e-9, 300)], SHEET)).toEqual({ ...all, right: 0 });
    expect(wantedBleed(one, [at(200, 240 + 1e-9)], SHEET).bottom).toBeCloseTo(0, 6);
  });

  it('is none at any cut that two pieces of a laid out sheet share', () => {
    const card: ArrangeInput = {
      sheet: { w: 320 * MM, h: 450 * MM },
      unprintable: { lead: 5 * MM, tail: 5 * MM, left: 5 * MM, right: 5 * MM },
      work: { style: 'work-and-turn' },
      gutter: 0,
      centring: { across: 'centre', along: 'centre' },
      unit: 'mm',
      designs: [
        {
          name: 'Card',
          trim: { w: 85 * MM, h: 55 * MM },
          bleed: 3 * MM,
          lies: 'either',
          quantity: 100,
          turned: 'head-to-head',
          hasBack: true,
        },
      ],
    };
    expect(sharedCuts(card)).toBeGreaterThan(20);
    const anyInput = arrangeInputs({
      sheetFrom: 9,
      mostDesigns: 2,
      centring: fc.constant({ across: 'centre', along: 'centre' }),
    });
    fc.assert(fc.property(anyInput, (input) => void sharedCuts({ ...input, gutter: 0 })));
  });
});

/** Finds edges whose middle touches another trim, and expects no bleed to be wanted there. */
function sharedCuts(input: ArrangeInput): number {
  const laid = arrange(input);
  if (!laid.ok) return 0;
  const placed = laid.value.positions.map(({ piece, trim }) => ({
    trim,
    bleed: input.designs.find(({ name }) => name === piece)!.bleed,
  }));
  let cuts = 0;
  for (const one of placed) {
    const { x, y, w, h } = one.trim;
    const others = placed.filter((other) => other !== one);
    const wanted = wantedBleed(one, others, input.sheet);
    const outside = {
      left: { x: x - 0.05, y: y + h / 2 },
      right: { x: x + w + 0.05, y: y + h / 2 },
      bottom: { x: x + w / 2, y: y - 0.05 },
      top: { x: x + w / 2, y: y + h + 0.05 },
    };
    for (const edge of ['left', 'right', 'bottom', 'top'] as const) {
      const p = outside[edge];
      if (!others.some(({ trim: t }) => p.x > t.x && p.x < t.x + t.w && p.y > t.y && p.y < t.y + t.h))
        continue;
      cuts += 1;
      expect(wanted[edge]).toBeLessThan(0.02);
    }
  }
  return cuts;
}
