// The frame of the printing process: as the open job ticket counts, with the lead edge at y = 0.
import type { Rect, Side, Size, Space } from '../geometry/space.ts';
import { applyToRect, type Transform } from '../geometry/transform.ts';

/**
 * From a side as the program counts it (lead edge at the top) to the frame of the process: half a turn in the plane
 * of the sheet, the same for both sides, so that the law of turning stays what it is.
 *
 * @source CIP4 JDF, coordinate systems: X along the lead edge, Y along the travel of the sheet, 0 at the lead edge;
 * orientation matrix Rotate180. That the ticket's layout is counted so is read from there, and was tried on no reader.
 */
export function intoPress(sheet: Size): Transform<Side, Space> {
  return { a: -1, b: 0, c: 0, d: -1, e: sheet.w, f: sheet.h };
}

/** A rectangle of a side as `llx lly urx ury` in the frame of the process, in pt. */
export function pressBox(r: Rect<Side>, sheet: Size): string {
  const { x, y, w, h } = applyToRect(intoPress(sheet), r);
  return numbersOf(x, y, x + w, y + h);
}

/** A transform as the ticket writes it: `a b c d e f`. */
export function xjdfMatrixOf<From extends Space, To extends Space>(m: Transform<From, To>): string {
  return numbersOf(m.a, m.b, m.c, m.d, m.e, m.f);
}

/** Numbers in a list, to a ten-thousandth of a point. */
export function numbersOf(...values: readonly number[]): string {
  return values.map((value) => `${Number(value.toFixed(4))}`).join(' ');
}
