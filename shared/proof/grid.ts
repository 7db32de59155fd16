// The pixels a piece is photographed in: a whole number of them in its trim, so that turning and flipping lose nothing.
import type { Head } from '../geometry/head.ts';
import { lying } from '../geometry/head.ts';
import type { Rect, Size } from '../geometry/space.ts';
import type { Lens } from './sight.ts';

/** Pixels per inch that show 6 pt type and a displacement of 0.02 mm; more only costs time. */
export const WORKING_DPI = 150;

/** A trim of more pixels than this is photographed more coarsely. A poster of 1 x 1.4 m still has 2 pixels to the mm. */
const MOST_PIXELS = 6_000_000;

/** How a piece is photographed, head up. */
export interface Grid {
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
export function gridFor(trim: Size, bleed: number, dpi: number): Grid {
  const scale = Math.min(dpi / 72, Math.sqrt(MOST_PIXELS / (trim.w * trim.h)));
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
export function pictureSize(grid: Grid, head: Head): { readonly width: number; readonly height: number } {
  const { w, h } = lying({ w: grid.width, h: grid.height }, head);
  return { width: w + 2 * grid.margin, height: h + 2 * grid.margin };
}

/** The lens that looks at a trim (pt) on a sheet from straight above, the piece lying with this head. */
export function lensOverSheet(grid: Grid, trim: Rect, head: Head): Lens {
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

/** The lens that looks at a piece, head up, whose frame has its origin in the middle of the trim (pt, y up). */
export function lensOverPiece(grid: Grid): Lens {
  return {
    a: grid.across,
    b: 0,
    c: 0,
    d: -grid.up,
    e: grid.margin + grid.width / 2,
    f: grid.margin + grid.height / 2,
  };
}
