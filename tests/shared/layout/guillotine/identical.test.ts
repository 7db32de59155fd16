// As many identical pieces as a guillotine can cut: published instances, optima computed by another method, every cut tried.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeOf } from '../../../../shared/layout/guillotine/cutTree.ts';
import { layIdentical } from '../../../../shared/layout/guillotine/identical.ts';
import type { Lies } from '../../../../shared/layout/lies.ts';
import { mostIdentical } from '../../../kit/cutByBruteForce.ts';
import { isCuttable, liesClean } from '../../../kit/cuttable.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import published from '../../../reference/cutting/identical_rectangles.json' with { type: 'json' };

const INCH = 72;

describe('optima computed by another method', () => {
  // The instances are published; the file names their source, and how the optima were computed.
  it.each(published.instances.map((i) => [`${i.l} x ${i.w} in ${i.L} x ${i.W}`, i] as const))(
    'are reached: %s',
    (_name, i) => {
      const laid = layIdentical({ w: i.l, h: i.w }, 'either', { w: i.L, h: i.W });
      expect(laid.count).toBe(i.guillotine_optimal);
      expect(laid.proven).toBe(true);
      expect(laid.cells).toHaveLength(laid.count);
      expect(isCuttable(laid.cells)).toBe(true);
      expect(liesClean(laid.cells, { w: i.L, h: i.W })).toBe(true);
    },
  );

  it.each(published.print_cases.map((c) => [c.name, c] as const))('are reached: %s', (_name, c) => {
    const [w = 0, h = 0] = c.cell_trim_plus_two_bleeds;
    const [across = 0, along = 0] = c.imageable;
    const cell = { w, h };
    const region = { w: across, h: along };
    expect(layIdentical(cell, 'either', region).count).toBe(c.guillotine_optimal_mixed);
    expect(layIdentical(cell, 'upright', region).count).toBe(c.grid_as_is);
    expect(layIdentical(cell, 'on-its-side', region).count).toBe(c.grid_turned);
  });

  it('hold five cards of 5 x 7 in on 13 x 19 in where a plain grid holds four', () => {
    const laid = layIdentical({ w: 5.25 * INCH, h: 7.25 * INCH }, 'either', {
      w: 12.5 * INCH,
      h: 18.5 * INCH,
    });
    expect(laid.count).toBe(5);
    expect(isCuttable(laid.cells)).toBe(true);
  });
});

describe('layouts that no guillotine can cut', () => {
  const denserThan = (a: number, b: number, lies: Lies, w: number, h: number) =>
    layIdentical({ w: a, h: b }, lies, { w, h }).denser();

  it.each(
    published.instances
      .filter((i) => i.five_block > i.guillotine_optimal)
      .map((i) => [`${i.l} x ${i.w} in ${i.L} x ${i.W}`, i] as const),
  )('are known to hold more: %s', (_name, i) => {
    expect(denserThan(i.l, i.w, 'either', i.L, i.W)).toEqual({ kind: 'more', atLeast: i.five_block });
  });

  it('are known to hold no more where the guillotine reaches the bound', () => {
    expect(denserThan(3, 2, 'either', 14, 10)).toEqual({ kind: 'no-more' });
  });

  it('are known to hold no more where every piece lies one way', () => {
    expect(denserThan(7, 4, 'upright', 30, 22)).toEqual({ kind: 'no-more' });
    expect(denserThan(5, 5, 'either', 30, 22)).toEqual({ kind: 'no-more' });
    expect(denserThan(50, 4, 'either', 30, 22)).toEqual({ kind: 'no-more' });
  });

  it('are left unknown where five blocks find none and the bound allows one', () => {
    // Birgin, Lobato and Morabito: 57 by an L-shaped layout.
    expect(denserThan(8, 3, 'either', 49, 28)).toEqual({ kind: 'unknown', atMost: 57 });
  });
});

describe('small cases by trying every cut', () => {
  it('agree with the search, in every lie', () => {
    const small = fc.integer({ min: 1, max: 7 });
    const side = fc.integer({ min: 5, max: 24 });
    fc.assert(
      fc.property(
        side,
        side,
        small,
        small,
        fc.constantFrom<Lies>('either', 'upright', 'on-its-side'),
        (w, h, a, b, lies) => {
          const laid = layIdentical({ w: a, h: b }, lies, { w, h });
          const [asA, asB] = lies === 'on-its-side' ? [b, a] : [a, b];
          expect(laid.count).toBe(mostIdentical(w, h, asA, asB, lies === 'either'));
          expect(laid.proven).toBe(true);
          expect(isCuttable(laid.cells)).toBe(true);
          expect(liesClean(laid.cells, { w, h })).toBe(true);
          for (const cell of laid.cells) {
            expect([cell.w, cell.h]).toEqual(cell.onItsSide ? [b, a] : [a, b]);
            expect(lies === 'either' || cell.onItsSide === (lies === 'on-its-side')).toBe(true);
          }
        },
      ),
      drawnCases(200),
    );
  });
});

describe('a fit that is exact on paper', () => {
  it('is not lost to rounding', () => {
    const lengths = fc.integer({ min: 1, max: 4000 });
    fc.assert(
      fc.property(
        lengths,
        fc.integer({ min: 1, max: 12 }),
        fc.constantFrom(72 / 1000, 72 / 25.4 / 100, 72 / 128),
        (n, count, unit) => {
          const cell = { w: n * unit, h: 100 };
          let room = 0;
          for (let i = 0; i < count; i++) room += cell.w;
          expect(layIdentical(cell, 'upright', { w: room, h: 100 }).count).toBe(count);
          expect(layIdentical(cell, 'upright', { w: count * n * unit, h: 100 }).count).toBe(count);
          expect(layIdentical(cell, 'upright', { w: room - 0.02, h: 100 }).count).toBe(count - 1);
        },
      ),
    );
  });
});

describe('pieces so small that not every cut can be tried', () => {
  const region = { w: 2000, h: 2600 };
  const tag = { w: 20.3, h: 21.7 };

  it('are laid no worse than in a grid, and it is said that more is not ruled out', () => {
    const laid = layIdentical(tag, 'either', region);
    expect(laid.count).toBeGreaterThanOrEqual(98 * 119);
    expect(laid.count).toBeLessThanOrEqual(Math.floor((2000 * 2600) / (20.3 * 21.7)));
    expect(laid.proven).toBe(false);
    expect(laid.denser().kind).toBe('unknown');
  });

  it('are proven where a grid reaches the bound', () => {
    const laid = layIdentical({ w: 20, h: 26 }, 'either', region);
    expect([laid.count, laid.proven]).toEqual([10_000, true]);
  });
});

describe('the layout', () => {
  it('is a plain grid where a grid is as good, settled at the lower left', () => {
    const laid = layIdentical({ w: 10, h: 7 }, 'either', { w: 41, h: 29 });
    expect(laid.tree).toMatchObject({ is: 'block', onItsSide: false, across: 4, up: 4 });
    expect(laid.cells[0]).toEqual({ x: 0, y: 0, w: 10, h: 7, onItsSide: false, kind: 0 });
    expect(laid.tree && sizeOf(laid.tree)).toEqual({ w: 40, h: 28 });
  });

  it('is nothing where nothing fits', () => {
    expect(layIdentical({ w: 50, h: 7 }, 'either', { w: 41, h: 30 })).toMatchObject({
      count: 0,
      cells: [],
      tree: undefined,
      proven: true,
    });
  });
});
