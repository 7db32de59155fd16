// The arrangement: where the pieces lie on side 1. Side 2 follows from it by the law of turning.
import type { Head } from '../geometry/head.ts';
import type { Rect } from '../geometry/space.ts';

/** The two faces of a piece. */
export type FaceName = 'front' | 'back';

/** The other face. */
export function otherFace(face: FaceName): FaceName {
  return face === 'front' ? 'back' : 'front';
}

/** One piece on the sheet. `face` is what side 1 shows there; the other face is printed behind it. */
export interface Position {
  readonly piece: string;
  readonly face: FaceName;
  /** The trim rectangle on side 1, lead edge up, in pt. */
  readonly trim: Rect<'side1'>;
  /** How far the head of the shown face is turned from up, in degrees counter-clockwise. */
  readonly head: Head;
}
