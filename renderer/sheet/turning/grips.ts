// Taking paper by an edge: which turn it makes, and how far the hand is from the axis. Lengths in px of the window.
import { lengthAlong, mirroredAxis } from '../../../shared/bench/axis.ts';
import { type Grip, turnByEdge } from '../../../shared/bench/turning.ts';
import type { SheetEdge } from '../../../shared/geometry/sheet.ts';
import type { Point, Rect, Size } from '../../../shared/geometry/space.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';

/** On the screen, where y runs down, these edges are at the high end of their axis. */
const HIGH_ENDS: readonly SheetEdge[] = ['right', 'tail'];

/** The grip of a hand that takes paper, lying there, by this edge at a point of the screen. */
export function gripAt(edge: SheetEdge, at: Point<'screen'>, lying: Rect<'screen'>): Grip {
  const axis = mirroredAxis(turnByEdge(edge));
  const end = HIGH_ENDS.includes(edge) ? 1 : -1;
  return { axis, end, grabbed: Math.max(1, handFrom(at, { axis, end }, lying)) };
}

/** The grip of paper of this size that is turned without a hand: by its right edge, or by its tail. */
export function gripFor(turn: Turn, size: Size): Grip {
  const axis = mirroredAxis(turn);
  return { axis, end: 1, grabbed: lengthAlong(size, axis) / 2 };
}

/** How far the hand is from the axis, counted towards where it took the paper. */
export function handFrom(
  at: Point<'screen'>,
  { axis, end }: Pick<Grip, 'axis' | 'end'>,
  { x, y, w, h }: Rect<'screen'>,
): number {
  const middle = { x: x + w / 2, y: y + h / 2 };
  return end * (at[axis] - middle[axis]);
}
