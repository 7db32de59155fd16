import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overlap } from '../../../shared/geometry/rect.ts';
import { bleedAreas } from '../../../shared/layout/bleeds.ts';
import { numberFrom } from '../../kit/anyNumber.ts';

const card = (x: number, y: number, bleed = 9) => ({ trim: { x, y, w: 100, h: 200 }, bleed });

describe('bleeds', () => {
  it('are printed whole where the gutter holds both', () => {
    expect(bleedAreas([card(0, 0), card(118, 0)])).toEqual([
      { x: -9, y: -9, w: 118, h: 218 },
      { x: 109, y: -9, w: 118, h: 218 },
    ]);
  });

  it('are cut back to the middle of a gutter too narrow for both, on that edge only', () => {
    expect(bleedAreas([card(0, 0), card(110, 0)])).toEqual([
      { x: -9, y: -9, w: 114, h: 218 },
      { x: 105, y: -9, w: 114, h: 218 },
    ]);
    expect(bleedAreas([card(0, 0), card(0, 206)])).toEqual([
      { x: -9, y: -9, w: 118, h: 212 },
      { x: -9, y: 203, w: 118, h: 212 },
    ]);
  });

  it('end at the trim where pieces stand edge to edge for one cut', () => {
    const [left, right] = bleedAreas([card(0, 0), card(100, 0)]);
    expect(left!.x + left!.w).toBe(100);
    expect(right!.x).toBe(100);
  });

  it('still end at the trim when rounding makes edge to edge a hair less', () => {
    const [left] = bleedAreas([card(0, 0), card(100 - 1e-9, 0)]);
    expect(left!.x + left!.w).toBeCloseTo(100, 6);
  });

  it('go past the middle where the neighbour has less bleed than its half of the gutter', () => {
    const [left, right] = bleedAreas([card(0, 0, 9), card(110, 0, 2)]);
    expect(left!.x + left!.w).toBe(108);
    expect(right!.x).toBe(108);
  });

  it('are left whole beside a piece that lies over, which is a fault of its own', () => {
    expect(bleedAreas([card(0, 0), card(90, 0)])[0]).toEqual({ x: -9, y: -9, w: 118, h: 218 });
  });

  it('give way at a corner across the wider gap', () => {
    const [low, high] = bleedAreas([card(0, 0), card(110, 204)]);
    expect(low).toEqual({ x: -9, y: -9, w: 114, h: 218 });
    expect(high).toEqual({ x: 105, y: 195, w: 114, h: 218 });
  });

  it('never lie over one another, whatever the gutter and the bleeds', () => {
    const part = numberFrom(0, 20);
    fc.assert(
      fc.property(part, part, part, part, (gx, gy, one, two) => {
        const placed = [0, 1, 2, 3].map((i) =>
          card((i % 2) * (100 + gx), Math.floor(i / 2) * (200 + gy), i % 3 === 0 ? one : two),
        );
        const areas = bleedAreas(placed);
        areas.forEach((a, i) => {
          areas.forEach((b, j) => {
            if (i !== j) expect(overlap(a, b)).toBe(false);
          });
        });
      }),
    );
  });
});
