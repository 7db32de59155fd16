// The chart of costs: its scales, and labels that do not lie over one another.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linesOf, quantitiesAround, rangeOf } from '../../../renderer/plan/chart/costLines.ts';
import { placeLabels } from '../../../renderer/plan/chart/placeLabels.ts';

describe('labels beside the lines', () => {
  it('stay where they wish to be as long as they are apart', () => {
    expect(placeLabels([100, 10, 50], 16)).toEqual([100, 10, 50]);
  });

  it('part evenly to both sides where two wish for one place', () => {
    expect(placeLabels([40, 40], 16)).toEqual([32, 48]);
  });

  it('never come nearer to one another than asked, and keep their order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 8 }), (wishes) => {
        const placed = placeLabels(wishes, 16);
        const sorted = placed.toSorted((a, b) => a - b);
        for (const [i, at] of sorted.entries()) {
          if (i > 0) expect(at - (sorted[i - 1] ?? 0)).toBeGreaterThanOrEqual(16 - 1e-9);
        }
        for (const [i, a] of wishes.entries()) {
          for (const [j, b] of wishes.entries()) if (a < b) expect(placed[i]).toBeLessThan(placed[j] ?? 0);
        }
      }),
    );
  });
});

describe('the lines of the chart', () => {
  it('look as far as five times and a fifth of what is ordered', () => {
    expect(quantitiesAround(120)).toEqual({ from: 24, to: 600 });
    expect(quantitiesAround(3)).toEqual({ from: 1, to: 15 });
  });

  it('show the cost of one piece at whole quantities, both ends among them', () => {
    const totals = [10, 12, 12, 16];
    const [line] = linesOf([{ printer: 'A', quantities: { from: 2, to: 5 }, totals, best: [] }]);
    expect(line?.name).toBe('A');
    expect(line?.points).toEqual([
      { quantity: 2, perPiece: 5 },
      { quantity: 3, perPiece: 4 },
      { quantity: 4, perPiece: 3 },
      { quantity: 5, perPiece: 3.2 },
    ]);
  });

  it('reach from the smallest quantity to the largest, and the costs from nothing', () => {
    const points = [
      { quantity: 10, perPiece: 4 },
      { quantity: 90, perPiece: 2 },
    ];
    expect(rangeOf([{ name: 'A', points }])).toEqual({ quantity: [10, 90], cost: [0, 4] });
  });
});
