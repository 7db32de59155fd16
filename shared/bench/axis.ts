// Across and along the feed: the two directions of the sheet, so that one rule serves both.
import type { Rect, Size, Space } from '../geometry/space.ts';
import type { Turn } from '../geometry/turn.ts';

/** `x` runs across the feed, `y` along it, towards the lead edge. */
export type SheetAxis = 'x' | 'y';

export const AXES: readonly SheetAxis[] = ['x', 'y'];

/** A stretch of one axis, in pt. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export function spanOf(rect: Rect<Space>, axis: SheetAxis): Span {
  return axis === 'x' ? { from: rect.x, to: rect.x + rect.w } : { from: rect.y, to: rect.y + rect.h };
}

/** Whether two stretches share more than a point. */
export function meet(a: Span, b: Span): boolean {
  return a.from < b.to && b.from < a.to;
}

/** The axis along which places change when the sheet is turned: the one whose two margins register. */
export function mirroredAxis(turn: Turn): SheetAxis {
  return turn === 'side-to-side' ? 'x' : 'y';
}

/** Where a stretch of this length begins, moved from `at` by as little as keeps it within a room that can hold it. */
export function keepWithin(room: Span, at: number, length: number): number {
  return Math.max(room.from, Math.min(room.to - length, at));
}

export function lengthAlong(size: Size, axis: SheetAxis): number {
  return axis === 'x' ? size.w : size.h;
}
