// A page of the art turned so that its head is up, as the person says.
import { type Head, lying } from '../../geometry/head.ts';
import type { Rect, Size } from '../../geometry/space.ts';
import { applyToRect, type Transform } from '../../geometry/transform.ts';
import type { ArtPage } from './artPage.ts';
import { alike } from './fit.ts';

/** A turned page: what its trim is looked for on. All in pt, the page's lower left at the origin. */
export interface TurnedPage {
  readonly media: Rect<'art'>;
  readonly crop: Rect<'art'>;
  /** The bleed box and the trim box, where the file gives them. */
  readonly bleed: Rect<'art'> | undefined;
  readonly trim: Rect<'art'> | undefined;
  /** Whether the trim box says nothing that the page does not. */
  readonly trimRepeatsPage: boolean;
}

/**
 * Turns a page of this size (pt) counter-clockwise by `rotate` and brings its lower left back to the origin. Both
 * sides are art space: the page as viewed, and the page as viewed once it is turned.
 */
export function turnArt(size: Size, rotate: Head): Transform<'art', 'art'> {
  const { w, h } = lying(size, rotate);
  switch (rotate) {
    case 0:
      return { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
    case 90:
      return { a: 0, b: 1, c: -1, d: 0, e: w, f: 0 };
    case 180:
      return { a: -1, b: 0, c: 0, d: -1, e: w, f: h };
    case 270:
      return { a: 0, b: -1, c: 1, d: 0, e: 0, f: h };
  }
}

/** The boxes of a page once it is turned. */
export function turnPage({ size, boxes, given }: ArtPage, rotate: Head): TurnedPage {
  const turning = turnArt(size, rotate);
  const media = applyToRect(turning, boxes.media);
  const crop = applyToRect(turning, boxes.crop);
  const trim = given.trim ? applyToRect(turning, boxes.trim) : undefined;
  return {
    media,
    crop,
    bleed: given.bleed ? applyToRect(turning, boxes.bleed) : undefined,
    trim,
    trimRepeatsPage: trim !== undefined && (alike(trim, media) || alike(trim, crop)),
  };
}
