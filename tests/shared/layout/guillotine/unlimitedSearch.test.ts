// The search with copies as many as one likes: its work, the tidiness of what it finds, and pinwheels.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostUpTo } from '../../../../shared/layout/guillotine/countBounds.ts';
import { layInFewestBlocks } from '../../../../shared/layout/guillotine/fewestBlocks.ts';
import { searchPinwheels } from '../../../../shared/layout/guillotine/pinwheels.ts';
import { stopsFor } from '../../../../shared/layout/guillotine/stops.ts';
import { type Builder, searchUnlimited } from '../../../../shared/layout/guillotine/unlimitedSearch.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';

const ways = (a: number, b: number) => [
  { w: a, h: b, onItsSide: false, kind: 0, value: 1 },
  { w: b, h: a, onItsSide: true, kind: 0, value: 1 },
];

function search(a: number, b: number, w: number, h: number) {
  const stops = stopsFor(ways(a, b), { w, h });
  const boundAt = mostUpTo(stops, a, b);
  const found = searchUnlimited({ ways: ways(a, b), stops, boundAt, step: 1 });
  return {
    found,
    stops,
    boundAt,
    corner: [stops.across.length - 1, stops.up.length - 1] as const,
    valueAt: (column: number, row: number) => found.valueOf(found.partAt(column, row)),
    layoutAt: <T>(column: number, row: number, builder: Builder<T>) =>
      layInFewestBlocks(found, found.partAt(column, row), builder),
  };
}

/** How many blocks a layout has. */
const counting: Builder<number> = { block: () => 1, join: (_way, [a, b]) => a + b };

const spelt: Builder<string> = {
  block: (way, across, up) => `${way.onItsSide ? 's' : 'u'}${across}x${up}`,
  join: (way, [a, b]) => (way === 'stacked' ? `(${a} / ${b})` : `(${a} | ${b})`),
};

/** The most cells, and the fewest plain blocks that hold so many, by trying every cut at every whole unit. */
function tidiest(w: number, h: number, a: number, b: number, known = new Map<string, [number, number]>()) {
  const before = known.get(`${w}x${h}`);
  if (before !== undefined) return before;
  const inGrid = Math.max(Math.floor(w / a) * Math.floor(h / b), Math.floor(w / b) * Math.floor(h / a));
  let best: [number, number] = [inGrid, inGrid > 0 ? 1 : 0];
  const take = (one: [number, number], other: [number, number]) => {
    const both: [number, number] = [one[0] + other[0], one[1] + other[1]];
    if (both[0] > best[0] || (both[0] === best[0] && both[1] < best[1])) best = both;
  };
  for (let x = 1; x <= w / 2; x++) take(tidiest(x, h, a, b, known), tidiest(w - x, h, a, b, known));
  for (let y = 1; y <= h / 2; y++) take(tidiest(w, y, a, b, known), tidiest(w, h - y, a, b, known));
  known.set(`${w}x${h}`, best);
  return best;
}

describe('the search', () => {
  it('finds the fewest blocks that hold the most cells', () => {
    const side = fc.integer({ min: 6, max: 26 });
    const cell = fc.integer({ min: 2, max: 7 });
    fc.assert(
      fc.property(side, side, cell, cell, (w, h, a, b) => {
        fc.pre(a !== b && Math.max(a, b) <= Math.min(w, h));
        const { valueAt, layoutAt, corner } = search(a, b, w, h);
        const [count, blocks] = tidiest(w, h, a, b);
        expect(valueAt(...corner)).toBe(count);
        expect(layoutAt(...corner, counting)).toBe(blocks);
      }),
      drawnCases(150),
    );
  });

  it('knows every part, whatever was asked before', () => {
    const { valueAt, layoutAt, corner, stops } = search(3, 5, 23, 19);
    valueAt(...corner);
    for (const [column, w] of stops.across.entries()) {
      for (const [row, h] of stops.up.entries()) {
        const [count, blocks] = tidiest(w, h, 3, 5);
        expect(valueAt(column, row)).toBe(count);
        expect(layoutAt(column, row, counting) ?? 0).toBe(blocks);
      }
    }
  });

  it('spells out what it found', () => {
    // Seven lie in a row of three upright over two rows of two on their side, or the same turned about.
    const { valueAt, layoutAt, corner } = search(2, 3, 6, 7);
    expect(valueAt(...corner)).toBe(7);
    expect(layoutAt(...corner, spelt)).toBe('(u3x1 / s2x2)');
    expect(layoutAt(0, 0, spelt)).toBeUndefined();
    const turned = search(2, 3, 7, 6);
    expect(turned.layoutAt(...turned.corner, spelt)).toBe('(s1x3 | u2x2)');
  });

  it('takes the grid with the fewest lines, and upright before on its side', () => {
    // 12 x 12 holds six of 4 x 6 upright, three by two, and six on their side, two by three.
    const { layoutAt, corner } = search(4, 6, 12, 12);
    expect(layoutAt(...corner, spelt)).toBe('u3x2');
    // Six of 2 x 6 lie in a row of six upright, or on their side two by three.
    const narrow = search(2, 6, 12, 6);
    expect(narrow.layoutAt(...narrow.corner, spelt)).toBe('s2x3');
  });

  it.each([
    ['cards on a large sheet, sizes that give many stops', 503, 717, 9930, 13910, 85_000],
    ['nearly square cards', 530, 511, 10000, 14000, 300_000],
    ['usual cards', 91, 61, 440, 310, 6],
    ['cards that fill little', 15, 11, 86, 82, 65],
  ])('looks at few pairs of parts: %s', (_name, a, b, w, h, most) => {
    const { found, valueAt, corner } = search(a, b, w, h);
    valueAt(...corner);
    expect(found.looked()).toBeLessThanOrEqual(most);
  });
});

