// Lengths as whole ticks, the stops of the back gauge, and the cuts worth trying at them.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axisOf } from '../../../../shared/layout/guillotine/axis.ts';
import {
  areTooMany,
  gapsOf,
  lastStop,
  partings,
  plainStopsFor,
  stopFinder,
  stopsFor,
  sumsOf,
} from '../../../../shared/layout/guillotine/stops.ts';
import { needed, offered, offeredRegion } from '../../../../shared/layout/guillotine/ticks.ts';
import { POINTS_PER } from '../../../../shared/units/length.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';

const stops = (...at: number[]) => Float64Array.from(at);
const many = Number.POSITIVE_INFINITY;

describe('ticks', () => {
  it('make the lengths that people type whole', () => {
    // 1 pt is 1,016,000 ticks, so 1 mm is 2,880,000 and 1 in 73,152,000.
    expect(needed(1)).toBe(1_016_000);
    expect(needed(POINTS_PER.mm)).toBe(2_880_000);
    expect(needed(POINTS_PER.mm / 1000)).toBe(2880);
    expect(needed(POINTS_PER.in)).toBe(73_152_000);
    expect(needed(POINTS_PER.in / 128)).toBe(571_500);
    expect(needed(0.1 + 0.2)).toBe(304_800);
  });

  it('round a piece up and never down', () => {
    expect(needed(1.5 / 1_016_000)).toBe(2);
    expect(needed(1.01 / 1_016_000)).toBe(2);
  });

  it('grant the tolerance to the room once, and no more than it', () => {
    expect(offered(0)).toBe(10_159);
    expect(offered(100)).toBe(101_610_159);
    expect(offeredRegion({ w: 1, h: 2 })).toEqual({ w: 1_026_159, h: 2_042_159 });
  });
});

describe('stops', () => {
  it('are all sums of the lengths within the room', () => {
    expect(
      sumsOf(
        [
          { length: 3, copies: many },
          { length: 5, copies: many },
        ],
        11,
      ),
    ).toEqual(stops(0, 3, 5, 6, 8, 9, 10, 11));
    expect(sumsOf([], 11)).toEqual(stops(0));
  });

  it('count no more copies in line than there are', () => {
    expect(
      sumsOf(
        [
          { length: 3, copies: 2 },
          { length: 5, copies: 1 },
        ],
        20,
      ),
    ).toEqual(stops(0, 3, 5, 6, 8, 11));
  });

  it('are given up where there are more than can be worked with', () => {
    const runs = [{ length: 1, copies: many }];
    expect(sumsOf(runs, 9, 10)).toHaveLength(10);
    expect(sumsOf(runs, 9, 9)).toBeUndefined();
  });

  it('run across and up', () => {
    const ways = [{ w: 2, h: 3 }];
    expect(stopsFor(ways, { w: 5, h: 7 })).toEqual({ across: stops(0, 2, 4), up: stops(0, 3, 6) });
    expect(stopsFor([{ w: 2, h: 3, copies: 1 }], { w: 5, h: 7 })).toEqual({
      across: stops(0, 2),
      up: stops(0, 3),
    });
  });

  it('can be thinned to the ends of plain rows', () => {
    const ways = [
      { w: 2, h: 3 },
      { w: 3, h: 2 },
    ];
    expect(plainStopsFor(ways, { w: 8, h: 7 })).toEqual({
      across: stops(0, 2, 3, 4, 6, 8),
      up: stops(0, 2, 3, 4, 6),
    });
  });

  it('are too many when a search over them all would take more than about a second', () => {
    const square = (n: number) => ({ across: new Float64Array(n), up: new Float64Array(n) });
    expect(areTooMany(square(669))).toBe(false);
    expect(areTooMany(square(670))).toBe(true);
    expect(areTooMany({ across: new Float64Array(100), up: new Float64Array(2400) })).toBe(false);
    expect(areTooMany({ across: new Float64Array(100), up: new Float64Array(2401) })).toBe(true);
  });

  it('are found by the length they lie within', () => {
    const at = stops(0, 3, 5, 9);
    expect([0, 2.9, 3, 4, 8.9, 9, 50].map((length) => lastStop(at, length))).toEqual([0, 0, 1, 1, 2, 3, 3]);
  });

  it('leave gaps in which pieces can be laid in line', () => {
    const at = stops(0, 3, 5, 9);
    const gaps = gapsOf(at);
    const gap = (to: number, from: number) => at[gaps[to * 4 + from]!];
    expect([gap(3, 0), gap(3, 1), gap(3, 2), gap(3, 3)]).toEqual([9, 5, 3, 0]);
    expect([gap(2, 0), gap(2, 1), gap(1, 0), gap(0, 0)]).toEqual([5, 0, 3, 0]);
  });
});

