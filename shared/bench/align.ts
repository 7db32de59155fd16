// Aligning and distributing: how far each of several pieces moves to stand in line or at equal gaps.
import { around } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { lengthAlong, type SheetAxis, spanOf } from './axis.ts';

/** What pieces are brought in line by: an edge, named as the printer meets it, or their middles. */
export const ALIGNMENTS = ['left', 'middle-across', 'right', 'lead', 'middle-along', 'tail'] as const;

export type Alignment = (typeof ALIGNMENTS)[number];

/** How far a piece moves, in pt. */
export interface PieceShift {
  readonly dx: number;
  readonly dy: number;
}

/** The shifts that bring these trims in line within a frame, by default the box around them. */
export function align(
  trims: readonly Rect<'side1'>[],
  by: Alignment,
  frame: Rect<'side1'> | undefined = around(trims),
): readonly PieceShift[] {
  if (frame === undefined) return [];
  const [axis, share] = WHERE[by];
  const { from, to } = spanOf(frame, axis);
  return trims.map((trim) => {
    const place = from + (to - from - lengthAlong(trim, axis)) * share;
    return along(axis, place - spanOf(trim, axis).from);
  });
}

/** For each alignment its axis, and the share of the free room that lies before the piece. */
const WHERE: Readonly<Record<Alignment, readonly [SheetAxis, number]>> = {
  left: ['x', 0],
  'middle-across': ['x', 0.5],
  right: ['x', 1],
  tail: ['y', 0],
  'middle-along': ['y', 0.5],
  lead: ['y', 1],
};

/**
 * The shifts that put equal gaps between these trims along an axis, in the order of their middles. The first stays;
 * without `gap` (pt) the last stays too, and what is between them is shared out.
 */
export function distribute(
  trims: readonly Rect<'side1'>[],
  axis: SheetAxis,
  gap?: number,
): readonly PieceShift[] {
  const order = trims
    .map((trim, i) => ({ i, span: spanOf(trim, axis) }))
    .sort((a, b) => a.span.from + a.span.to - b.span.from - b.span.to);
  const [first, last] = [order[0], order.at(-1)];
  if (first === undefined || last === undefined) return [];
  const filled = order.reduce((sum, { span }) => sum + span.to - span.from, 0);
  const between = gap ?? (last.span.to - first.span.from - filled) / Math.max(1, order.length - 1);
  const shifts = trims.map(() => along(axis, 0));
  let next = first.span.from;
  for (const { i, span } of order) {
    shifts[i] = along(axis, next - span.from);
    next += span.to - span.from + between;
  }
  return shifts;
}

function along(axis: SheetAxis, by: number): PieceShift {
  return axis === 'x' ? { dx: by, dy: 0 } : { dx: 0, dy: by };
}
