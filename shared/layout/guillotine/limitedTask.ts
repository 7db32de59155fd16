// What is to be cut when there are only so many copies of each kind.
import type { Size } from '../../geometry/space.ts';
import { type Axis, axisOf } from './axis.ts';
import type { OfferedWay } from './unlimitedSearch.ts';

/** Kinds of pieces with a value and a number of copies each, the ways they may lie, and the room (ticks). */
export interface LimitedTask {
  readonly room: Size;
  readonly ways: readonly OfferedWay[];
  readonly values: readonly number[];
  readonly copies: readonly number[];
}

/** What all copies are worth together. */
export function valueOfAll({ values, copies }: LimitedTask): number {
  return values.reduce((sum, value, k) => sum + value * (copies[k] as number), 0);
}

/** The two directions of the room. */
export interface Axes {
  readonly across: Axis;
  readonly up: Axis;
}

/** The axes of a task, with at most about `most` stops each. */
export function axesOf({ ways, copies, room }: LimitedTask, most: number): Axes {
  const runs = (length: (way: OfferedWay) => number) =>
    ways.map((way) => ({ length: length(way), copies: copies[way.kind] as number }));
  return {
    across: axisOf(
      runs((way) => way.w),
      room.w,
      most,
    ),
    up: axisOf(
      runs((way) => way.h),
      room.h,
      most,
    ),
  };
}
