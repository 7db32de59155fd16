// A written side drawn once, whole, for all that is looked at on it: its pieces, its marks and its waste.
import { centre } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { apply, applyToRect, chain, inverse } from '../geometry/transform.ts';
import { alignedScale } from './alignedScale.ts';
import type { Area } from './band.ts';
import { COLOUR_BITS, type Raster } from './raster.ts';
import type { Lens, Photographed, Sight } from './sight.ts';

/** A side, what was drawn of it, and where a point of the side (pt, y up) falls on the drawing (pixels, y down). */
export interface SideDrawing {
  readonly sight: Sight;
  readonly raster: Raster;
  readonly lens: Lens;
}

/** A larger sheet is drawn more coarsely; one of 24 x 36 in still has 9 pixels to the mm. */
export const MAX_SIDE_PIXELS = 40_000_000;

/**
 * All is drawn so far off the grid of pixels. Art drawn in whole points has many edges in the very middle of a pixel,
 * which rounding would send one way at one place and another way at the next.
 */
const ASIDE_PX = 1 / 47;

/**
 * Draws a side at `scale` pixels to the pt or a little more, so that as many of the trims (pt, as they lie on this side)
 * as can be fall on the same part of a pixel. `earlier` is given back where it shows just that.
 */
export function drawSide(
  sight: Sight,
  trims: readonly Rect[],
  scale: number,
  earlier: SideDrawing | undefined,
): SideDrawing {
  const { w, h } = sight.size;
  const least = Math.min(scale, Math.sqrt(MAX_SIDE_PIXELS / (w * h)));
  const middles = trims.map(centre);
  const across = alignedScale(
    middles.map(({ x }) => x),
    least,
  );
  const up = alignedScale(
    middles.map(({ y }) => y),
    least,
  );
  const lens: Lens = { a: across, b: 0, c: 0, d: -up, e: ASIDE_PX, f: h * up + ASIDE_PX };
  if (earlier?.sight === sight && sameLens(earlier.lens, lens)) return earlier;
  const raster = sight.draw(lens, Math.ceil(w * across), Math.ceil(h * up));
  return { sight, raster, lens };
}

function sameLens(a: Lens, b: Lens): boolean {
  return Math.abs(a.a - b.a) < 1e-9 && Math.abs(a.d - b.d) < 1e-9;
}

/** The pixels that a rectangle of the side (pt) touches, as far as there are any. */
export function pixelsUnder({ lens, raster }: SideDrawing, rect: Rect): Area {
  const { x, y, w, h } = applyToRect(lens, rect);
  return {
    left: Math.max(0, Math.floor(x)),
    top: Math.max(0, Math.floor(y)),
    right: Math.min(raster.width, Math.ceil(x + w)),
    bottom: Math.min(raster.height, Math.ceil(y + h)),
  };
}

/** Whether nothing is printed on these pixels. */
export function isWhiteIn({ raster }: SideDrawing, { left, top, right, bottom }: Area): boolean {
  for (let y = top; y < bottom; y++) {
    for (let i = y * raster.width + left; i < y * raster.width + right; i++) {
      if (((raster.words[i] ?? 0) & COLOUR_BITS) !== COLOUR_BITS) return false;
    }
  }
  return true;
}

/** The drawing seen again, each pixel the mean of four samples: good for showing, too coarse for measuring. */
export function drawnSight({ sight, raster, lens: drawn }: SideDrawing): Photographed {
  const { width: columns, height: rows, words } = raster;
  return {
    size: sight.size,
    photograph: (lens, width, height) => {
      const back = chain(inverse(lens), drawn);
      const pixels = new Uint8Array(width * height * 3);
      for (let i = 0; i < width * height; i++) {
        const sums = [0, 0, 0];
        for (const [u, v] of SAMPLES) {
          const at = apply(back, { x: (i % width) + u, y: Math.floor(i / width) + v });
          const [column, row] = [Math.floor(at.x), Math.floor(at.y)];
          const isPaper = column < 0 || row < 0 || column >= columns || row >= rows;
          const word = isPaper ? COLOUR_BITS : (words[row * columns + column] ?? 0);
          for (let c = 0; c < 3; c++) sums[c] = (sums[c] ?? 0) + ((word >> (8 * c)) & 255);
        }
        for (let c = 0; c < 3; c++) pixels[i * 3 + c] = Math.round((sums[c] ?? 0) / SAMPLES.length);
      }
      return { width, height, pixels };
    },
  };
}

const SAMPLES = [
  [0.25, 0.25],
  [0.75, 0.25],
  [0.25, 0.75],
  [0.75, 0.75],
] as const;