describe('pinwheels', () => {
  const pinwheels = (a: number, b: number, w: number, h: number, count: number) => {
    const { found, stops, boundAt } = search(a, b, w, h);
    return searchPinwheels({ search: found, stops, boundAt, area: a * b }, count);
  };

  // 3 x 1 in such sheets: the pinwheel reaches the area bound, the guillotine is one short.
  it.each([
    [5, 5, 7],
    [5, 8, 12],
    [8, 8, 20],
    [8, 11, 28],
    [5, 14, 22],
    [14, 5, 22],
  ])('hold one more bar of 3 x 1 in %i x %i', (w, h, cut) => {
    const { valueAt, corner } = search(3, 1, w, h);
    expect(valueAt(...corner)).toBe(cut);
    expect(pinwheels(3, 1, w, h, cut)).toBe(cut + 1);
    expect(pinwheels(1, 3, w, h, cut)).toBe(cut + 1);
    expect(cut + 1).toBe(Math.floor((w * h) / 3));
  });

  it('never hold more than can be laid at all', () => {
    const side = fc.integer({ min: 4, max: 8 });
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 2, max: 4 }),
        fc.integer({ min: 1, max: 3 }),
        (w, h, a, b) => {
          fc.pre(a > b && a <= Math.min(w, h));
          const { valueAt, corner } = search(a, b, w, h);
          const cut = valueAt(...corner);
          const laid = pinwheels(a, b, w, h, cut);
          expect(laid).toBeGreaterThanOrEqual(cut);
          expect(laid).toBeLessThanOrEqual(mostAtAll(w, h, a, b));
        },
      ),
      drawnCases(60),
    );
  });
});

/** The most cells of any layout, by putting or leaving out a cell at every unit square in turn. */
function mostAtAll(w: number, h: number, a: number, b: number): number {
  const taken = new Uint8Array(w * h);
  const area = a * b;
  let most = 0;
  const fill = (x: number, y: number, cw: number, ch: number, value: 0 | 1) => {
    for (let j = y; j < y + ch; j++) taken.fill(value, j * w + x, j * w + x + cw);
  };
  const isFree = (x: number, y: number, cw: number, ch: number) => {
    if (x + cw > w || y + ch > h) return false;
    for (let j = y; j < y + ch; j++) {
      for (let i = x; i < x + cw; i++) if (taken[j * w + i] === 1) return false;
    }
    return true;
  };
  const go = (square: number, count: number, bare: number) => {
    most = Math.max(most, count);
    let next = square;
    while (next < w * h && taken[next] === 1) next++;
    if (next >= w * h || Math.floor((w * h - bare) / area) <= most) return;
    const x = next % w;
    const y = (next - x) / w;
    for (const [cw, ch] of [
      [a, b],
      [b, a],
    ] as const) {
      if (!isFree(x, y, cw, ch)) continue;
      fill(x, y, cw, ch, 1);
      go(next + 1, count + 1, bare);
      fill(x, y, cw, ch, 0);
    }
    go(next + 1, count, bare + 1);
  };
  go(0, 0, 0);
  return most;
}
