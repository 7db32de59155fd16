// Which way the type on a page stands, so that a face whose art is upside down is told before it is printed.
import { HEADS, type Head, headOf } from '../geometry/head.ts';

/** A run of type on a page: how many letters, and how far its line is turned from level, in degrees counter-clockwise. */
export interface TypeRun {
  readonly letters: number;
  readonly angle: number;
}

/** Fewer letters than this say nothing about a page: a mark, a folio, a line on a spine. */
const MIN_LETTERS = 8;
/** The share of the letters that must agree. */
const MIN_CLEAR_SHARE = 0.75;
/** How far, in degrees, a line may lean from a quarter turn and still count to it. */
const MAX_LEAN_DEGREES = 20;

/** The head that most of the type on the page has, or `undefined` where there is little type or it runs every way. */
export function headOfType(runs: readonly TypeRun[]): Head | undefined {
  const all = runs.reduce((sum, run) => sum + run.letters, 0);
  if (all < MIN_LETTERS) return undefined;
  return HEADS.find(
    (head) =>
      runs.reduce((sum, run) => sum + (apart(run.angle, head) <= MAX_LEAN_DEGREES ? run.letters : 0), 0) >=
      MIN_CLEAR_SHARE * all,
  );
}

/** Whether the type of a face stands on its head, once its page is turned by `rotate` as the brief says. */
export function standsOnItsHead(type: Head | undefined, rotate: Head): boolean {
  return type !== undefined && headOf(type + rotate) === 180;
}

function apart(a: number, b: number): number {
  const turned = (((a - b) % 360) + 360) % 360;
  return Math.min(turned, 360 - turned);
}
