// One piece cut from the sheet and held: which part of each side it is, and how its two pages are seen when it is turned.
import { type Head, headBehind, headOf, lying, type ReaderTurn } from '../../shared/geometry/head.ts';
import { layInto } from '../../shared/geometry/lie.ts';
import type { Rect, Side, Size } from '../../shared/geometry/space.ts';
import { inverse, type Transform } from '../../shared/geometry/transform.ts';
import { seenFromBehind } from '../../shared/geometry/turn.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { designsOf, type Job, sheetOf } from '../../shared/job/job.ts';
import { designNamed } from '../../shared/layout/forms.ts';
import { type ShownPiece, type SideUp, shownPieces } from '../sheet/pieces/shownPieces.ts';

/** One page of the held piece: the part of a side that it was cut from, and which way is up in the hand. */
export interface HeldPage {
  readonly side: SideUp;
  readonly trim: Rect<Side>;
  /** How far the direction that is up in the hand is turned from up on its side. */
  readonly up: Head;
  /** What is printed there, if anything. */
  readonly printed: ShownPiece | undefined;
}

/** The held piece: its upright size in pt, and its two pages. */
export interface HeldPiece {
  readonly piece: string;
  readonly turned: ReaderTurn;
  readonly size: Size;
  /** With the front's head up. */
  readonly front: HeldPage;
  /** As it is seen when the piece is turned like a page; none on a sheet that is printed on one side. */
  readonly behind: HeldPage | undefined;
}

/** How the piece is held: which page is towards the eye, and whether the hand has turned it upside down. */
export interface CardHold {
  readonly shows: 'front' | 'behind';
  readonly flipped: boolean;
}

/** Front towards the eye, its head up. */
export const TAKEN: CardHold = { shows: 'front', flipped: false };

/** Turned like a page it stays upright; turned like a calendar what was up goes down. */
export function turnHeld({ shows, flipped }: CardHold, way: ReaderTurn): CardHold {
  return {
    shows: shows === 'front' ? 'behind' : 'front',
    flipped: way === 'head-to-toe' ? !flipped : flipped,
  };
}

/** The page that is towards the eye; `undefined` for the unprinted back of a one-sided sheet. */
export function pageShown(held: HeldPiece, { shows, flipped }: CardHold): HeldPage | undefined {
  const page = held[shows];
  return page && (flipped ? { ...page, up: headOf(page.up + 180) } : page);
}

/** Takes a position in hand. `undefined` where there is no such position. */
export function takeInHand(job: Job, index: number): HeldPiece | undefined {
  const position = job.arrangement[index];
  if (position === undefined) return undefined;
  const { piece, trim, head, face } = position;
  const { turned } = designNamed(designsOf(job.brief), piece);
  const base = { piece, turned, size: lying({ w: trim.w, h: trim.h }, head) };
  const turn = turnOf(job.brief.work);
  if (turn === undefined) return { ...base, front: pageOf(job, 1, trim, head), behind: undefined };
  const other = seenFromBehind<'side1'>(trim, turn, sheetOf(job.brief).size);
  if (face === 'front') {
    const up = headBehind(head, turn, 'head-to-head');
    return { ...base, front: pageOf(job, 1, trim, head), behind: pageOf(job, 2, other, up) };
  }
  // The front lies on side 2: it is held as it is printed there, or as it should be.
  const front = printedAt(job, 2, other)?.head ?? headBehind(head, turn, turned);
  const up = headBehind(front, turn, 'head-to-head');
  return { ...base, front: pageOf(job, 2, other, front), behind: pageOf(job, 1, trim, up) };
}

function pageOf(job: Job, side: SideUp, trim: Rect<Side>, up: Head): HeldPage {
  return { side, trim, up, printed: printedAt(job, side, trim) };
}

/** The piece whose middle lies on this place. */
function printedAt(job: Job, side: SideUp, place: Rect<Side>): ShownPiece | undefined {
  const [x, y] = [place.x + place.w / 2, place.y + place.h / 2];
  return shownPieces(job, side).findLast(
    ({ trim, face }) =>
      face !== undefined && x > trim.x && x < trim.x + trim.w && y > trim.y && y < trim.y + trim.h,
  );
}

/** From the side of the sheet to the piece as it is held. */
export function intoHand(page: HeldPage): Transform<Side, 'piece'> {
  return inverse(layInto<'piece', Side>(page.trim, page.up));
}

/** What the eye sees on a page, in words: `the back of "Supper", upside down`. */
export function pageInWords({ printed, up }: HeldPage): string {
  if (printed?.face === undefined) return 'blank paper';
  return `the ${printed.face} of "${printed.piece}", ${STANDS[headOf(printed.head - up)]}`;
}

const STANDS: Readonly<Record<Head, string>> = {
  0: 'the right way up',
  90: 'lying on its side',
  180: 'upside down',
  270: 'lying on its side',
};
