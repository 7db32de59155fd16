import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS } from '../../../shared/geometry/head.ts';
import { apply } from '../../../shared/geometry/transform.ts';
import { gridFor, pictureSize, pieceToPicture, sheetToPicture } from '../../../shared/proof/grid.ts';

describe('The grid of a piece', () => {
  it('has 150 pixels to the inch and room for the bleed', () => {
    expect(gridFor({ w: 360, h: 504 }, 9, 150)).toEqual({
      width: 750,
      height: 1050,
      across: 750 / 360,
      up: 1050 / 504,
      margin: 21,
    });
  });

  it('has whole pixels in a trim that is no whole number of them', () => {
    const grid = gridFor({ w: 100.3, h: 0.1 }, 0, 150);
    expect([grid.width, grid.height, grid.margin]).toEqual([209, 1, 2]);
    expect(grid.across * 100.3).toBeCloseTo(209, 10);
  });

  it('is coarser for a poster, which has 6 million pixels and no more', () => {
    const grid = gridFor({ w: 2835, h: 3968 }, 9, 150);
    expect(grid.width * grid.height).toBeGreaterThan(5_990_000);
    expect(grid.width * grid.height).toBeLessThan(6_010_000);
    expect(grid.across).toBeCloseTo(Math.sqrt(6e6 / (2835 * 3968)), 3);
  });

  it('lies on its side with the piece', () => {
    const grid = gridFor({ w: 72, h: 36 }, 3.6, 100);
    expect(pictureSize(grid, 0)).toEqual({ width: 114, height: 64 });
    expect(pictureSize(grid, 90)).toEqual({ width: 64, height: 114 });
    expect(pictureSize(grid, 180)).toEqual({ width: 114, height: 64 });
  });

  it('puts the corners of a trim on whole pixels, wherever it lies on the sheet', () => {
    const length = fc.double({ min: 10, max: 300, noNaN: true });
    fc.assert(
      fc.property(length, length, length, length, fc.constantFrom(...HEADS), (x, y, w, h, head) => {
        const lies = head === 90 || head === 270;
        const grid = gridFor({ w, h }, 9, 150);
        const trim = { x, y, w: lies ? h : w, h: lies ? w : h };
        const matrix = sheetToPicture(grid, trim, head);
        const { width, height } = pictureSize(grid, head);
        const upperLeft = apply(matrix, { x, y: y + trim.h });
        const lowerRight = apply(matrix, { x: x + trim.w, y });
        expect(upperLeft.x).toBeCloseTo(grid.margin, 6);
        expect(upperLeft.y).toBeCloseTo(grid.margin, 6);
        expect(lowerRight.x).toBeCloseTo(width - grid.margin, 6);
        expect(lowerRight.y).toBeCloseTo(height - grid.margin, 6);
      }),
    );
  });

  it('looks at a piece from its middle', () => {
    const matrix = pieceToPicture(gridFor({ w: 72, h: 36 }, 0, 100));
    expect(apply(matrix, { x: 0, y: 0 })).toEqual({ x: 52, y: 27 });
    expect(apply(matrix, { x: 36, y: 18 })).toEqual({ x: 102, y: 2 });
  });
});
