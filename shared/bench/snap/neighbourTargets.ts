// Snapping to other pieces: a proper gutter away from them, or in line with their edges so that one cut serves both.
import type { Size } from '../../geometry/space.ts';
import type { Unit } from '../../units/length.ts';
import { showLength } from '../../units/show.ts';
import { lengthAlong, type SheetAxis, spanOf } from '../axis.ts';
import type { DraggedBox, Neighbour } from './dragged.ts';
import type { SnapTarget } from './guide.ts';

/** A gutter away from a neighbour, on either side of it, while the two lie beside each other. */
export function neighbourTargets(
  axis: SheetAxis,
  dragged: DraggedBox,
  other: Neighbour,
  gutter: number,
  unit: Unit,
): SnapTarget[] {
  const { from, to } = spanOf(other.trim, axis);
  const target = (at: number, gap: readonly [number, number]): SnapTarget => ({
    kind: 'gutter',
    axis,
    at,
    name: `gutter of ${showLength(gutter, unit)} to ${other.name}`,
    lines: [...gap],
    gaps: [{ from: gap[0], to: gap[1] }],
    beside: spanOf(other.trim, axis === 'x' ? 'y' : 'x'),
  });
  return [
    target(to + gutter, [to, to + gutter]),
    target(from - gutter - lengthAlong(dragged.size, axis), [from - gutter, from]),
  ];
}

/** A gutter away from its own partner, which follows on the other side of the middle of the sheet. */
export function partnerTargets(
  axis: SheetAxis,
  dragged: DraggedBox,
  sheet: Size,
  gutter: number,
  unit: Unit,
): SnapTarget[] {
  const middle = lengthAlong(sheet, axis) / 2;
  const lines = [middle - gutter / 2, middle + gutter / 2];
  const target = (at: number): SnapTarget => ({
    kind: 'gutter',
    axis,
    at,
    name: `gutter of ${showLength(gutter, unit)} to its partner`,
    lines,
    gaps: [{ from: middle - gutter / 2, to: middle + gutter / 2 }],
  });
  return [target(middle + gutter / 2), target(middle - gutter / 2 - lengthAlong(dragged.size, axis))];
}

/** In line with the edges and with the middle of another piece. */
export function inLineTargets(axis: SheetAxis, dragged: DraggedBox, other: Neighbour): SnapTarget[] {
  const { from, to } = spanOf(other.trim, axis);
  const own = lengthAlong(dragged.size, axis);
  const target = (at: number, line: number): SnapTarget => ({
    kind: 'in-line',
    axis,
    at,
    name: `in line with ${other.name}`,
    lines: [line],
    gaps: [],
  });
  return [target(from, from), target(to - own, to), target((from + to - own) / 2, (from + to) / 2)];
}
