// The most cells that any layout can hold: the bound of Barnes on published instances, computed by another method, and layouts.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { mostAnyhow, mostCells, mostUpTo } from '../../../../shared/layout/guillotine/countBounds.ts';
import { layIdentical } from '../../../../shared/layout/guillotine/identical.ts';
import { stopsFor } from '../../../../shared/layout/guillotine/stops.ts';
import { mostIdentical } from '../../../kit/cutByBruteForce.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import published from '../../../reference/cutting/identical_rectangles.json' with { type: 'json' };

it.each(published.instances.map((i) => [`${i.l} x ${i.w} in ${i.L} x ${i.W}`, i] as const))(
  'is the bound by bars, computed by another method, for %s',
  (_name, { L, W, l, w, upper_bound_barnes: bound }) => {
    expect(mostCells(L, W, l, w)).toBe(bound);
    expect(mostCells(W, L, w, l)).toBe(bound);
    expect(mostAnyhow(L, W, l, w)).toBeLessThanOrEqual(bound);
  },
);

it('is the area where bars leave nothing bare, and less where they must', () => {
  expect(mostCells(6, 4, 3, 2)).toBe(4);
  // Bars of 3 leave 1 x 1 of 4 x 4 bare, so that 15 of 16 squares can be used: five bars.
  expect(mostCells(4, 4, 3, 1)).toBe(5);
  // Bars of 4 leave 2 x 2 of 6 x 6 bare, though the area would allow nine.
  expect(mostCells(6, 6, 4, 1)).toBe(8);
  expect(mostCells(6, 6, 1, 4)).toBe(8);
});

it('counts what fits in line, whatever the lengths', () => {
  // Three sides at most fit along 440 mm and two along 310 mm: six postcards, where the area would allow seven.
  expect(mostCells(440, 310, 154, 111)).toBe(7);
  expect(mostAnyhow(440, 310, 154, 111)).toBe(6);
});

it('is never less than what can be laid', () => {
  const side = fc.integer({ min: 20, max: 90 });
  const cell = fc.integer({ min: 3, max: 20 });
  fc.assert(
    fc.property(side, side, cell, cell, (w, h, a, b) => {
      const { count } = layIdentical({ w: a, h: b }, 'either', { w, h });
      expect(mostCells(w, h, a, b)).toBeGreaterThanOrEqual(count);
      expect(mostAnyhow(w, h, a, b)).toBeGreaterThanOrEqual(count);
    }),
    drawnCases(300),
  );
});

it('bounds every part of a room, the whole of it as closely as can be', () => {
  const side = fc.integer({ min: 10, max: 20 });
  const cell = fc.integer({ min: 2, max: 7 });
  let closer = 0;
  fc.assert(
    fc.property(side, side, cell, cell, (w, h, a, b) => {
      const ways = [
        { w: a, h: b },
        { w: b, h: a },
      ];
      const { across, up } = stopsFor(ways, { w, h });
      const mostAt = mostUpTo({ across, up }, a, b);
      for (const [column, x] of across.entries()) {
        for (const [row, y] of up.entries()) {
          const most = mostAt(column, row);
          expect(most).toBeGreaterThanOrEqual(mostIdentical(x, y, a, b, true));
          expect(most).toBeLessThanOrEqual(mostCells(x, y, a, b));
          if (most < mostCells(x, y, a, b)) closer++;
        }
      }
      expect(mostAt(across.length - 1, up.length - 1)).toBe(mostAnyhow(across.at(-1)!, up.at(-1)!, a, b));
    }),
    drawnCases(40),
  );
  expect(closer).toBeGreaterThan(20);
});

it('is the least of all ways to count the sides, and of the bound by bars', () => {
  const side = fc.integer({ min: 25, max: 120 });
  const cell = fc.integer({ min: 4, max: 24 });
  fc.assert(
    fc.property(side, side, cell, cell, (w, h, a, b) => {
      const inLine = (room: number, r: number) => {
        let most = 0;
        for (let i = 0; i * a <= room; i++) most = Math.max(most, r * i + Math.floor((room - i * a) / b));
        return most;
      };
      let least = mostCells(w, h, a, b);
      for (let step = -400; step <= 400; step++) {
        const r = 1.01 ** step;
        least = Math.min(least, Math.floor((inLine(w, r) * inLine(h, r)) / r + 1e-9));
      }
      for (let more = 1; more <= 30; more++) {
        for (let fewer = 1; fewer <= 30; fewer++) {
          const r = fewer / more;
          least = Math.min(least, Math.floor((inLine(w, r) * inLine(h, r)) / r + 1e-9));
        }
      }
      expect(mostAnyhow(w, h, a, b)).toBe(least);
    }),
    drawnCases(200),
  );
});
