import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overlap } from '../../../shared/geometry/rect.ts';
import type { Bleeding } from '../../../shared/layout/bleeding.ts';
import { bleedAreas } from '../../../shared/layout/bleeds.ts';
import { numberFrom } from '../../kit/anyNumber.ts';
import { farthestOff, gapOf, type Placed, staggered, standsBefore } from '../../kit/staggered.ts';

const card = (x: number, y: number, bleed = 9): Bleeding<'side1'> => ({
  trim: { x, y, w: 100, h: 200 },
  bleed,
});

const isIn = (area: readonly { x: number; y: number; w: number; h: number }[], x: number, y: number) =>
  area.some((r) => x > r.x && x < r.x + r.w && y > r.y && y < r.y + r.h);

describe('bleeds', () => {
  it('are printed whole where the gutter holds both', () => {
    expect(bleedAreas([card(0, 0), card(118, 0)])).toEqual([
      [{ x: -9, y: -9, w: 118, h: 218 }],
      [{ x: 109, y: -9, w: 118, h: 218 }],
    ]);
  });

  it('are cut back to the middle of a gutter too narrow for both, on that edge only', () => {
    expect(bleedAreas([card(0, 0), card(110, 0)])).toEqual([
      [{ x: -9, y: -9, w: 114, h: 218 }],
      [{ x: 105, y: -9, w: 114, h: 218 }],
    ]);
    expect(bleedAreas([card(0, 0), card(0, 206)])).toEqual([
      [{ x: -9, y: -9, w: 118, h: 212 }],
      [{ x: -9, y: 203, w: 118, h: 212 }],
    ]);
  });

  it('end at the trim where pieces stand edge to edge for one cut', () => {
    const [left, right] = bleedAreas([card(0, 0), card(100, 0)]);
    expect(left).toEqual([{ x: -9, y: -9, w: 109, h: 218 }]);
    expect(right).toEqual([{ x: 100, y: -9, w: 109, h: 218 }]);
  });

  it('still end at the trim when rounding makes edge to edge a hair less', () => {
    const [left] = bleedAreas([card(0, 0), card(100 - 1e-9, 0)]);
    expect(left).toHaveLength(1);
    expect(left![0]!.x + left![0]!.w).toBeCloseTo(100, 6);
  });

  it('go past the middle where the neighbour has less bleed than its half of the gutter', () => {
    const [left, right] = bleedAreas([card(0, 0, 9), card(110, 0, 2)]);
    expect(isIn(left!, 107.9, 100)).toBe(true);
    expect(isIn(left!, 108.1, 100)).toBe(false);
    expect(isIn(right!, 108.1, 100)).toBe(true);
    expect(isIn(right!, 107.9, 100)).toBe(false);
  });

  it('are left whole beside a piece that lies over, which is a fault of its own', () => {
    expect(bleedAreas([card(0, 0), card(90, 0)])[0]).toEqual([{ x: -9, y: -9, w: 118, h: 218 }]);
  });

  it('meet across a corner in the middle of the wider gap, and are whole along the edges', () => {
    const [low, high] = bleedAreas([card(0, 0), card(110, 204)]);
    // The corner between them: 10 pt across, 4 up.
    expect([isIn(low!, 104.9, 202), isIn(high!, 104.9, 202)]).toEqual([true, false]);
    expect([isIn(low!, 105.1, 202), isIn(high!, 105.1, 202)]).toEqual([false, true]);
    expect([isIn(low!, 108.9, 150), isIn(low!, 50, 208.9)]).toEqual([true, true]);
    expect([isIn(high!, 101.1, 250), isIn(high!, 150, 195.1)]).toEqual([true, true]);
  });

  it('have a step where a neighbour faces a part of the edge only', () => {
    // The upper card stands 4 pt above and covers the left 40 of 100 pt.
    const [low] = bleedAreas([card(0, 0), card(-60, 204)]);
    const reach = (x: number) =>
      Math.max(...low!.filter((r) => r.x < x && x < r.x + r.w).map((r) => r.y + r.h));
    expect(reach(20)).toBe(202);
    // Half a gap beside its corner is the upper card's as well; then all of the gap up to its edge; then the whole bleed.
    expect(reach(41)).toBe(202);
    expect(reach(43)).toBe(204);
    expect(reach(48)).toBe(204);
    expect(reach(50)).toBe(209);
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
            if (i !== j) expect(a.some((one) => b.some((two) => overlap(one, two)))).toBe(false);
          });
        });
      }),
    );
  });
});

