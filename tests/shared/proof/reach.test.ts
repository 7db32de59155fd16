import { describe, expect, it } from 'vitest';
import { soften } from '../../../shared/proof/band.ts';
import { gridFor } from '../../../shared/proof/grid.ts';
import type { Picture } from '../../../shared/proof/picture.ts';
import { reachOf } from '../../../shared/proof/reach.ts';

/** Ten pixels to the pt: a trim of 8 x 5 pt, a bleed of 3 pt, a margin of 32 pixels. */
const GRID = gridFor({ w: 8, h: 5 }, 3, 720);
const [WIDTH, HEIGHT] = [80 + 2 * GRID.margin, 50 + 2 * GRID.margin];
const HELD = { grid: GRID, lie: 0, printed: { x: -7, y: -5.5, w: 14, h: 11 } } as const;
const ALL = { left: 3, right: 3, top: 3, bottom: 3 };

/** A picture whose pixel is coloured where the formula says so, else white; x and y count from the trim's upper left. */
function picture(colour: number, where: (x: number, y: number) => boolean): Picture {
  const pixels = Uint8Array.from({ length: WIDTH * HEIGHT * 3 }, (_, i) => {
    const n = Math.floor(i / 3);
    return where((n % WIDTH) - GRID.margin, Math.floor(n / WIDTH) - GRID.margin) ? colour : 255;
  });
  return { width: WIDTH, height: HEIGHT, pixels };
}

const reach = (found: Picture, art: Picture, wanted = ALL) =>
  reachOf({ ...HELD, picture: found, softened: () => soften(found) }, art, wanted);

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
});
