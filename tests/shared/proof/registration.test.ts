import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compose, largestMove, NO_DISPLACEMENT } from '../../../shared/proof/displacement.ts';
import { shrink } from '../../../shared/proof/pyramid.ts';
import { registerPicture } from '../../../shared/proof/registration.ts';
import { observableDirections } from '../../../shared/proof/structure.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { lopsidedPaint, PAPER, type Paint, paintedSource, pictureOfLetters } from '../../kit/painted.ts';

const [WIDTH, HEIGHT] = [140, 100];
const AREA = { left: 12, top: 12, right: WIDTH - 12, bottom: HEIGHT - 12 };
const face = lopsidedPaint({ w: 116, h: 76 }, [240, 230, 200]);

/** A picture of one pixel to the pt whose point (x, y) from the middle, y down, shows the paint that `from` says. */
function pictureOf(
  paint: Paint,
  from: (x: number, y: number) => readonly [number, number] = (x, y) => [x, y],
) {
  const source = paintedSource({ w: WIDTH, h: HEIGHT }, (x, y) => {
    const [u, v] = from(x - WIDTH / 2, HEIGHT / 2 - y);
    return paint(u, -v);
  });
  return source.render({ a: 1, b: 0, c: 0, d: -1, e: 0, f: HEIGHT }, WIDTH, HEIGHT);
}

const reference = pictureOf(face);

describe('A picture that was moved', () => {
  it('is found to a tenth of a pixel, whatever the move', () => {
    const move = fc.double({ min: -6, max: 6, noNaN: true });
    fc.assert(
      fc.property(move, move, (dx, dy) => {
        const found = pictureOf(face, (x, y) => [x - dx, y - dy]);
        const { displacement, observableDirections } = registerPicture(found, reference, AREA, 'translation');
        expect(observableDirections).toBe(2);
        expect(Math.abs(displacement.dx - dx)).toBeLessThan(0.1);
        expect(Math.abs(displacement.dy - dy)).toBeLessThan(0.1);
        expect([displacement.xx, displacement.xy, displacement.yx, displacement.yy]).toEqual([0, 0, 0, 0]);
      }),
      drawnCases(25),
    );
  });

  it('that was not moved is found where it is', () => {
    expect(registerPicture(reference, reference, AREA, 'translation')).toEqual({
      displacement: NO_DISPLACEMENT,
      observableDirections: 2,
    });
  });

  it('scaled, turned and slanted is found with all its slopes', () => {
    const [xx, xy, yx, yy] = [0.02, -0.011, 0.015, -0.018];
    const [dx, dy] = [1.3, -0.7];
    // What belongs at (x, y) is printed at (x + dx + xx x + xy y, y + dy + yx x + yy y); its inverse is looked up.
    const det = (1 + xx) * (1 + yy) - xy * yx;
    const found = pictureOf(face, (x, y) => [
      ((1 + yy) * (x - dx) - xy * (y - dy)) / det,
      ((1 + xx) * (y - dy) - yx * (x - dx)) / det,
    ]);
    const { displacement: d } = registerPicture(found, reference, AREA, 'affine');
    // The fit looks back from the print, so that slopes and moves differ from these by their products.
    expect(Math.abs(d.dx - dx)).toBeLessThan(0.1);
    expect(Math.abs(d.dy - dy)).toBeLessThan(0.1);
    expect(Math.abs(d.xx - xx)).toBeLessThan(0.002);
    expect(Math.abs(d.xy - xy)).toBeLessThan(0.002);
    expect(Math.abs(d.yx - yx)).toBeLessThan(0.002);
    expect(Math.abs(d.yy - yy)).toBeLessThan(0.002);
  });

  it('of one colour tells nothing and is not moved', () => {
    const flat = pictureOf(() => [200, 180, 40]);
    expect(registerPicture(flat, flat, AREA, 'translation')).toEqual({
      displacement: NO_DISPLACEMENT,
      observableDirections: 0,
    });
  });

  it('of stripes is moved across them only', () => {
    const stripes: Paint = (x) => (Math.abs(x - 10) < 4 ? [0, 0, 0] : [255, 255, 255]);
    const found = pictureOf((x, y) => stripes(x - 2, y));
    const { displacement, observableDirections } = registerPicture(
      found,
      pictureOf(stripes),
      AREA,
      'translation',
    );
    expect(observableDirections).toBe(1);
    expect(displacement.dx).toBeCloseTo(2, 1);
    expect(displacement.dy).toBeCloseTo(0, 6);
  });

  it('of slanted stripes is moved across them only', () => {
    const slanted: Paint = (x, y) => (Math.abs(x + y) < 5 ? [0, 0, 0] : [255, 255, 255]);
    const found = pictureOf((x, y) => slanted(x - 1, y));
    const { displacement, observableDirections } = registerPicture(
      found,
      pictureOf(slanted),
      AREA,
      'translation',
    );
    expect(observableDirections).toBe(1);
    expect(displacement.dx).toBeCloseTo(0.5, 1);
    expect(displacement.dy).toBeCloseTo(-0.5, 1);
  });

  it('that differs in size from the other is a mistake of ours', () => {
    const small = shrink(reference, 2);
    const all = { left: 0, top: 0, right: 100, bottom: 100 };
    expect(() => registerPicture(reference, small, all, 'translation')).toThrow('differ in size');
  });
});

