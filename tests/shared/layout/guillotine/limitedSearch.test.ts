// The parts of the search with limited copies: bounds by prices, boxes, the order in which they are joined, its work.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Boxes, type NewBox } from '../../../../shared/layout/guillotine/boxes.ts';
import { HopefulFirst } from '../../../../shared/layout/guillotine/hopefulFirst.ts';
import { type Effort, searchLimited } from '../../../../shared/layout/guillotine/limitedSearch.ts';
import { axesOf, type LimitedTask } from '../../../../shared/layout/guillotine/limitedTask.ts';
import { searchPrices } from '../../../../shared/layout/guillotine/prices.ts';
import {
  mostOutside,
  type Relaxation,
  relax,
  relaxedLayout,
} from '../../../../shared/layout/guillotine/relaxation.ts';
import { lastStop } from '../../../../shared/layout/guillotine/stops.ts';
import type { Builder } from '../../../../shared/layout/guillotine/unlimitedSearch.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';

/** A layout as the sizes and kinds it was made of. */
const spelt: Builder<string> = {
  block: (way, across, up) => `${way.kind}${way.onItsSide ? 's' : 'u'}${across}x${up}`,
  join: (way, [a, b]) => (way === 'stacked' ? `(${a} / ${b})` : `(${a} | ${b})`),
};

const EFFORT: Effort = { stops: 500, pricing: 5e8, pairs: 1e8, boxes: 300_000 };

function taskOf(
  w: number,
  h: number,
  kinds: readonly {
    readonly w: number;
    readonly h: number;
    readonly value: number;
    readonly copies: number;
  }[],
): LimitedTask {
  return {
    room: { w, h },
    ways: kinds.map((kind, k) => ({ w: kind.w, h: kind.h, onItsSide: false, kind: k, value: kind.value })),
    values: kinds.map((kind) => kind.value),
    copies: kinds.map((kind) => kind.copies),
  };
}

/** The OR-Library and g2kp instances; sources stand in each file. */
function published(name: string): LimitedTask {
  const file = new URL(`../../../reference/cutting/${name}.json`, import.meta.url);
  const { sheet, items } = JSON.parse(readFileSync(file, 'utf8'));
  const kinds = items.map((item: { l: number; w: number; value: number; max_copies?: number }) => ({
    w: item.l,
    h: item.w,
    value: item.value,
    copies: item.max_copies ?? 1,
  }));
  return taskOf(sheet[0], sheet[1], kinds);
}

describe('the most hopeful', () => {
  it('come out first, whatever the order they went in', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 20 }), { maxLength: 40 }), (hopes) => {
        const waiting = new HopefulFirst((a, b) => hopes[a]! > hopes[b]!);
        hopes.forEach((_, box) => {
          waiting.add(box);
        });
        const out: number[] = [];
        for (let box = waiting.take(); box !== undefined; box = waiting.take()) out.push(hopes[box]!);
        expect(out).toEqual(hopes.toSorted((a, b) => b - a));
        expect(waiting.take()).toBeUndefined();
      }),
    );
  });

  it('come out between those that go in later', () => {
    const waiting = new HopefulFirst((a, b) => a > b);
    for (const box of [3, 9, 1]) waiting.add(box);
    expect(waiting.take()).toBe(9);
    waiting.add(5);
    waiting.add(2);
    expect([waiting.take(), waiting.take(), waiting.take(), waiting.take()]).toEqual([5, 3, 2, 1]);
  });
});

