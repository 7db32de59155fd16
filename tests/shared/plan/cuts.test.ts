// Cuts through a pile, counted once for sheets on which the pieces lie alike.
import { describe, expect, it } from 'vitest';
import { CutCounter } from '../../../shared/plan/cuts.ts';

const half = [{ x: 0, y: 0, w: 50, h: 50 }];

describe('the cuts through a pile', () => {
  it('are none where the piece is the sheet, and one for each margin', () => {
    const cuts = new CutCounter();
    expect(cuts.count({ w: 100, h: 50 }, half)).toBe(1);
    expect(cuts.count({ w: 50, h: 50 }, half)).toBe(0);
    expect(cuts.count({ w: 50, h: 100 }, half)).toBe(1);
    expect(cuts.count({ w: 100, h: 100 }, half)).toBe(2);
    expect(cuts.count({ w: 100, h: 100 }, [{ x: 10, y: 10, w: 50, h: 50 }])).toBe(4);
  });

  // Four margins; and to part n pieces n - 1 gutters are cut, twice each, whether rows or columns come first (arithmetic).
  it.each([
    [1, 1, 4],
    [2, 1, 6],
    [3, 2, 14],
    [2, 3, 14],
    [5, 4, 42],
  ])('of a grid of %d by %d are %d', (across, up, wanted) => {
    const cells = Array.from({ length: across * up }, (_, i) => ({
      x: 10 + 60 * (i % across),
      y: 10 + 60 * Math.floor(i / across),
      w: 50,
      h: 50,
    }));
    const sheet = { w: 60 * across + 10, h: 60 * up + 10 };
    expect(new CutCounter().count(sheet, cells)).toBe(wanted);
  });

  it('are as few as can be where rows or columns of unlike pieces lie on one another', () => {
    // On 3 x 3 a strip as wide as the sheet, and two that are 2 wide: one cut frees the first, one takes the waste off both
    // others, one parts them. Whoever parts the two from each other first trims twice: four cuts.
    const strips = [
      { x: 0, y: 0, w: 3, h: 1 },
      { x: 0, y: 1, w: 2, h: 1 },
      { x: 0, y: 2, w: 2, h: 1 },
    ].map(({ x, y, w, h }) => ({ x: 72 * x, y: 72 * y, w: 72 * w, h: 72 * h }));
    const sheet = { w: 216, h: 216 };
    expect(new CutCounter().count(sheet, strips)).toBe(3);
    const onTheirSide = strips.map(({ x, y, w, h }) => ({ x: y, y: x, w: h, h: w }));
    expect(new CutCounter().count(sheet, onTheirSide)).toBe(3);
  });

  it('are the same for sheets of all sizes on which the pieces lie alike, and for others not', () => {
    const cuts = new CutCounter();
    const pair = (gap: number) => [...half, { x: 50 + gap, y: 0, w: 50, h: 50 }];
    expect(cuts.count({ w: 100, h: 50 }, pair(0))).toBe(1);
    expect(cuts.count({ w: 120, h: 50 }, pair(20))).toBe(2);
    expect(cuts.count({ w: 130, h: 50 }, pair(30))).toBe(2);
    expect(cuts.count({ w: 160, h: 50 }, pair(30))).toBe(3);
  });
});