describe('A displacement', () => {
  const d = { dx: 1, dy: -2, xx: 0.1, xy: 0.2, yx: -0.4, yy: 0.3 };

  it('moves the farthest where its slope does', () => {
    expect(largestMove(d, 1, 1)).toBe(2);
    expect(largestMove(d, 10, 1)).toBe(4);
    expect(largestMove(d, 1, 10)).toBe(3);
    expect(largestMove({ ...NO_DISPLACEMENT, dx: -3 }, 10, 10)).toBe(3);
    expect(largestMove({ ...NO_DISPLACEMENT, xx: -0.5 }, 10, 0)).toBe(5);
    expect(largestMove({ ...NO_DISPLACEMENT, xy: 0.5 }, 0, 10)).toBe(5);
    expect(largestMove({ ...NO_DISPLACEMENT, yy: 0.5 }, 0, 10)).toBe(5);
  });

  it('grows by a step that was taken on a coarser level', () => {
    const step = { dx: 1, dy: 1, xx: 0.01, xy: 0.02, yx: 0.03, yy: 0.04 };
    const sum = compose(d, step, 4);
    expect(sum.dx).toBe(5);
    expect(sum.dy).toBe(2);
    expect([sum.xx, sum.xy, sum.yx, sum.yy].map((v) => Number(v.toFixed(6)))).toEqual([
      0.11, 0.22, -0.37, 0.34,
    ]);
  });
});

describe('A picture seen smaller', () => {
  const colours = { a: [0, 100, 200], b: [8, 100, 200], c: [0, 104, 200], d: [0, 100, 202] } as const;

  it('has the mean of four pixels in each, an odd row or column left out', () => {
    const shrunk = shrink(pictureOfLetters(['aba', 'cdc', 'bbb'], colours), 1);
    expect(shrunk).toEqual({ width: 1, height: 1, pixels: Uint8Array.of(2, 101, 201) });
  });

  it('not at all is itself', () => {
    const picture = pictureOfLetters(['ab', 'cd'], colours);
    expect(shrink(picture, 0)).toEqual(picture);
  });
});

describe('The structure of a picture', () => {
  const whole = { left: 0, top: 0, right: WIDTH, bottom: HEIGHT };
  const found = (paint: Paint) => observableDirections(pictureOf(paint), whole);

  it('is none in one colour, and none in a soft shade', () => {
    expect(found(() => [9, 9, 9])).toEqual([]);
    expect(found((x, y) => [128 + x, 128 + y, 128 - x])).toEqual([]);
  });

  it('is one way in stripes, across them, and both ways in a face', () => {
    expect(found((x) => (x > 0 ? PAPER : [0, 0, 0]))).toEqual([{ x: 1, y: 0 }]);
    const [aslant] = found((x, y) => (x + 2 * y > 0 ? PAPER : [0, 0, 0]));
    expect(Math.abs((aslant?.y ?? 0) / (aslant?.x ?? 1) + 2)).toBeLessThan(0.2);
    expect(found(face)).toHaveLength(2);
  });

  it('is seen in a tint of 3 percent', () => {
    expect(found((x, y) => (Math.hypot(x, y) < 20 ? [247, 247, 247] : PAPER))).toHaveLength(2);
  });

  it('counts only where it is looked for', () => {
    const half = pictureOf((x) => (x > 0 ? PAPER : [0, 0, 0]));
    expect(observableDirections(half, { ...whole, right: 60 })).toEqual([]);
    expect(observableDirections(half, { ...whole, left: 60 })).toHaveLength(1);
  });
});
