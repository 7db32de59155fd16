// The boxes of a page: which of them its file gives, and what the others are by default.
import type { PDFContext, PDFObject } from 'pdf-lib';
import { intersection } from '../../geometry/rect.ts';
import type { Rect } from '../../geometry/space.ts';
import type { Leaf } from './pageTree.ts';
import { asNumbers, under } from './peek.ts';

/** The five boxes of a page, in one space. */
export interface PageBoxes<S extends 'art' | 'user'> {
  readonly media: Rect<S>;
  readonly crop: Rect<S>;
  readonly bleed: Rect<S>;
  readonly trim: Rect<S>;
  readonly art: Rect<S>;
}

/** Which of the boxes the file gives itself. The media box it always must. */
export type Given = Readonly<Record<'crop' | 'bleed' | 'trim' | 'art', boolean>>;

/**
 * The boxes of a page as its file counts, or `undefined` where it has no media box with any area. The crop box
 * is the media box unless given, the other three are the crop box unless given, and all end at the media box.
 * A box without any area inside the media box counts as not given.
 *
 * @source ISO 32000-1, 14.11.2 (page boundaries), 7.9.5 (rectangles: any two opposite corners).
 */
export function readBoxes(
  context: PDFContext,
  leaf: Leaf,
): { readonly boxes: PageBoxes<'user'>; readonly given: Given } | undefined {
  const media = readRectangle(context, leaf.inherited.MediaBox);
  if (media === undefined) return undefined;
  const within = (value: PDFObject | undefined) => {
    const rect = readRectangle(context, value);
    return rect === undefined ? undefined : intersection(media, rect);
  };
  const crop = within(leaf.inherited.CropBox);
  const bleed = within(under(leaf.dict, 'BleedBox'));
  const trim = within(under(leaf.dict, 'TrimBox'));
  const art = within(under(leaf.dict, 'ArtBox'));
  const seen = crop ?? media;
  return {
    boxes: { media, crop: seen, bleed: bleed ?? seen, trim: trim ?? seen, art: art ?? seen },
    given: {
      crop: crop !== undefined,
      bleed: bleed !== undefined,
      trim: trim !== undefined,
      art: art !== undefined,
    },
  };
}

/** A rectangle with some area, from any two opposite corners. */
export function readRectangle(context: PDFContext, value: PDFObject | undefined): Rect<'user'> | undefined {
  const [x1, y1, x2, y2] = asNumbers(context, value, 4) ?? [];
  if (x1 === undefined || y1 === undefined || x2 === undefined || y2 === undefined) return undefined;
  const w = Math.abs(x2 - x1);
  const h = Math.abs(y2 - y1);
  return w > 0 && h > 0 ? { x: Math.min(x1, x2), y: Math.min(y1, y2), w, h } : undefined;
}