describe('boxes', () => {
  const box = (w: number, h: number): NewBox => ({ w, h, value: w * h, worth: w * h, hope: 0, loss: 0 });

  it('use no more copies than there are', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 12 }),
        fc.array(fc.nat(), { maxLength: 60 }),
        (copies, picks) => {
          const boxes = new Boxes(copies);
          const pieces = copies.map((_, kind) => boxes.keepPiece(kind, kind, box(1, 1)));
          const used = copies.map(() => 0);
          let last: number | undefined;
          for (const pick of picks) {
            const kind = pick % copies.length;
            const piece = pieces[kind]!;
            if (last === undefined) {
              last = piece;
              used[kind] = 1;
              continue;
            }
            const enough = used[kind]! < copies[kind]!;
            expect(boxes.canJoin(last, piece)).toBe(enough);
            if (!enough) continue;
            used[kind] = used[kind]! + 1;
            last = boxes.keepJoin('stacked', last, piece, box(1, boxes.size + 1));
          }
        },
      ),
      drawnCases(200),
    );
  });

  it('are kept only where none that uses the same copies is as small', () => {
    const boxes = new Boxes([2, 2]);
    const a = boxes.keepPiece(0, 0, box(3, 5))!;
    const b = boxes.keepPiece(1, 1, box(2, 2))!;
    expect([a, b]).toEqual([0, 1]);
    expect(boxes.keepPiece(2, 0, box(5, 3))).toBe(2);
    expect(boxes.keepPiece(2, 0, box(3, 5))).toBeUndefined();
    expect(boxes.keepPiece(2, 0, box(4, 5))).toBeUndefined();
    expect(boxes.keepPiece(2, 0, box(3, 4))).toBe(3);
    expect(boxes.canJoin(a, b)).toBe(true);
    expect(boxes.keepJoin('side-by-side', a, b, box(3, 5))).toBe(4);
    expect(boxes.canJoin(b, a)).toBe(true);
    expect(boxes.keepJoin('stacked', b, a, box(3, 7))).toBeUndefined();
    expect([boxes.w[4], boxes.h[4], boxes.value[4], boxes.size]).toEqual([3, 5, 15, 5]);
  });

  it('know how they are laid', () => {
    const ways = [
      { w: 3, h: 5, onItsSide: false, kind: 0, value: 1 },
      { w: 5, h: 3, onItsSide: true, kind: 0, value: 1 },
    ];
    const boxes = new Boxes([9]);
    const upright = boxes.keepPiece(0, 0, box(3, 5))!;
    const onItsSide = boxes.keepPiece(1, 0, box(5, 3))!;
    boxes.canJoin(upright, onItsSide);
    const beside = boxes.keepJoin('side-by-side', upright, onItsSide, box(8, 5))!;
    boxes.canJoin(beside, onItsSide);
    const stacked = boxes.keepJoin('stacked', beside, onItsSide, box(8, 8))!;
    expect(boxes.layoutOf(stacked, ways, spelt)).toBe('((0u1x1 | 0s1x1) / 0s1x1)');
  });

  it('are kept in any number', () => {
    const boxes = new Boxes([5]);
    const far = 3000;
    // Each narrower and higher than all before it, so that all are kept.
    for (let n = 0; n < far; n++) {
      expect(
        boxes.keepPiece(0, 0, { w: far - n, h: n, value: n, worth: 2 * n, hope: 3 * n, loss: 4 * n }),
      ).toBe(n);
    }
    for (const n of [0, 1023, 1024, 2048, 2999]) {
      expect([boxes.w[n], boxes.h[n], boxes.value[n]]).toEqual([far - n, n, n]);
      expect([boxes.worth[n], boxes.hope[n], boxes.loss[n]]).toEqual([2 * n, 3 * n, 4 * n]);
    }
    expect(boxes.canJoin(0, 2999)).toBe(true);
    expect(boxes.layoutOf(2999, [{ w: 1, h: 1, onItsSide: false, kind: 0, value: 1 }], spelt)).toBe('0u1x1');
  });
});

