// The questions and refusals that a page of the wrong or an unclear size gets.
import type { Fault } from '../../fault/result.ts';
import { type Head, liesOnItsSide } from '../../geometry/head.ts';
import type { Rect, Size } from '../../geometry/space.ts';
import { showLength } from '../../units/show.ts';
import { type ArtPage, named } from './artPage.ts';
import { inBoth } from './fit.ts';
import { type PieceSize, type Reading, withBleeds } from './readings.ts';

const NEVER_SCALED = 'art is never scaled';

export function trimBoxWrong(page: ArtPage, found: Size, wanted: Size): Fault {
  return {
    code: 'art-size-wrong',
    message: `The TrimBox of ${named(page)} is ${inBoth(found)}, but the brief wants a trim of ${inBoth(wanted)}.`,
    remedy: `Export the page at the size of the brief, or correct "trim" in the brief; ${NEVER_SCALED}.`,
    where: page.art,
  };
}

export function pageSizeWrong(page: ArtPage, found: Size, piece: PieceSize): Fault {
  return {
    code: 'art-size-wrong',
    message: `The size of ${named(page)} is ${inBoth(found)}, but the brief wants ${wantedWords(piece)}.`,
    remedy: `Export the page at the size of the brief with its bleed, or correct "trim" and "bleed" in the brief; ${NEVER_SCALED}.`,
    where: page.art,
  };
}

export function trimNowhere(page: ArtPage, found: Size, piece: PieceSize): Fault {
  return {
    code: 'art-size-unclear',
    message: `Where is the trim on ${named(page)}? The page is ${inBoth(found)}, larger than ${wantedWords(piece)}, and gives no TrimBox.`,
    remedy: `Export it with a TrimBox, or write "trimAt": [x, y] at that face of the brief: where the lower left corner of the trim lies, measured from the lower left corner of the page. If its head is not up, add "rotate": 90, 180 or 270.`,
    where: page.art,
  };
}

/** `found` is a clause: `its TrimBox is 7 × 5 in`. */
export function fitsOnlyTurned(page: ArtPage, found: string, wanted: Size, rotate: Head): Fault {
  const remedy = liesOnItsSide(rotate)
    ? 'Leave out "rotate" at that face of the brief if its head is up as it is, or write "rotate": 180 if it stands on its head.'
    : 'Write "rotate": 90 at that face of the brief if a quarter turn counter-clockwise brings its head up, or "rotate": 270 if a quarter turn clockwise does.';
  const asked = rotate === 0 ? '' : ` turned ${rotate} degrees`;
  return {
    code: 'art-size-unclear',
    message: `Which way is the head of ${named(page)}? The brief wants a trim of ${inBoth(wanted)}, but${asked} ${found}, which fits only when turned.`,
    remedy,
    where: page.art,
  };
}

export function readTwoWays(page: ArtPage, one: Reading, other: Reading): Fault {
  const at = ({ trim }: Reading) => `[${showLength(trim.x, 'in')}, ${showLength(trim.y, 'in')}]`;
  return {
    code: 'art-size-unclear',
    message: `The trim of ${named(page)} can be read in two ways. ${one.said} Or: ${other.said} The one begins at ${at(one)}, the other at ${at(other)}.`,
    remedy: 'Write which as "trimAt": [x, y] at that face of the brief, or export the page with a TrimBox.',
    where: page.art,
  };
}

export function trimOffPage(page: ArtPage, found: Size, trim: Rect<'art'>): Fault {
  const at = `${showLength(trim.x, 'in')}, ${showLength(trim.y, 'in')}`;
  return {
    code: 'art-size-wrong',
    message: `"trimAt" puts a trim of ${inBoth(trim)} at ${at} of ${named(page)}, but the page is ${inBoth(found)}.`,
    remedy:
      'Measure "trimAt" from the lower left corner of the page to the lower left corner of the trim, on the page turned as the brief turns it.',
    where: page.art,
  };
}

function wantedWords(piece: PieceSize): string {
  const trim = `a trim of ${inBoth(piece.trim)}`;
  return piece.bleed > 0 ? `${trim}, which is ${inBoth(withBleeds(piece))} with its bleeds` : trim;
}
