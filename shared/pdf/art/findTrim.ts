// Finding the trim on a page of the art: where it says so itself, else from its size, and never by guessing.
import { ok, type Result, refuse } from '../../fault/result.ts';
import { type Head, lying } from '../../geometry/head.ts';
import { grow, holds } from '../../geometry/rect.ts';
import type { Edges, Rect, Size } from '../../geometry/space.ts';
import { type ArtPage, named } from './artPage.ts';
import { FIT_TOLERANCE_PT, fits, hasRoomFor, inBoth, middleOf } from './fit.ts';
import { type PieceSize, type Reading, readPageSize, withBleeds } from './readings.ts';
import {
  fitsOnlyTurned,
  pageSizeWrong,
  readTwoWays,
  trimBoxWrong,
  trimNowhere,
  trimOffPage,
} from './trimFaults.ts';
import { type TurnedPage, turnPage } from './turnArt.ts';

/** What the brief says of one face: the size of the piece, and how its page is to be read. */
export interface TrimWish extends PieceSize {
  /** How far the page is turned to bring its head up, in degrees counter-clockwise; not at all by default. */
  readonly rotate?: Head | undefined;
  /** Where the lower left of the trim lies on the turned page, in pt from the lower left of its media box. */
  readonly trimAt?: { readonly x: number; readonly y: number } | undefined;
}

/** The trim on the page turned as the wish says, in pt from the lower left of the turned page. */
export interface FoundTrim {
  /** Just the size that was wished; where the art is a hair larger or smaller, in its middle. */
  readonly trim: Rect<'art'>;
  /** How far the art reaches beyond the trim on every edge, in pt. */
  readonly bleedReach: Edges;
  /** Where the trim was found, in words. */
  readonly said: string;
}

/**
 * Where the trim lies on a page, by the first of these that holds: the brief's own `trimAt`; a TrimBox of the right
 * size; the page (its media box or its crop box) as trim and bleeds, or as trim without bleed. A page that can be
 * read in more than one way, that is larger than trim and bleeds, or that fits only when turned is a question
 * (`art-size-unclear`); any other size is wrong (`art-size-wrong`). A TrimBox that only repeats the page is passed
 * over. Nothing is ever scaled.
 *
 * @source ISO 32000-1, 14.11.2 for what the boxes mean; the readings are common practice, no source.
 */
export function findTrim(page: ArtPage, wish: TrimWish): Result<FoundTrim> {
  const rotate = wish.rotate ?? 0;
  const turned = turnPage(page, rotate);
  const { trimAt } = wish;
  const reading =
    trimAt === undefined ? readTrim(page, turned, wish, rotate) : readAt(page, turned, wish.trim, trimAt);
  if (!reading.ok) return reading;
  const { trim, said } = reading.value;
  const turnedWords =
    rotate === 0 ? '' : ` It is turned ${rotate} degrees counter-clockwise, as the brief says.`;
  return ok({ trim, bleedReach: reachBeyond(trim, turned), said: said + turnedWords });
}

function readAt(
  page: ArtPage,
  turned: TurnedPage,
  { w, h }: Size,
  { x, y }: NonNullable<TrimWish['trimAt']>,
): Result<Reading> {
  const trim: Rect<'art'> = { x, y, w, h };
  if (!holds(grow(turned.media, FIT_TOLERANCE_PT), trim))
    return refuse(trimOffPage(page, turned.media, trim));
  return ok({ trim, said: `The trim of ${named(page)} is where the brief puts it.` });
}

function readTrim(page: ArtPage, turned: TurnedPage, wish: TrimWish, rotate: Head): Result<Reading> {
  const { trim: box, trimRepeatsPage } = turned;
  if (box !== undefined && fits(box, wish.trim)) {
    return ok({ trim: middleOf(box, wish.trim), said: `The trim of ${named(page)} is its TrimBox.` });
  }
  if (box !== undefined && !trimRepeatsPage) {
    const found = `its TrimBox is ${inBoth(box)}`;
    const fitsTurned = fits(box, lying(wish.trim, 90));
    return refuse(
      fitsTurned ? fitsOnlyTurned(page, found, wish.trim, rotate) : trimBoxWrong(page, box, wish.trim),
    );
  }
  const [first, second] = readPageSize(turned, wish);
  if (first === undefined) return refuse(askSize(page, turned, wish, rotate));
  if (second !== undefined) return refuse(readTwoWays(page, first, second));
  const repeated = trimRepeatsPage ? ' Its TrimBox only repeats the page, so it was not counted.' : '';
  return ok({ trim: first.trim, said: first.said + repeated });
}

/** What is wrong with a page whose size agrees with the brief in no way. */
function askSize(page: ArtPage, turned: TurnedPage, wish: TrimWish, rotate: Head) {
  const { crop, media } = turned;
  const onItsSide = readPageSize(turned, { trim: lying(wish.trim, 90), bleed: wish.bleed });
  if (onItsSide.length > 0) return fitsOnlyTurned(page, `it is ${inBoth(crop)}`, wish.trim, rotate);
  return hasRoomFor(media, withBleeds(wish))
    ? trimNowhere(page, crop, wish)
    : pageSizeWrong(page, crop, wish);
}

/**
 * How far the art reaches beyond the trim: to its bleed box where it gives one that holds the trim (what lies
 * outside is printer's marks), else to the edges of its media box.
 */
function reachBeyond(trim: Rect<'art'>, { bleed, media }: TurnedPage): Edges {
  const end = bleed !== undefined && holds(grow(bleed, FIT_TOLERANCE_PT), trim) ? bleed : media;
  return {
    left: trim.x - end.x,
    right: end.x + end.w - (trim.x + trim.w),
    top: end.y + end.h - (trim.y + trim.h),
    bottom: trim.y - end.y,
  };
}