describe('a relaxation', () => {
  const task = taskOf(10, 7, [
    { w: 5, h: 4, value: 9, copies: 9 },
    { w: 5, h: 3, value: 5, copies: 9 },
    { w: 2, h: 7, value: 4, copies: 9 },
  ]);
  /** The relaxation of the task when copies are worth so much, and how to read its tables. */
  const relaxed = (...worth: number[]) => {
    const axes = axesOf(task, 100);
    const rows = axes.up.stops.length;
    const parts = axes.across.stops.length * rows;
    const tables: Relaxation = { most: new Float64Array(parts), choices: new Int32Array(parts) };
    relax(task, axes, Float64Array.from(worth), tables);
    const at = (table: Float64Array, w: number, h: number) =>
      table[axes.across.endOf(w) * rows + axes.up.endOf(h)];
    return {
      most: (w: number, h: number) => at(tables.most, w, h),
      outside: (w: number, h: number) => at(mostOutside(axes, tables), w, h),
      layout: () => relaxedLayout(task, axes, tables, spelt),
    };
  };

  it('finds the most that unlimited copies yield, in the whole and in every part', () => {
    const { most, layout } = relaxed(9, 5, 4);
    expect([most(10, 7), most(10, 4), most(9, 7), most(4, 7), most(4, 6)]).toEqual([28, 18, 22, 8, 0]);
    expect(layout()).toBe('((1u1x1 / 0u1x1) | (1u1x1 / 0u1x1))');
  });

  it('leaves out what is worth nothing', () => {
    expect(relaxed(-1, 0, 4).most(10, 7)).toBe(20);
    const { most, layout } = relaxed(-1, 0, -1);
    expect(most(10, 7)).toBe(0);
    expect(layout()).toBeUndefined();
  });

  it('knows the most that can still be cut beside and on top of a box', () => {
    const { outside } = relaxed(9, 5, 4);
    // Outside 5 x 4: on top of it 5 x 3, and beside both 5 x 7.
    expect([outside(10, 7), outside(0, 0), outside(5, 4), outside(5, 7)]).toEqual([0, 28, 19, 14]);
    expect([outside(10, 4), outside(2, 7)]).toEqual([10, 18]);
  });

  it('lets a box grow to every stop, by the most that fits between', () => {
    const side = fc.integer({ min: 3, max: 30 });
    const kind = fc.record({
      w: side,
      h: side,
      value: fc.integer({ min: 1, max: 50 }),
      copies: fc.integer({ min: 1, max: 9 }),
    });
    const room = fc.integer({ min: 30, max: 150 });
    fc.assert(
      fc.property(room, room, fc.array(kind, { minLength: 1, maxLength: 3 }), room, (w, h, kinds, most) => {
        const drawn = taskOf(w, h, kinds);
        const axes = axesOf(drawn, most / 4);
        const [across, up] = [axes.across.stops, axes.up.stops];
        const rows = up.length;
        const parts = across.length * rows;
        const tables: Relaxation = { most: new Float64Array(parts), choices: new Int32Array(parts) };
        relax(drawn, axes, Float64Array.from(drawn.values), tables);
        const outside = new Float64Array(parts);
        for (let column = across.length - 1; column >= 0; column--) {
          for (let row = rows - 1; row >= 0; row--) {
            const grown = [0];
            for (let to = column + 1; to < across.length; to++) {
              const beside = lastStop(across, across[to]! - across[column]!);
              grown.push(tables.most[beside * rows + row]! + outside[to * rows + row]!);
            }
            for (let to = row + 1; to < rows; to++) {
              const onTop = lastStop(up, up[to]! - up[row]!);
              grown.push(tables.most[column * rows + onTop]! + outside[column * rows + to]!);
            }
            outside[column * rows + row] = Math.max(...grown);
          }
        }
        expect(mostOutside(axes, tables)).toEqual(outside);
      }),
      drawnCases(30),
    );
  });
});

describe('prices', () => {
  const search = { toBeat: 1, above: (value: number) => value + 1 };

  it('bring the bound down to the optimum where copies are what limits it', () => {
    // Ten of the dear one would fill the sheet; there is one of it.
    const task = taskOf(10, 1, [
      { w: 1, h: 1, value: 10, copies: 1 },
      { w: 1, h: 1, value: 3, copies: 20 },
    ]);
    const { bound, worth, found } = searchPrices(task, axesOf(task, 100), spelt, search)(200);
    expect(bound).toBeGreaterThanOrEqual(37);
    expect(bound).toBeLessThan(37.5);
    expect(worth[1]).toBe(3);
    expect(found?.value).toBeGreaterThan(0);
    expect(found?.value).toBeLessThanOrEqual(37);
  });

  it.each([
    ['cgcut1', 244, 244.03, 240],
    ['cgcut3', 1860, 1920, 1780],
    ['g2kp_A1', 2020, 2025.7, 1940],
    ['g2kp_CHL2', 2326, 2398.6, 2081],
    ['g2kp_OF2', 2690, 2735.7, 2506],
    ['g2kp_STS4', 9700, 9747.2, 9612],
  ])('bound the published optimum of %s closely', (name, optimum, most, least) => {
    const task = published(name);
    const { bound, found } = searchPrices(task, axesOf(task, 500), spelt, search)(200);
    expect(bound).toBeGreaterThanOrEqual(optimum);
    expect(bound).toBeLessThan(most);
    expect(found?.value).toBeLessThanOrEqual(optimum);
    expect(found?.value).toBeGreaterThanOrEqual(least);
  });

  it('go on from where they stood', () => {
    const task = published('cgcut3');
    const whole = searchPrices(task, axesOf(task, 500), spelt, search);
    const [atOnce, inSteps] = [whole(40), searchPrices(task, axesOf(task, 500), spelt, search)];
    const early = inSteps(3).bound;
    inSteps(17);
    expect(inSteps(40)).toEqual(atOnce);
    expect(early).toBeGreaterThan(atOnce.bound);
  });

  it('are not looked for once the bound is below what is asked', () => {
    const task = published('cgcut1');
    const { bound, found } = searchPrices(task, axesOf(task, 500), spelt, { ...search, toBeat: 260 })(200);
    expect(bound).toBeLessThan(260);
    expect(found).toBeUndefined();
  });
});

