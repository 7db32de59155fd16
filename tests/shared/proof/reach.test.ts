import { describe, expect, it } from 'vitest';
import type { Edges } from '../../../shared/geometry/space.ts';
import type { Reaches } from '../../../shared/layout/bleedReach.ts';
import { blur } from '../../../shared/proof/band.ts';
import { gridFor } from '../../../shared/proof/grid.ts';
import type { Picture } from '../../../shared/proof/picture.ts';
import { reachOf } from '../../../shared/proof/reach.ts';

/** Ten pixels to the pt: a trim of 8 x 5 pt, a bleed of 3 pt, a margin of 32 pixels. */
const GRID = gridFor({ w: 8, h: 5 }, 3, 720);
const [WIDTH, HEIGHT] = [80 + 2 * GRID.margin, 50 + 2 * GRID.margin];
const HELD = { grid: GRID, lie: 0, printed: { x: -7, y: -5.5, w: 14, h: 11 } } as const;
const ALL = { left: 3, right: 3, top: 3, bottom: 3 };

/** The same bleed along the whole of each edge. */
const even = ({ left, right, top, bottom }: Edges): Reaches => ({
  left: [{ from: 0, to: 5, reach: left }],
  right: [{ from: 0, to: 5, reach: right }],
  top: [{ from: 0, to: 8, reach: top }],
  bottom: [{ from: 0, to: 8, reach: bottom }],
});

/** A picture whose pixel is coloured where the formula says so, else white; x and y count from the trim's upper left. */
function picture(colour: number, where: (x: number, y: number) => boolean): Picture {
  const pixels = Uint8Array.from({ length: WIDTH * HEIGHT * 3 }, (_, i) => {
    const n = Math.floor(i / 3);
    return where((n % WIDTH) - GRID.margin, Math.floor(n / WIDTH) - GRID.margin) ? colour : 255;
  });
  return { width: WIDTH, height: HEIGHT, pixels };
}

const reached = (found: Picture, art: Picture, wanted: Reaches, shifted = 0) =>
  reachOf({ ...HELD, picture: found, blurred: () => blur(found) }, art, wanted, shifted);

/** For bleeds without steps: one length for each edge, nothing where nothing is wanted. */
function reach(found: Picture, art: Picture, wanted: Edges = ALL): Edges {
  const { left, right, top, bottom } = reached(found, art, even(wanted));
  const only = (lengths: typeof left) => {
    expect(lengths.length).toBeLessThan(2);
    return lengths[0]?.reaches ?? 0;
  };
  return { left: only(left), right: only(right), top: only(top), bottom: only(bottom) };
}

const everywhere = picture(90, () => true);

describe('The bleed reaches', () => {
  it('as far as it is wanted, when the print shows what the art shows', () => {
    expect([GRID.width, GRID.height, GRID.margin]).toEqual([80, 50, 32]);
    expect(reach(everywhere, everywhere)).toEqual(ALL);
  });

  it('to where the print ends, on each edge for itself', () => {
    const printed = picture(90, (x, y) => x >= -7 && x < 80 + 12 && y >= -20 && y < 50 + 3);
    expect(reach(printed, everywhere)).toEqual({ left: 0.7, right: 1.2, top: 2, bottom: 0.3 });
  });

  it('no farther than it is wanted', () => {
    const wanted = { left: 0.7, right: 0, top: 1.5, bottom: 3 };
    expect(reach(everywhere, everywhere, wanted)).toEqual(wanted);
    const printed = picture(90, (x) => x >= -7 && x < 80);
    expect(reach(printed, everywhere, { ...wanted, right: 0.1 })).toEqual({ ...wanted, right: 0 });
  });

  it('everywhere along an edge where the art itself is white', () => {
    const bar = picture(90, (_, y) => y >= 20 && y < 32);
    const cut = picture(90, (x, y) => y >= 20 && y < 32 && x >= -5);
    expect(reach(bar, bar)).toEqual(ALL);
    expect(reach(cut, bar)).toEqual({ ...ALL, left: 0.5 });
  });

  it('also in a light tint', () => {
    const tint = picture(248, () => true);
    expect(
      reach(
        picture(248, (x) => x >= -10),
        tint,
      ),
    ).toEqual({ ...ALL, left: 1 });
  });

  it('beside a line that two renderings draw one pixel apart', () => {
    const line = (at: number) => picture(90, (_, y) => y === at);
    expect(reach(line(-8), line(-9))).toEqual(ALL);
  });

  it('until something else is printed there', () => {
    const mark = picture(0, (x, y) => x === -15 && y > 10 && y < 15);
    const blank = picture(255, () => true);
    expect(reach(mark, blank)).toEqual({ ...ALL, left: 1.4 });
    const speck = picture(0, (x, y) => x === -15 && y > 10 && y < 13);
    expect(reach(speck, blank)).toEqual(ALL);
  });

  it('as far as each stretch of an edge has room, where the bleed has a step', () => {
    // From the left, 3 of 8 pt face a neighbour and have 1 pt, the others have the whole 3.
    const stepped: Reaches = {
      ...even(ALL),
      top: [
        { from: 0, to: 3, reach: 1 },
        { from: 3, to: 8, reach: 3 },
      ],
    };
    const print = (right: number, left: number, step = 30) =>
      picture(90, (x, y) => y >= (x < step ? -10 * left : -10 * right));
    expect(reached(print(3, 1), everywhere, stepped).top).toEqual([
      { wanted: 1, reaches: 1 },
      { wanted: 3, reaches: 3 },
    ]);
    expect(reached(print(1, 1), everywhere, stepped).top).toEqual([
      { wanted: 1, reaches: 1 },
      { wanted: 3, reaches: 1 },
    ]);
    expect(reached(print(3, 0.5), everywhere, stepped).top[0]).toEqual({ wanted: 1, reaches: 0.5 });
    // Printed 0.8 pt to the right of its place, the step lies there too; that is no want of bleed.
    expect(reached(print(3, 1, 38), everywhere, stepped, 0.8).top[1]).toEqual({ wanted: 3, reaches: 3 });
    expect(reached(print(3, 1, 38), everywhere, stepped).top[1]).toEqual({ wanted: 3, reaches: 1 });
  });

  it('from the left and from below, as the stretches are counted', () => {
    const low: Reaches = {
      ...even(ALL),
      left: [
        { from: 0, to: 2, reach: 1 },
        { from: 2, to: 5, reach: 3 },
      ],
    };
    // Rows are counted from above: the lower 2 of 5 pt begin at row 30.
    const printed = picture(90, (x, y) => x >= (y >= 30 ? -10 : -30));
    expect(reached(printed, everywhere, low).left).toEqual([
      { wanted: 1, reaches: 1 },
      { wanted: 3, reaches: 3 },
    ]);
  });
});
