// What one pass prints: the placed faces of a form.
import type { Head } from '../geometry/head.ts';
import type { Rect, Side } from '../geometry/space.ts';
import type { BleedArea } from './bleeds.ts';
import type { FaceName } from './position.ts';

/** One face as a pass prints it, in the frame of the side being printed (lead edge up), in pt. */
export interface Placement<S extends Side = Side> {
  readonly piece: string;
  readonly face: FaceName;
  readonly trim: Rect<S>;
  readonly head: Head;
  /** As far as the art is printed: the trim and its bleed, cut back where a gutter is too narrow for both. */
  readonly bleed: BleedArea<S>;
}

/** A form: everything that one pass prints. A one-form style has one that serves both passes. */
export interface Form {
  readonly number: 1 | 2;
  /** The sides of the sheet it is printed on. */
  readonly sides: readonly (1 | 2)[];
  readonly placements: readonly Placement[];
}
