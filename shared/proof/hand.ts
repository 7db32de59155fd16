// From the sheet into the hand: what is done to a side of the paper, in order, until a face of a piece can be read.
import { type Head, headOf, type ReaderTurn } from '../geometry/head.ts';
import type { Turn } from '../geometry/turn.ts';
import { type Flip, flipPicture, type Picture, turnPicture } from './picture.ts';

/** One thing that hands do to a piece of paper, as it changes the picture that is seen. */
export type Step = { readonly flip: Flip } | { readonly turn: Head };

/** A direction on something flat: x to the right, y up. */
export interface Direction {
  readonly x: number;
  readonly y: number;
}

/**
 * How side 2 looks through the paper, side 1 being on top: the paper was turned about the axis along the feed, which
 * leaves up where it is, or about the axis across the feed, which leaves right where it is.
 */
export function throughPaper(turn: Turn): Flip {
  return turn === 'side-to-side' ? 'left-right' : 'top-bottom';
}

/** What is done with the cut piece to read the face shown on side 1: it is turned until its head is up. */
export function stepsToShownFace(head: Head): readonly Step[] {
  return [{ turn: headOf(-head) }];
}

/**
 * What is done with the cut piece to read the face behind: it is turned until the head of the shown face is up, then
 * turned over by its reader, about the axis from head to foot or about the one from side to side.
 */
export function stepsToFaceBehind(head: Head, readerTurn: ReaderTurn): readonly Step[] {
  return [...stepsToShownFace(head), { flip: readerTurn === 'head-to-head' ? 'left-right' : 'top-bottom' }];
}

/** What is seen after these steps. */
export function takeSteps(picture: Picture, steps: readonly Step[]): Picture {
  return steps.reduce(
    (seen, step) => ('flip' in step ? flipPicture(seen, step.flip) : turnPicture(seen, step.turn)),
    picture,
  );
}

/** Where a direction pointed before these steps were taken. */
export function undoSteps(direction: Direction, steps: readonly Step[]): Direction {
  return steps.reduceRight((d, step) => {
    if ('flip' in step) return step.flip === 'left-right' ? { x: -d.x, y: d.y } : { x: d.x, y: -d.y };
    return turnDirection(d, headOf(-step.turn));
  }, direction);
}

/** How far the steps turn a picture counter-clockwise in all; they flip it twice or not at all. */
export function turnedBy(steps: readonly Step[]): Head {
  const right = undoSteps({ x: 1, y: 0 }, steps);
  if (right.x !== 0) return right.x > 0 ? 0 : 180;
  return right.y < 0 ? 90 : 270;
}

function turnDirection({ x, y }: Direction, ccw: Head): Direction {
  switch (ccw) {
    case 0:
      return { x, y };
    case 90:
      return { x: -y, y: x };
    case 180:
      return { x: -x, y: -y };
    case 270:
      return { x: y, y: -x };
  }
}