describe('the search', () => {
  const tiles = (copies: number) => taskOf(6, 6, [{ w: 3, h: 2, value: 6, copies }]);

  it('finds all copies on one sheet, or shows that they are too many', () => {
    const all = searchLimited(tiles(6), 36, EFFORT, spelt).run();
    expect([all.found?.value, all.bound, all.proven]).toEqual([36, 36, true]);
    const short = searchLimited(tiles(5), 36, EFFORT, spelt).run();
    expect([short.found, short.bound, short.proven]).toEqual([undefined, 35, true]);
  });

  it('shows by a few prices alone that copies are far too many, and goes on where these do not', () => {
    const { isRuledOut } = searchLimited(tiles(7), 42, EFFORT, spelt);
    expect(isRuledOut(1)).toBe(true);
    const fits = searchLimited(tiles(6), 36, EFFORT, spelt);
    expect(fits.isRuledOut(1)).toBe(false);
    expect(fits.run().found?.value).toBe(36);
  });

  it('has values that are not whole', () => {
    const task = taskOf(5, 2, [
      { w: 3, h: 2, value: 0.75, copies: 1 },
      { w: 2, h: 2, value: 0.5, copies: 2 },
    ]);
    const { found, proven } = searchLimited(task, 0.1, EFFORT, spelt).run();
    expect(found?.value).toBeCloseTo(1.25, 9);
    expect(proven).toBe(true);
  });

  // What it looks at now and a tenth more: a search that passes less over looks at more.
  it.each([
    ['g2kp_A3', 5451, 28_000],
    ['g2kp_CHL2', 2326, 6_200],
    ['cgcut3', 1860, 20_000],
    ['g2kp_STS4', 9700, 15_000],
    ['g2kp_CW1', 6402, 8_200],
    ['g2kp_A1', 2020, 700],
  ])('joins few boxes to prove %s', (name, optimum, most) => {
    const { found, proven, looked } = searchLimited(published(name), 1, EFFORT, spelt).run();
    expect([found?.value, proven]).toEqual([optimum, true]);
    expect(looked).toBeLessThan(most);
  });

  it('gives up when it has looked at as many pairs, or kept as many boxes, as it may', () => {
    const task = published('g2kp_A3');
    const fewPairs = searchLimited(task, 1, { ...EFFORT, pairs: 100 }, spelt).run();
    expect(fewPairs.proven).toBe(false);
    expect(fewPairs.bound).toBeGreaterThanOrEqual(5451);
    expect(fewPairs.bound).toBeLessThan(5530);
    expect(fewPairs.looked).toBeLessThan(300);
    const fewBoxes = searchLimited(task, 1, { ...EFFORT, boxes: 50 }, spelt).run();
    expect(fewBoxes.proven).toBe(false);
    expect(fewBoxes.looked).toBeLessThan(1000);
  });

  it('still bounds what it can only count coarsely', () => {
    const coarse = searchLimited(published('g2kp_A1'), 1, { ...EFFORT, stops: 20 }, spelt).run();
    expect(coarse.bound).toBeGreaterThanOrEqual(2020);
    expect(coarse.proven ? coarse.found?.value : 2020).toBe(2020);
  });
});
