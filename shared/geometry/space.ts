// The spaces that points live in, and the points, rectangles and boxes that say which space is theirs.

/**
 * The frames of the program. All have x to the right and, but for the screen, y up and lengths in pt (1/72 inch).
 *
 * - `side1`, `side2`: a side of the sheet as one looks at it, lead edge at the top, origin at the lower left.
 *   A page that is written for a side is in the frame of that side.
 * - `piece`: one piece, head up, origin at the lower left of its trim.
 * - `art`: one page of the art made upright, origin at the lower left of its media box.
 * - `user`: the same page as its file counts, before Rotate and UserUnit: its unit may not be the pt.
 * - `screen`: what the window shows, in px from its upper left, y down.
 */
export type Space = 'side1' | 'side2' | 'piece' | 'art' | 'user' | 'screen';

/** The two sides of the sheet. */
export type Side = 'side1' | 'side2';

declare const space: unique symbol;

/** A point. The space is a type only: a plain `{ x, y }` fits any, a point of another space does not. */
export interface Point<S extends Space = Space> {
  readonly x: number;
  readonly y: number;
  readonly [space]?: S;
}

/** An upright rectangle: the corner where its x and y are least, and its size, both sides >= 0. */
export interface Rect<S extends Space = Space> {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly [space]?: S;
}

/** A size in pt: `w` across, `h` up. For a sheet, `w` is across the feed and `h` along it. */
export interface Size {
  readonly w: number;
  readonly h: number;
}

/** Lengths on the four edges of something upright, in pt. */
export interface Edges {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