describe('Bleeds on a staggered sheet', () => {
  const dots = fc.array(fc.tuple(numberFrom(0, 1), numberFrom(0, 1)), { minLength: 200, maxLength: 200 });

  /** Who prints each of some points around the pieces; points within a hair of a line are passed over. */
  function* printedPoints(placed: readonly Placed[], at: readonly (readonly [number, number])[]) {
    const areas = bleedAreas<'side1'>(placed);
    for (const [n, [u, v]] of at.entries()) {
      const { trim, bleed } = placed[n % placed.length]!;
      const x = trim.x - bleed + u * (trim.w + 2 * bleed);
      const y = trim.y - bleed + v * (trim.h + 2 * bleed);
      const off = placed.map((p) => farthestOff(p.trim, x, y));
      const printing = placed.flatMap((_, i) => (isIn(areas[i]!, x, y) ? [i] : []));
      if (off.some((d, i) => Math.abs(d - placed[i]!.bleed) < 0.03)) continue;
      const lines = areas
        .flat()
        .some((r) => [x - r.x, x - r.x - r.w, y - r.y, y - r.y - r.h].some((d) => Math.abs(d) < 0.03));
      if (!lines) yield { x, y, off, printing };
    }
  }

  it('leave no point within the bleed of a piece white, and print none twice', () => {
    fc.assert(
      fc.property(staggered, dots, (placed, at) => {
        for (const { off, printing } of printedPoints(placed, at)) {
          expect(printing).toHaveLength(off.some((d, i) => d < placed[i]!.bleed) ? 1 : 0);
          for (const i of printing) expect(off[i]).toBeLessThan(placed[i]!.bleed);
        }
      }),
    );
  });

  it('give a piece all that is nearer to it than half of its narrowest gap, and its own trim', () => {
    fc.assert(
      fc.property(staggered, dots, (placed, at) => {
        for (const { off, printing } of printedPoints(placed, at)) {
          placed.forEach(({ trim, bleed }, i) => {
            const narrowest = Math.min(...placed.flatMap((p, j) => (j === i ? [] : [gapOf(trim, p.trim)])));
            if (off[i]! < Math.min(bleed, narrowest / 2) - 0.03 || off[i] === 0)
              expect(printing).toEqual([i]);
          });
        }
      }),
    );
  });

  it('print the whole bleed before an edge where nothing else could want it, and to the middle before a neighbour', () => {
    fc.assert(
      fc.property(staggered, dots, (placed, at) => {
        for (const { x, y, off, printing } of printedPoints(placed, at)) {
          const wanting = placed.flatMap((p, i) => (off[i]! < p.bleed ? [i] : []));
          const before = wanting.filter((i) => standsBefore(placed[i]!.trim, x, y));
          const corners = wanting.filter((i) => !before.includes(i));
          if (wanting.length === 1) expect(printing).toEqual(wanting);
          if (corners.length > 0 || before.length !== 2) continue;
          const [one, other] = before as [number, number];
          const [a, b] = [placed[one]!.trim, placed[other]!.trim];
          const isLevel = (t: typeof a) => y > t.y && y < t.y + t.h;
          if (isLevel(a) !== isLevel(b) || Math.abs(off[one]! - off[other]!) < 0.06) continue;
          // They face each other across the gap in which the point lies: the nearer one prints it.
          expect(printing).toEqual([off[one]! < off[other]! ? one : other]);
        }
      }),
    );
  });

  it('are the same on a sheet that is turned, from either side', () => {
    fc.assert(
      fc.property(staggered, fc.boolean(), (placed, sideways) => {
        const [w, h] = [900, 900];
        const flip = <R extends { x: number; y: number; w: number; h: number }>(r: R): R =>
          sideways ? { ...r, x: w - r.x - r.w } : { ...r, y: h - r.y - r.h };
        const turned = bleedAreas(placed.map((p) => ({ ...p, trim: flip(p.trim) })));
        const areaOf = (rects: readonly { w: number; h: number }[]) =>
          rects.reduce((sum, r) => sum + r.w * r.h, 0);
        bleedAreas(placed).forEach((area, i) => {
          const behind = turned[i]!.map(flip);
          const common = area.flatMap((a) =>
            behind.map(
              (b) =>
                Math.max(0, Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x)) *
                Math.max(0, Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y)),
            ),
          );
          const both = common.reduce((sum, one) => sum + one, 0);
          expect(Math.abs(areaOf(area) - both)).toBeLessThan(3);
          expect(Math.abs(areaOf(behind) - both)).toBeLessThan(3);
        });
      }),
    );
  });
});
