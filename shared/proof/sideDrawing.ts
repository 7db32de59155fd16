// A written side drawn once, whole, for all that is looked at on it: its pieces, its marks and its waste.
import { centre } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { applyToRect, chain, inverse } from '../geometry/transform.ts';
import { alignedScale } from './alignedScale.ts';
import type { PixelArea } from './band.ts';
import type { Affine, PageSource, Renderable } from './pageSource.ts';
import { COLOUR_BITS, isInked, pixelsWithin, type Raster } from './raster.ts';

/** A side, what was drawn of it, and where a point of the side (pt, y up) falls on the drawing (pixels, y down). */
export interface SideDrawing {
  readonly source: PageSource;
  readonly raster: Raster;
  readonly toPixels: Affine;
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
  source: PageSource,
  trims: readonly Rect[],
  scale: number,
  earlier: SideDrawing | undefined,
): SideDrawing {
  const { w, h } = source.size;
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
  const matrix: Affine = { a: across, b: 0, c: 0, d: -up, e: ASIDE_PX, f: h * up + ASIDE_PX };
  if (earlier?.source === source && sameScale(earlier.toPixels, matrix)) return earlier;
  const raster = source.rasterise(matrix, Math.ceil(w * across), Math.ceil(h * up));
  return { source: source, raster, toPixels: matrix };
}

function sameScale(a: Affine, b: Affine): boolean {
  return Math.abs(a.a - b.a) < 1e-9 && Math.abs(a.d - b.d) < 1e-9;
}

/** The pixels that a rectangle of the side (pt) touches, as far as there are any. */
export function pixelsUnder({ toPixels, raster }: SideDrawing, rect: Rect): PixelArea {
  const { x, y, w, h } = applyToRect(toPixels, rect);
  return {
    left: Math.max(0, Math.floor(x)),
    top: Math.max(0, Math.floor(y)),
    right: Math.min(raster.width, Math.ceil(x + w)),
    bottom: Math.min(raster.height, Math.ceil(y + h)),
  };
}

/** Whether nothing is printed within a rectangle of the side (pt). */
export function isBlankWithin({ raster, toPixels }: SideDrawing, rect: Rect): boolean {
  const { left, top, right, bottom } = pixelsWithin(applyToRect(toPixels, rect), raster);
  for (let y = top; y < bottom; y++) {
    for (let i = y * raster.width + left; i < y * raster.width + right; i++) {
      if (isInked(raster.words[i] ?? COLOUR_BITS)) return false;
    }
  }
  return true;
}

/**
 * The drawing resampled by an upright matrix, each pixel the mean of four samples: good for showing, too coarse for
 * measuring.
 */
export function resampled({ source, raster, toPixels: drawn }: SideDrawing): Renderable {
  return {
    size: source.size,
    render: (matrix, width, height) => {
      const { a, b, c, d, e, f } = chain(inverse(matrix), drawn);
      if (b !== 0 || c !== 0) throw new Error('A drawing is seen again only as it lies');
      const columns = samplesAlong(width, a, e, raster.width);
      const rows = samplesAlong(height, d, f, raster.height);
      const pixels = new Uint8Array(width * height * 3);
      for (let y = 0, to = 0; y < height; y++) {
        for (let x = 0; x < width; x++) {
          let [red, green, blue] = [2, 2, 2];
          for (let sample = 0; sample < 4; sample++) {
            const column = columns[2 * x + (sample & 1)] ?? OFF_PAPER;
            const row = rows[2 * y + (sample >> 1)] ?? OFF_PAPER;
            const isPaper = column === OFF_PAPER || row === OFF_PAPER;
            const word = isPaper ? COLOUR_BITS : (raster.words[row * raster.width + column] ?? 0);
            red += word & 255;
            green += (word >> 8) & 255;
            blue += (word >> 16) & 255;
          }
          pixels[to++] = red >> 2;
          pixels[to++] = green >> 2;
          pixels[to++] = blue >> 2;
        }
      }
      return { width, height, pixels };
    },
  };
}

const OFF_PAPER = -1;

/** The pixel of the drawing under each sample along one axis, two samples to a pixel that is seen. */
function samplesAlong(count: number, scale: number, offset: number, most: number): Int32Array {
  return Int32Array.from({ length: 2 * count }, (_, i) => {
    const at = Math.floor((i / 2 + 0.25) * scale + offset);
    return at < 0 || at >= most ? OFF_PAPER : at;
  });
}
