// Snapping to the sheet itself: its middle, where its printable area ends, and what lies mirrored across its axis.
import type { Rect, Size } from '../../geometry/space.ts';
import { lengthAlong, type SheetAxis, spanOf } from '../axis.ts';
import type { DraggedBox, Neighbour } from './dragged.ts';
import type { SnapTarget } from './guide.ts';

const ENDS = { x: ['left', 'right'], y: ['tail', 'lead'] } as const;

/** The middle of the sheet. */
export function centreTarget(axis: SheetAxis, dragged: DraggedBox, sheet: Size): SnapTarget {
  const whole = lengthAlong(sheet, axis);
  return {
    kind: 'sheet-centre',
    axis,
    at: (whole - lengthAlong(dragged.size, axis)) / 2,
    name: axis === 'x' ? 'sheet centre across the feed' : 'sheet centre along the feed',
    lines: [whole / 2],
    gaps: [],
  };
}

/** Where the bleed reaches just to the end of what can be printed, on both sides of a sheet that is turned. */
export function printableTargets(axis: SheetAxis, dragged: DraggedBox, usable: Rect<'side1'>): SnapTarget[] {
  const { from, to } = spanOf(usable, axis);
  const own = lengthAlong(dragged.size, axis);
  const target = (at: number, line: number, edge: string): SnapTarget => ({
    kind: 'printable-edge',
    axis,
    at,
    name: `printable edge (${edge})`,
    lines: [line],
    gaps: [],
  });
  return [
    target(from + dragged.bleed, from, ENDS[axis][0]),
    target(to - dragged.bleed - own, to, ENDS[axis][1]),
  ];
}

/** Where an edge lies behind the same edge of another piece once the sheet is turned about its middle. */
export function mirrorTargets(
  axis: SheetAxis,
  dragged: DraggedBox,
  other: Neighbour,
  sheet: Size,
): SnapTarget[] {
  const whole = lengthAlong(sheet, axis);
  const { from, to } = spanOf(other.trim, axis);
  const target = (at: number, line: number): SnapTarget => ({
    kind: 'mirror',
    axis,
    at,
    name: `mirror of ${other.name}`,
    lines: [line, whole / 2, whole - line],
    gaps: [],
  });
  return [
    target(whole - to, whole - to),
    target(whole - from - lengthAlong(dragged.size, axis), whole - from),
  ];
}
