// A drawing as a renderer left it, a word for each pixel, so that whole sheets are compared in one go.
import type { Rect } from '../geometry/space.ts';
import { type PixelArea, ROUNDING_LEVELS } from './band.ts';
import type { Picture } from './picture.ts';

/** Rows from the top, each from the left. Of a word the lowest byte is red, then green and blue; the highest says nothing. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly words: Uint32Array;
}

/** The bits of a word that are colour; all of them are set where the paper is white. */
export const COLOUR_BITS = 0xffffff;

/** Whether a colour differs by more than so many levels in two words. */
export function differ(a: number, b: number, levels: number): boolean {
  return (
    Math.abs((a & 255) - (b & 255)) > levels ||
    Math.abs(((a >> 8) & 255) - ((b >> 8) & 255)) > levels ||
    Math.abs(((a >> 16) & 255) - ((b >> 16) & 255)) > levels
  );
}

/** How dark the darkest of the three colours is, 0 to 255. */
export function inkLevel(word: number): number {
  return 255 - Math.min(word & 255, (word >> 8) & 255, (word >> 16) & 255);
}

/** Whether there is ink, and more of it than rounding. */
export function isInked(word: number): boolean {
  return (word & COLOUR_BITS) !== COLOUR_BITS && inkLevel(word) > ROUNDING_LEVELS;
}

/** The outermost pixels of a printed area are not looked at: a clip that a renderer rounds may cut them. */
const FRINGE_PX = 1;

/** The pixels that lie wholly within a rectangle of pixels, without its fringe. */
export function pixelsWithin({ x, y, w, h }: Rect, { width, height }: Raster): PixelArea {
  return {
    left: Math.max(0, Math.ceil(x) + FRINGE_PX),
    top: Math.max(0, Math.ceil(y) + FRINGE_PX),
    right: Math.min(width, Math.floor(x + w) - FRINGE_PX),
    bottom: Math.min(height, Math.floor(y + h) - FRINGE_PX),
  };
}

/** The part as a picture. */
export function pictureIn({ width, words }: Raster, { left, top, right, bottom }: PixelArea): Picture {
  const pixels = new Uint8Array((right - left) * (bottom - top) * 3);
  let to = 0;
  for (let y = top; y < bottom; y++) {
    for (let i = y * width + left; i < y * width + right; i++) {
      const word = words[i] ?? 0;
      pixels[to++] = word & 255;
      pixels[to++] = (word >> 8) & 255;
      pixels[to++] = (word >> 16) & 255;
    }
  }
  return { width: right - left, height: bottom - top, pixels };
}
