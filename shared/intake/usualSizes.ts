// The sizes that pieces of this trade usually have, for telling trim from bleed on a page that does not say.
import type { Size } from '../geometry/space.ts';
import { type Length, lengthOf, points, type Unit } from '../units/length.ts';

/** A size as it is written, the shorter side first. */
export type LengthPair = readonly [Length, Length];

/**
 * Card, invitation, postcard, menu and tag sizes.
 *
 * @source ISO 216 for the A sizes and ISO 269 for DL (99 x 210 mm is a third of A4), from memory; ISO/IEC 7810 ID-1 for
 * 85.6 x 53.98 mm, from memory; all others common practice, no source.
 */
const SIZES: readonly (readonly [number, number, Unit])[] = [
  [1.5, 3, 'in'],
  [2, 2, 'in'],
  [2, 3.5, 'in'],
  [2.5, 2.5, 'in'],
  [2.5, 3.5, 'in'],
  [3, 3, 'in'],
  [3, 5, 'in'],
  [3.5, 5, 'in'],
  [3.5, 7.5, 'in'],
  [3.5, 8.5, 'in'],
  [4, 4, 'in'],
  [4, 6, 'in'],
  [4, 9, 'in'],
  [4.25, 5.5, 'in'],
  [4.25, 11, 'in'],
  [5, 5, 'in'],
  [5, 7, 'in'],
  [5.5, 8.5, 'in'],
  [6, 6, 'in'],
  [6, 9, 'in'],
  [8, 10, 'in'],
  [8.5, 11, 'in'],
  [8.5, 14, 'in'],
  [11, 17, 'in'],
  [50, 90, 'mm'],
  [52, 74, 'mm'],
  [53.98, 85.6, 'mm'],
  [55, 85, 'mm'],
  [55, 90, 'mm'],
  [74, 105, 'mm'],
  [98, 98, 'mm'],
  [99, 210, 'mm'],
  [105, 105, 'mm'],
  [105, 148, 'mm'],
  [105, 210, 'mm'],
  [120, 120, 'mm'],
  [148, 148, 'mm'],
  [148, 210, 'mm'],
  [210, 210, 'mm'],
  [210, 297, 'mm'],
  [297, 420, 'mm'],
];

/** Half of what two sizes of the list differ by at least: a page is rounded to a point or a tenth of a millimetre. */
const SAME_SIZE_PT = 0.4;

/** The usual size that this one (pt) is, written the same way up. */
export function usualSizeOf({ w, h }: Size): LengthPair | undefined {
  for (const [short, long, unit] of SIZES) {
    const size = [lengthOf(short, unit), lengthOf(long, unit)] as const;
    if (isNear(size[0], w) && isNear(size[1], h)) return size;
    if (isNear(size[1], w) && isNear(size[0], h)) return [size[1], size[0]];
  }
  return undefined;
}

function isNear(length: Length, pt: number): boolean {
  return Math.abs(points(length) - pt) <= SAME_SIZE_PT;
}
