// The one tolerance of the program.

/**
 * Lengths that differ by no more than this are the same length, in pt.
 *
 * 0.01 pt is 3.5 micrometres: a sixth of the dot pitch of a 1200 dpi printer (21 micrometres), so nothing that can
 * be printed or cut is lost in it, and a million times the rounding of float64 at the size of a sheet.
 */
export const TOLERANCE = 0.01;

/** Whether two lengths (pt) are the same to a printer. */
export function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= TOLERANCE;
}

/** Whether `a` is no longer than `b` (pt), the tolerance granted. */
export function within(a: number, b: number): boolean {
  return a <= b + TOLERANCE;
}
