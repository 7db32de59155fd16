// When a size in the art is the size that the brief wants.
import type { Rect, Size } from '../../geometry/space.ts';
import { POINTS_PER } from '../../units/length.ts';
import { showSize } from '../../units/show.ts';

/**
 * How far the art may differ from the brief and still be what was wanted, in pt: 0.25 mm.
 *
 * Programs round sizes to a tenth of a millimetre or to a point (0.35 mm, half of it on each edge), and no
 * guillotine cuts finer. A 3 mm bleed where 1/8 in is wanted (0.35 mm in the size of the page) is beyond it.
 *
 * @source common practice, no source
 */
export const FIT_TOLERANCE_PT = 0.25 * POINTS_PER.mm;

export function fits(found: Size, wanted: Size): boolean {
  return Math.abs(found.w - wanted.w) <= FIT_TOLERANCE_PT && Math.abs(found.h - wanted.h) <= FIT_TOLERANCE_PT;
}

/** Whether something of the wanted size has room. */
export function hasRoomFor(found: Size, wanted: Size): boolean {
  return found.w >= wanted.w - FIT_TOLERANCE_PT && found.h >= wanted.h - FIT_TOLERANCE_PT;
}

/** Whether two boxes are the same box to a printer. */
export function alike(a: Rect<'art'>, b: Rect<'art'>): boolean {
  return Math.abs(a.x - b.x) <= FIT_TOLERANCE_PT && Math.abs(a.y - b.y) <= FIT_TOLERANCE_PT && fits(a, b);
}

/** A rectangle of this size in the middle of a box, so that what it is too large or too small is halved. */
export function middleOf(box: Rect<'art'>, size: Size): Rect<'art'> {
  return { x: box.x + (box.w - size.w) / 2, y: box.y + (box.h - size.h) / 2, w: size.w, h: size.h };
}

/** A size in inches and millimetres: `5 × 7 in (127 × 177.8 mm)`. */
export function inBoth(size: Size): string {
  return `${showSize(size, 'in')} (${showSize(size, 'mm')})`;
}
