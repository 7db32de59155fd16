// Several sizes laid part by part: right layouts, found with little work, and what ends the search that comes after.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellsOf } from '../../../../shared/layout/guillotine/cutTree.ts';
import { fewStops } from '../../../../shared/layout/guillotine/fewStops.ts';
import { fitTogether } from '../../../../shared/layout/guillotine/fitTogether.ts';
import { searchLimited } from '../../../../shared/layout/guillotine/limitedSearch.ts';
import { axesOf, type LimitedTask, valueOfAll } from '../../../../shared/layout/guillotine/limitedTask.ts';
import { layPartByPart } from '../../../../shared/layout/guillotine/partByPart.ts';
import { searchPrices } from '../../../../shared/layout/guillotine/prices.ts';
import { sizesOf } from '../../../../shared/layout/guillotine/sizes.ts';
import { offeredRegion } from '../../../../shared/layout/guillotine/ticks.ts';
import type { Builder } from '../../../../shared/layout/guillotine/unlimitedSearch.ts';
import { POINTS_PER } from '../../../../shared/units/length.ts';
import { isCuttable, liesClean } from '../../../kit/cuttable.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';

type Sizes = readonly (readonly [w: number, h: number])[];

const sizesIn = (region: { w: number; h: number }, cells: Sizes) =>
  sizesOf(
    cells.map(([w, h]) => ({ cell: { w, h }, lies: 'either' as const })),
    offeredRegion(region),
  );

/** All copies, each worth its area, every cell lying either way. Lengths in mm. */
function taskOf(w: number, h: number, cells: Sizes, copies: readonly number[]): LimitedTask {
  const mm = POINTS_PER.mm;
  const region = { w: w * mm, h: h * mm };
  const room = offeredRegion(region);
  const values = cells.map(([a, b]) => Math.round(10 * a * b));
  const inPoints = cells.map(([a, b]) => [a * mm, b * mm] as const);
  const ways = sizesIn(region, inPoints).flatMap((size, kind) =>
    size.ways.map((way) => ({ ...way, kind, value: values[kind] as number })),
  );
  return { room, ways, values, copies };
}

const laid: Builder<true> = { block: () => true, join: () => true };

describe('a few stops', () => {
  it('hold the rows of each length from either edge, and no gap is wide', () => {
    const stops = fewStops(
      [
        { length: 300, copies: 2 },
        { length: 70, copies: 9 },
        { length: 51, copies: 3 },
        { length: 83, copies: 5 },
      ],
      1000,
    );
    for (const stop of [0, 300, 600, 70, 630, 700, 400, 930, 370, 1000]) expect(stops).toContain(stop);
    expect(stops).not.toContain(900);
    expect(stops).toHaveLength(80);
    expect(Math.max(...stops.slice(1).map((stop, k) => stop - stops[k]!))).toBeLessThan(40);
  });

  it('are all of them where they are few, and never too many', () => {
    expect([...fewStops([{ length: 2, copies: 9 }], 5)]).toEqual([0, 2, 4]);
    const many = Array.from({ length: 40 }, (_, k) => ({ length: 1001 + 17 * k, copies: 50 }));
    expect(fewStops(many, 100_000)).toHaveLength(160);
  });
});

