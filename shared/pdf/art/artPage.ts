// One page of the art as it is viewed: upright, in points, its lower left at the origin.
import type { PDFContext } from 'pdf-lib';
import { type Fault, ok, type Result, refuse } from '../../fault/result.ts';
import { HEADS, type Head } from '../../geometry/head.ts';
import type { Rect, Size } from '../../geometry/space.ts';
import { within } from '../../geometry/tolerance.ts';
import { applyToRect, type Transform } from '../../geometry/transform.ts';
import { showSize } from '../../units/show.ts';
import { type Given, type PageBoxes, readBoxes } from './boxes.ts';
import type { ArtLimits } from './limits.ts';
import type { Leaf } from './pageTree.ts';
import { asNumber, under } from './peek.ts';

/** A page of the art, in plain values: it may be sent between threads. All lengths are in pt. */
export interface ArtPage {
  /** The file, as said to people. */
  readonly art: string;
  /** From 1. */
  readonly number: number;
  /** The media box, upright as viewed. */
  readonly size: Size;
  readonly boxes: PageBoxes<'art'>;
  readonly given: Given;
  /** The page's own Rotate, in degrees **clockwise** as the standard counts it; already applied to the boxes. */
  readonly rotate: Head;
  /** How many points one unit of the file's page is. */
  readonly userUnit: number;
  /** From the page as its file counts (default user space) to the page as viewed. */
  readonly toArt: Transform<'user', 'art'>;
  /** What was set right on the way, in words. */
  readonly notices: readonly string[];
}

/** How a page is named in a sentence: `page 2 of supper.pdf`. */
export function named(page: Pick<ArtPage, 'art' | 'number'>): string {
  return `page ${page.number} of ${page.art}`;
}

/**
 * Reads the size and the boxes of one page.
 *
 * @source ISO 32000-1, Table 30: Rotate is clockwise and a multiple of 90, UserUnit a positive number of 1/72 in.
 */
export function readPage(
  context: PDFContext,
  leaf: Leaf,
  page: Pick<ArtPage, 'art' | 'number'>,
  limits: ArtLimits,
): Result<ArtPage> {
  const read = readBoxes(context, leaf);
  if (read === undefined) return refuse(sizeless(page));
  const notices: string[] = [];
  const turned = asNumber(context, leaf.inherited.Rotate) ?? 0;
  const rotate = HEADS.find((head) => head === ((turned % 360) + 360) % 360);
  if (rotate === undefined) {
    notices.push(`The Rotate of ${named(page)} is ${turned}, no quarter turn; it was taken as 0.`);
  }
  const unit = asNumber(context, under(leaf.dict, 'UserUnit')) ?? 1;
  const userUnit = unit > 0 ? unit : 1;
  if (unit <= 0) notices.push(`The UserUnit of ${named(page)} is ${unit}; it was taken as 1.`);

  const { media, crop, bleed, trim, art } = read.boxes;
  const toArt = uprightOf(media, rotate ?? 0, userUnit);
  const upright = (box: Rect<'user'>): Rect<'art'> => applyToRect(toArt, box);
  const { w, h } = upright(media);
  if (within(limits.side, w) || within(limits.side, h)) return refuse(tooLarge(page, { w, h }, limits));
  return ok({
    ...page,
    size: { w, h },
    boxes: {
      media: upright(media),
      crop: upright(crop),
      bleed: upright(bleed),
      trim: upright(trim),
      art: upright(art),
    },
    given: read.given,
    rotate: rotate ?? 0,
    userUnit,
    toArt,
    notices,
  });
}

/** Turns the page clockwise by `rotate`, scales it to points, and brings its lower left to the origin. */
function uprightOf(media: Rect<'user'>, rotate: Head, unit: number): Transform<'user', 'art'> {
  const left = unit * media.x;
  const bottom = unit * media.y;
  const right = unit * (media.x + media.w);
  const top = unit * (media.y + media.h);
  switch (rotate) {
    case 0:
      return { a: unit, b: 0, c: 0, d: unit, e: -left, f: -bottom };
    case 90:
      return { a: 0, b: -unit, c: unit, d: 0, e: -bottom, f: right };
    case 180:
      return { a: -unit, b: 0, c: 0, d: -unit, e: right, f: top };
    case 270:
      return { a: 0, b: unit, c: -unit, d: 0, e: top, f: -left };
  }
}

function sizeless(page: Pick<ArtPage, 'art' | 'number'>): Fault {
  return {
    code: 'art-size-unclear',
    message: `There is no size in ${named(page)}: its MediaBox is missing or has no area.`,
    remedy: 'Export the page again from the program that made it.',
    where: page.art,
  };
}

function tooLarge(page: Pick<ArtPage, 'art' | 'number'>, size: Size, limits: ArtLimits): Fault {
  const limit = `${limits.side / 72} in`;
  return {
    code: 'art-too-large',
    message: `The size of ${named(page)} is ${showSize(size, 'in')}; a side of ${limit} or more cannot be laid out.`,
    remedy: 'Export the page at the true size of the piece, not at a scale or on a pasteboard.',
    where: page.art,
  };
}
