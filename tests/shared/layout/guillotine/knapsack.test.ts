// Several sizes on one sheet: published instances, their optima published or computed by another method, every cut tried.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Effort } from '../../../../shared/layout/guillotine/limitedSearch.ts';
import { bestValue } from '../../../kit/cutByBruteForce.ts';
import { cutLimited } from '../../../kit/cutLimited.ts';
import { isCuttable, liesClean } from '../../../kit/cuttable.ts';
import { cutUnlimited } from '../../../kit/cutUnlimited.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import index from '../../../reference/cutting/index.json' with { type: 'json' };

interface Instance {
  readonly sheet: readonly [number, number];
  readonly items: readonly {
    readonly l: number;
    readonly w: number;
    readonly value: number;
    readonly max_copies?: number;
    readonly max_copies_constrained?: number;
  }[];
  readonly optimal: Readonly<Record<string, number>>;
}

/** OR-Library gcut and cgcut, and the collection of Furini, Malaguti and Thomopulos; sources stand in each file. */
function load(name: string): Instance {
  return JSON.parse(
    readFileSync(new URL(`../../../reference/cutting/${name}.json`, import.meta.url), 'utf8'),
  );
}

const EFFORT: Effort = { stops: 500, pricing: 5e8, pairs: 1e8, boxes: 300_000 };
const NAMES = index.instances;
/** Whose optimum it is: published, or computed by another method (the index says which). */
const whose = (kind: string) =>
  typeof (index.sources.optimal as Readonly<Record<string, unknown>>)[kind] === 'string'
    ? 'computed'
    : 'published';

const region = ([w, h]: Instance['sheet']) => ({ w, h });
const offer = (item: Instance['items'][number], rotated: boolean) => ({
  cell: { w: item.l, h: item.w },
  lies: rotated ? ('either' as const) : ('upright' as const),
  value: item.value,
});

describe('as many copies as one likes', () => {
  const cases = NAMES.flatMap((name) => {
    const { optimal } = load(name);
    return [false, true].flatMap((rotated) => {
      const key = `unconstrained_guillotine_${rotated ? 'rotated' : 'fixed'}`;
      const kind = [key, `${key}_computed`].find((known) => optimal[known] !== undefined) ?? key;
      const best = optimal[kind];
      // gcut13 either way takes half a minute and is run by the benchmark.
      if (best === undefined || (name === 'gcut13' && rotated)) return [];
      return [[whose(kind), name, rotated ? 'either way' : 'one way', rotated, best] as const];
    });
  });

  it.each(cases)('reaches the %s optimum of %s, %s', (_whose, name, _lie, rotated, best) => {
    const { sheet, items } = load(name);
    const cut = cutUnlimited(
      items.map((item) => offer(item, rotated)),
      region(sheet),
    );
    expect(cut.value).toBe(best);
    expect(isCuttable(cut.cells)).toBe(true);
    expect(liesClean(cut.cells, region(sheet))).toBe(true);
    expect(cut.cells.reduce((sum, cell) => sum + items[cell.kind]!.value, 0)).toBe(best);
  });
});

describe('only so many copies of each', () => {
  const cases = NAMES.flatMap((name) => {
    const { optimal } = load(name);
    return [false, true].flatMap((rotated) => {
      const lie = rotated ? 'rotated' : 'fixed';
      const keys = [`constrained_guillotine_${lie}`, `constrained_1copy_guillotine_${lie}`];
      const kind = keys.find((key) => optimal[key] !== undefined);
      const best = kind && optimal[kind];
      if (kind === undefined || best === undefined) return [];
      return [[whose(kind), name, rotated ? 'either way' : 'one way', rotated, best] as const];
    });
  });

  it.each(cases)('reaches and proves the %s optimum of %s, %s', (_whose, name, _lie, rotated, best) => {
    const { sheet, items } = load(name);
    const offers = items.map((item) => ({
      ...offer(item, rotated),
      copies: item.max_copies ?? item.max_copies_constrained ?? 1,
    }));
    const cut = cutLimited(offers, region(sheet), EFFORT);
    expect([cut.value, cut.proven, cut.bound]).toEqual([best, true, best]);
    expect(isCuttable(cut.cells)).toBe(true);
    expect(liesClean(cut.cells, region(sheet))).toBe(true);
    offers.forEach(({ copies }, kind) => {
      expect(cut.cells.filter((cell) => cell.kind === kind).length).toBeLessThanOrEqual(copies);
    });
  });

  it('says that it has not proved what it gave up on, and how much better it could be', () => {
    const { sheet, items, optimal } = load('g2kp_Hchl2');
    const offers = items.map((item) => ({ ...offer(item, false), copies: item.max_copies ?? 1 }));
    const cut = cutLimited(offers, region(sheet), { stops: 60, pricing: 1e5, pairs: 300, boxes: 200 });
    expect(cut.proven).toBe(false);
    expect(cut.bound).toBeGreaterThanOrEqual(optimal.constrained_guillotine_fixed ?? 0);
    expect(cut.value).toBeLessThanOrEqual(cut.bound);
  });

  it('agrees with trying every cut on small sheets', () => {
    const kind = fc.record({
      w: fc.integer({ min: 1, max: 6 }),
      h: fc.integer({ min: 1, max: 6 }),
      value: fc.integer({ min: 1, max: 30 }),
      copies: fc.integer({ min: 1, max: 2 }),
      turns: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 9 }),
        fc.integer({ min: 4, max: 9 }),
        fc.array(kind, { minLength: 1, maxLength: 3 }),
        (w, h, kinds) => {
          const cut = cutLimited(
            kinds.map((k) => ({
              cell: { w: k.w, h: k.h },
              lies: k.turns ? 'either' : 'upright',
              value: k.value,
              copies: k.copies,
            })),
            { w, h },
            EFFORT,
          );
          expect(cut.value).toBe(bestValue(w, h, kinds));
          expect(cut.proven).toBe(true);
          expect(isCuttable(cut.cells)).toBe(true);
        },
      ),
      drawnCases(120),
    );
  });

  it('cuts nothing where nothing fits', () => {
    const cut = cutLimited(
      [{ cell: { w: 20, h: 20 }, lies: 'either', value: 5, copies: 1 }],
      { w: 10, h: 10 },
      EFFORT,
    );
    expect([cut.value, cut.cells, cut.tree, cut.proven]).toEqual([0, [], undefined, true]);
  });
});
