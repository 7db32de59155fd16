// How paper turns over between two passes.
import type { Rect, Side, Size } from './space.ts';
import type { Transform } from './transform.ts';
import { applyToRect } from './transform.ts';

/** The two ways a sheet is turned between passes. Names what the hands do. */
export type Turn = 'side-to-side' | 'end-to-end';

/** The other side of the sheet. */
export type Behind<S extends Side> = S extends 'side1' ? 'side2' : 'side1';

/**
 * What a side becomes when looked at from behind. Both frames have the lead edge of their own pass at the top.
 * Side to side the paper turns about the axis along the feed: x becomes W - x. End to end it turns about the
 * axis across the feed: y becomes H - y. Turning twice leads back.
 *
 * @source CIP4 JDF, orientation matrices Flip180 and Flip0.
 */
export function lookFromBehind<S extends Side>(turn: Turn, sheet: Size): Transform<S, Behind<S>> {
  switch (turn) {
    case 'side-to-side':
      return { a: -1, b: 0, c: 0, d: 1, e: sheet.w, f: 0 };
    case 'end-to-end':
      return { a: 1, b: 0, c: 0, d: -1, e: 0, f: sheet.h };
  }
}

/** Where a rectangle printed on one side lies as seen from the other, in pt. Its size stays just what it was. */
export function seenFromBehind<S extends Side>(rect: Rect<S>, turn: Turn, sheet: Size): Rect<Behind<S>> {
  const { x, y } = applyToRect(lookFromBehind<S>(turn, sheet), rect);
  return { x, y, w: rect.w, h: rect.h };
}
