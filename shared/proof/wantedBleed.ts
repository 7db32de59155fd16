// How far the bleed of each position has to reach: its own length, but no farther than the middle of a gutter.
import { grow, overlap } from '../geometry/rect.ts';
import type { Edges, Rect, Size } from '../geometry/space.ts';
import { within } from '../geometry/tolerance.ts';

/** A trim on side 1 and the bleed of its piece, in pt. */
export interface TrimAndBleed {
  readonly trim: Rect<'side1'>;
  readonly bleed: number;
}

/**
 * The bleed that must be seen around `one`, in pt for each edge of side 1. It ends at the edge of the sheet, and at
 * the middle of the gutter to any neighbour whose bleed it would meet.
 */
export function wantedBleed(one: TrimAndBleed, others: readonly TrimAndBleed[], sheet: Size): Edges {
  const { trim, bleed } = one;
  let { left, right, top, bottom } = {
    left: Math.min(bleed, trim.x),
    right: Math.min(bleed, sheet.w - trim.x - trim.w),
    bottom: Math.min(bleed, trim.y),
    top: Math.min(bleed, sheet.h - trim.y - trim.h),
  };
  for (const other of others) {
    if (!overlap(grow(trim, bleed), grow(other.trim, other.bleed))) continue;
    left = limited(left, trim.x - other.trim.x - other.trim.w);
    right = limited(right, other.trim.x - trim.x - trim.w);
    bottom = limited(bottom, trim.y - other.trim.y - other.trim.h);
    top = limited(top, other.trim.y - trim.y - trim.h);
  }
  return {
    left: Math.max(0, left),
    right: Math.max(0, right),
    top: Math.max(0, top),
    bottom: Math.max(0, bottom),
  };
}

/** Half of a gap (pt) that is there at all limits the bleed; a negative one, beyond rounding, lies on another edge. */
function limited(bleed: number, gap: number): number {
  return within(0, gap) ? Math.min(bleed, gap / 2) : bleed;
}
