// Lengths as whole ticks, so that sums of many cells are exact and a fit on paper is never lost to rounding.
import type { Size } from '../../geometry/space.ts';
import { TOLERANCE } from '../../geometry/tolerance.ts';

/**
 * A millionth of a point, so chosen that typed lengths are whole: thousandths of a millimetre (2,880 ticks), of an
 * inch (73,152) and of a point (1,016), and the 128ths of an inch (571,500).
 */
const TICKS_PER_POINT = 1_016_000;

/** What float64 may have added to a length that is a whole number of ticks. */
const NOISE = 1e-3;

/** The ticks that a piece of this length (pt) needs: whole if the length is, else the next ones up. */
export function needed(length: number): number {
  return Math.ceil(length * TICKS_PER_POINT - NOISE);
}

/** The ticks that this much room (pt) offers, the tolerance granted once for the whole of it. */
export function offered(length: number): number {
  return Math.ceil((length + TOLERANCE) * TICKS_PER_POINT) - 1;
}

/** A region (pt) in ticks. */
export function offeredRegion(region: Size): Size {
  return { w: offered(region.w), h: offered(region.h) };
}
