// The hands of a printer and the paper in them: what is laid in, printed, turned and looked at, with paper in space.
import type { Handling } from '../../shared/job/cautions.ts';
import { type Job, sheetOf } from '../../shared/job/job.ts';
import { formsOfJob, type SidePage } from '../../shared/job/nameJobFiles.ts';
import { cutOut, hold, type Ink, print } from './paper.ts';
import { type Edge, poseAfter, type Turned } from './paperInPasses.ts';

/** What came of the steps. */
export interface Hands {
  /** Sheets that were laid in, that are left when one of them is right, and that may be spoiled. */
  loaded: number;
  others: number;
  overs: number;
  /** Where the guides of the printer stand. */
  guide: 'left' | 'right' | 'centre' | undefined;
  /** The edge of the pile, side 1 up, with the pencil line. */
  pencil: 'left' | 'right' | undefined;
  /** What is asked of the two sides of the paper. */
  alike: 'must be' | 'are said to be' | 'are not' | undefined;
  /** About which edge the printer turns the sheet itself, if it does. */
  flips: 'long' | 'short' | undefined;
  /** What was printed on the first sheet, and how it was turned last. */
  readonly ink: Ink[];
  turned: Turned;
  wet: boolean;
  /** How the backs of pieces were looked at, by the names that were said. */
  readonly looked: Map<string, 'like a page' | 'like a calendar'>;
  readonly notNamed: number[];
  /** What was done, in order, by the names of the sentences. */
  readonly done: string[];
  /** What the hands did in each group that can hurt them, and the cautions that stood there. */
  readonly handled: { readonly did: Set<Handling>; readonly warned: readonly Handling[] }[];
}

/** What the hands work on. */
export interface Shop {
  readonly job: Job;
  readonly sides: readonly SidePage[];
}

/** Hands that have not begun. */
export function emptyHands(): Hands {
  return {
    loaded: 0,
    others: 0,
    overs: 0,
    guide: undefined,
    pencil: undefined,
    alike: undefined,
    flips: undefined,
    ink: [],
    turned: undefined,
    wet: false,
    looked: new Map(),
    notNamed: [],
    done: [],
    handled: [],
  };
}

export function must(true_: boolean, claim: string): void {
  if (!true_) throw new Error(`This is not so: ${claim}`);
}

export const does = (hands: Hands, what: Handling) => hands.handled.at(-1)!.did.add(what);

/** Prints what a side of the sheet is to show on whatever lies upwards. */
export function printOne(hands: Hands, { job }: Shop, side: 1 | 2): void {
  const form = formsOfJob(job).find(({ sides }) => sides.includes(side))!;
  const faces = form.placements.map(({ piece, face, trim, head }) => ({
    art: `${piece} ${face}`,
    trim,
    head,
  }));
  const drops = print(faces, poseAfter(hands.turned, sheetOf(job.brief).size));
  must(!hands.ink.some((old) => drops.some((drop) => drop.at[2] === old.at[2])), 'this side is still blank');
  hands.ink.push(...drops);
  hands.wet = true;
  does(hands, 'feed');
}

/** A file that is named prints the side it is named for; none is named where none is known. */
export function takeFile({ sides }: Shop, side: 1 | 2, name: string | undefined): void {
  must(name === sides.find((s) => s.side === side)?.name, `side ${side} is printed from ${name}`);
}

/** Takes the sheet out and lays it in again. */
export function turnOver(hands: Hands, turn: Turned): void {
  must(!hands.wet, 'the ink is dry');
  hands.turned = turn;
}

/** The printer turns the sheet about the axis along the feed, or across it: whichever runs along the edge that is set. */
export function flip(hands: Hands, { job }: Shop): void {
  const { w, h } = sheetOf(job.brief).size;
  const alongTheFeed = hands.flips === 'long' ? h >= w : h < w;
  hands.turned = alongTheFeed ? 'side-to-side' : 'end-to-end';
}

export const guideEdge = ({ guide }: Hands): Edge => {
  if (guide === undefined || guide === 'centre') throw new Error('The sheet lies at no side guide');
  return guide;
};

/** A length or a size as it is read on a rule: to half a thousandth of an inch. */
export function sameOnTheRule(said: string, pt: readonly number[]): boolean {
  const [numbers = '', unit] = said.split(/ (?=in$|mm$)/);
  const per = { in: 72, mm: 72 / 25.4 }[unit as 'in' | 'mm'];
  const read = numbers.split(' × ').map((n) => Number(n) * per);
  return read.length === pt.length && read.every((n, i) => Math.abs(n - pt[i]!) < 0.04);
}

/** The margin beside the outermost trims at an edge of side 1. */
export function marginAt({ job }: Shop, edge: Edge): number {
  const { w, h } = sheetOf(job.brief).size;
  const trims = job.arrangement.map(({ trim }) => trim);
  return {
    left: Math.min(...trims.map((t) => t.x)),
    right: Math.min(...trims.map((t) => w - t.x - t.w)),
    tail: Math.min(...trims.map((t) => t.y)),
    lead: Math.min(...trims.map((t) => h - t.y - t.h)),
  }[edge];
}

export function lookAtBacks(
  hands: Hands,
  { job }: Shop,
  names: string,
  how: 'like a page' | 'like a calendar',
): void {
  const [, said = '', more] = /^(.+?)(?: and (\d+) more)?$/.exec(names)!;
  for (const name of said.split(', ')) hands.looked.set(name, how);
  if (more !== undefined) hands.notNamed.push(Number(more));
  for (const { piece, trim, head } of job.arrangement) {
    if (!said.split(', ').includes(piece)) continue;
    const seen = hold(cutOut(hands.ink, trim), head);
    const behind = how === 'like a page' ? seen.turnedLikeAPage : seen.turnedLikeACalendar;
    const [up] = Object.entries(behind).filter(([mark]) => mark.endsWith(' head'));
    must(up?.[1] === 'up', `the back of ${piece} stands upright when it is turned ${how}`);
  }
}
