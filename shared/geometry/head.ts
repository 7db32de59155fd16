// Which way the head of a piece points, and how the head of its back must point on side 2.
import type { Size } from './space.ts';
import type { Turn } from './turn.ts';

/** How far the head is turned from "up", in degrees counter-clockwise. Pieces lie in quarter turns. */
export type Head = 0 | 90 | 180 | 270;

/** All four heads, counter-clockwise from up. */
export const HEADS: readonly Head[] = [0, 90, 180, 270];

/**
 * How the reader turns the piece to see its back: `head-to-head` like a page, about the axis from head to foot;
 * `head-to-toe` like a wall calendar, about the axis from side to side.
 */
export type ReaderTurn = 'head-to-head' | 'head-to-toe';

/** The head for any whole number of quarter turns in degrees; throws for an angle between them. */
export function headOf(degrees: number): Head {
  const turned = ((degrees % 360) + 360) % 360;
  const head = HEADS.find((h) => h === turned);
  if (head === undefined) throw new Error(`${degrees} degrees is not a whole number of quarter turns`);
  return head;
}

/** Whether a piece with this head lies on its side, so that its width runs along the feed. */
export function liesOnItsSide(head: Head): boolean {
  return head === 90 || head === 270;
}

/** The room a piece of this size takes, in pt, when it lies with this head. */
export function lying(size: Size, head: Head): Size {
  return liesOnItsSide(head) ? { w: size.h, h: size.w } : size;
}

/**
 * The head of the back on side 2, for a piece that lies on side 1 with this head.
 * Called with a back's head it gives the front's: the rule is its own inverse.
 *
 * @source The laws of turning; proved by turning points in space in the tests.
 */
export function headBehind(head: Head, turn: Turn, readerTurn: ReaderTurn): Head {
  const staysUp = (turn === 'side-to-side') === (readerTurn === 'head-to-head');
  return headOf(staysUp ? -head : 180 - head);
}
