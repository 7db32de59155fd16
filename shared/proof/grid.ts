// The pixels a piece is rendered in: a whole number of them in its trim, so that turning and flipping lose nothing.
import type { Head } from '../geometry/head.ts';
import { lying } from '../geometry/head.ts';
import type { Rect, Size } from '../geometry/space.ts';
import type { Affine } from './pageSource.ts';

/** Pixels per inch that show 6 pt type and a displacement of 0.02 mm; more only costs time. */
export const WORKING_DPI = 150;

/** A trim of more pixels than this is rendered more coarsely. A poster of 1 x 1.4 m still has 2 pixels to the mm. */
const MAX_TRIM_PIXELS = 6_000_000;

/** How a piece is rendered, head up. */
export interface PixelGrid {
  /** The trim, in pixels. */
  readonly width: number;
  readonly height: number;
  /** Pixels to the pt, across the piece and up it; they differ by less than a pixel over the whole trim. */
  readonly across: number;
  readonly up: number;
  /** Pixels of surroundings on every side, enough for the bleed. */
  readonly margin: number;
}

/** The grid for a trim and bleed in pt. */
export function gridFor(trim: Size, bleed: number, dpi: number): PixelGrid {
  const scale = Math.min(dpi / 72, Math.sqrt(MAX_TRIM_PIXELS / (trim.w * trim.h)));
  const width = Math.max(1, Math.round(trim.w * scale));
  const height = Math.max(1, Math.round(trim.h * scale));
  return {
    width,
    height,
    across: width / trim.w,
    up: height / trim.h,
    margin: Math.ceil(bleed * scale) + 2,
  };
}

/** The size in pixels of a picture with its margins, for a piece that lies with this head. */
export function pictureSize(
  grid: PixelGrid,
  head: Head,
): { readonly width: number; readonly height: number } {
  const { w, h } = lying({ w: grid.width, h: grid.height }, head);
  return { width: w + 2 * grid.margin, height: h + 2 * grid.margin };
}

/** From the sheet (pt) to the picture of a trim on it, the piece lying with this head. */
export function sheetToPicture(grid: PixelGrid, trim: Rect, head: Head): Affine {
  const { w: sx, h: sy } = lying({ w: grid.across, h: grid.up }, head);
  return {
    a: sx,
    b: 0,
    c: 0,
    d: -sy,
    e: grid.margin - trim.x * sx,
    f: grid.margin + (trim.y + trim.h) * sy,
  };
}

/** From a piece, head up (pt from the middle of its trim, y up), to its picture. */
export function pieceToPicture(grid: PixelGrid): Affine {
  return {
    a: grid.across,
    b: 0,
    c: 0,
    d: -grid.up,
    e: grid.margin + grid.width / 2,
    f: grid.margin + grid.height / 2,
  };
}