describe('several sizes laid part by part', () => {
  it('are all there, lie clean and can be cut, whatever is found', () => {
    const sides = fc.integer({ min: 2, max: 12 });
    const kinds = fc.array(fc.tuple(sides, sides, fc.integer({ min: 1, max: 9 })), {
      minLength: 1,
      maxLength: 4,
    });
    const room = fc.integer({ min: 12, max: 40 });
    let found = 0;
    fc.assert(
      fc.property(kinds, room, room, (drawn, w, h) => {
        const sizes = sizesIn(
          { w, h },
          drawn.map(([a, b]) => [a, b]),
        );
        const copies = sizes.map(({ members }) => drawn[members[0]!.kind]![2]);
        const { tree } = layPartByPart(sizes, copies, offeredRegion({ w, h }));
        if (tree === undefined) return;
        found++;
        const cells = cellsOf(tree);
        expect(copies.map((_, kind) => cells.filter((cell) => cell.kind === kind).length)).toEqual(copies);
        expect(isCuttable(cells)).toBe(true);
        expect(liesClean(cells, { w, h })).toBe(true);
        for (const { kind, w: width, onItsSide } of cells) {
          expect(width).toBe(onItsSide ? sizes[kind]!.cell.h : sizes[kind]!.cell.w);
        }
      }),
      drawnCases(200),
    );
    expect(found).toBeGreaterThan(40);
  });

  // Orders on which the search by boxes alone gave up after a million pairs, and what this looks at and a tenth more.
  it.each([
    [733, 733, [16, 29, 30], [99.5, 102.9], [102.9, 60.7], [58.3, 96.7], 423_000],
    [509, 1199, [11, 15, 17], [183, 175], [57.5, 109.5], [81.5, 84.5], 523_000],
  ] as const)('find place for all on %s x %s', (w, h, copies, a, b, c, most) => {
    const sizes = sizesIn({ w, h }, [a, b, c]);
    const { tree, looked } = layPartByPart(sizes, copies, offeredRegion({ w, h }));
    const cells = tree === undefined ? [] : cellsOf(tree);
    expect(cells).toHaveLength(copies.reduce((sum, n) => sum + n, 0));
    expect(isCuttable(cells)).toBe(true);
    expect(liesClean(cells, { w, h })).toBe(true);
    expect(looked).toBeLessThan(most);
    expect(fitTogether(sizes, copies, offeredRegion({ w, h }))).toBeTypeOf('object');
  });
});

describe('the search by boxes', () => {
  it('ends as soon as all copies have found their place', () => {
    const task = taskOf(
      411.5,
      823,
      [
        [152.5, 104.7],
        [134.2, 149.4],
        [66.8, 61.8],
      ],
      [10, 7, 2],
    );
    const effort = { stops: 160, pricing: 200e6, pairs: 2e6, boxes: 100_000 };
    const { found, proven, looked } = searchLimited(task, valueOfAll(task), effort, laid).run();
    expect([found?.value, proven]).toEqual([valueOfAll(task), true]);
    expect(looked).toBeLessThan(100_000);
  });

  // With half as many stops it gave up on each after two million pairs, all but the second, which took 1.7 million.
  it.each([
    [767.89, 521.89, [84, 121], [195, 58], [92, 99], [8, 21, 8], 75_000],
    [982.89, 809.89, [130, 189], [171, 194], [294, 65], [8, 11, 12], 1],
    [690.89, 1229.89, [112, 114], [104, 240], [228, 143], [20, 17, 5], 8_200],
    [588.89, 1365.89, [85, 289], [62, 180], [213, 170], [17, 28, 2], 46_000],
  ] as const)(
    'counts finely enough to show that so many do not fit %s x %s',
    (w, h, a, b, c, copies, most) => {
      const task = taskOf(w, h, [a, b, c], copies);
      const effort = { stops: 320, pricing: 100e6, pairs: 2e6, boxes: 100_000 };
      const search = searchLimited(task, valueOfAll(task), effort, laid);
      expect(search.isRuledOut(2)).toBe(false);
      const { found, proven, looked } = search.run();
      expect([found, proven]).toEqual([undefined, true]);
      expect(looked).toBeLessThan(most);
      const mm = POINTS_PER.mm;
      const region = { w: w * mm, h: h * mm };
      const inPoints = [a, b, c].map(([x, y]) => [x * mm, y * mm] as const);
      expect(fitTogether(sizesIn(region, inPoints), copies, offeredRegion(region))).toBe('cannot');
    },
  );

  it('is not begun where a few prices show that the copies are too many', () => {
    const cells = [
      [150, 147],
      [70, 98],
      [138, 243],
    ] as const;
    const task = taskOf(1083, 751, cells, [18, 5, 11]);
    const upright = { ...task, ways: task.ways.filter((way) => way.kind !== 2 || !way.onItsSide) };
    const all = valueOfAll(upright) - 1e-6;
    const { bound } = searchPrices(upright, axesOf(upright, 160), laid, {
      toBeat: all,
      above: () => Infinity,
    })(20);
    expect(bound).toBeLessThan(all);
  });
});