describe('cuts worth trying', () => {
  const pairs = (at: Float64Array, index: number) => {
    const found = partings(at, index);
    return Array.from({ length: found.length / 2 }, (_, k) => [at[found[2 * k]!], at[found[2 * k + 1]!]]);
  };

  it('part a length into two that nothing more can be added to', () => {
    expect(pairs(stops(0, 3, 5, 6, 8, 9, 10, 11), 7)).toEqual([
      [3, 8],
      [5, 6],
    ]);
    expect(pairs(stops(0, 3, 6, 9), 3)).toEqual([[3, 6]]);
    expect(pairs(stops(0, 3, 6), 2)).toEqual([[3, 3]]);
  });

  it('are none where only one piece fits', () => {
    expect(pairs(stops(0, 3, 5), 2)).toEqual([]);
    expect(pairs(stops(0, 3), 1)).toEqual([]);
    expect(pairs(stops(0), 0)).toEqual([]);
  });

  it('take the longer of two near stops where the far one leaves room for it', () => {
    // 3 and 4 both leave 7 beside them, so only 4 is worth a cut.
    expect(pairs(stops(0, 3, 4, 7, 11), 4)).toEqual([[4, 7]]);
  });
});

describe('the last stop within a length', () => {
  it('is found by table as surely as by halving', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 90_000 }), { minLength: 1, maxLength: 60 }),
        fc.array(fc.integer({ min: 0, max: 90_000 })),
        (marks, lengths) => {
          const stops = Float64Array.from([0, ...marks]).sort();
          const find = stopFinder(stops);
          for (const length of [...lengths, ...stops]) expect(find(length)).toBe(lastStop(stops, length));
        },
      ),
      drawnCases(100),
    );
  });
});

describe('an axis', () => {
  const runs = [
    { length: 30, copies: many },
    { length: 41, copies: many },
  ];

  it('has every stop where they are few, and is exact', () => {
    const axis = axisOf(runs, 100, 50);
    expect(axis.exact).toBe(true);
    expect(axis.stops).toEqual(stops(0, 30, 41, 60, 71, 82, 90));
    expect(axis.partings.map((list) => list.length / 2)).toEqual([0, 0, 0, 1, 1, 1, 2]);
    expect([axis.endOf(30), axis.sizeOf(30), axis.endOf(75), axis.sizeOf(75)]).toEqual([1, 1, 4, 4]);
  });

  it('counts in a coarser unit where they are many, so that pieces only get smaller and room only larger', () => {
    // 100 in at most 5 units of 20: the pieces take one and two of them.
    const axis = axisOf(runs, 100, 5);
    expect(axis.exact).toBe(false);
    expect(axis.stops).toEqual(stops(0, 1, 2, 3, 4, 5));
    expect([axis.sizeOf(30), axis.sizeOf(41), axis.sizeOf(71)]).toEqual([1, 2, 3]);
    // Beyond 71 there is room for one unit of 20, as there is beyond the fourth stop.
    expect([axis.endOf(0), axis.endOf(30), axis.endOf(71), axis.endOf(100)]).toEqual([0, 2, 4, 5]);
  });
});
