// A piece as its bleed sees it.
import type { Rect, Side } from '../geometry/space.ts';

/** A trim rectangle and the bleed its art has, in pt. */
export interface Bleeding<S extends Side> {
  readonly trim: Rect<S>;
  readonly bleed: number;
}
