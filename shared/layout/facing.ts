// How a piece faces another that is near: across which gap, and how far its bleed may go there.
import type { Edges, Rect, Side } from '../geometry/space.ts';
import { TOLERANCE, within } from '../geometry/tolerance.ts';
import type { Bleeding } from './bleeding.ts';

/** The edges, in the order in which they are asked. */
export const FACING_EDGES = ['left', 'right', 'bottom', 'top'] as const;

/** How a piece faces a rival. */
export interface Facing<S extends Side> {
  /** The edge across the widest gap between them, and that gap in pt. */
  readonly edge: keyof Edges;
  readonly gap: number;
  /** How far its bleed may go there. */
  readonly limit: number;
  /** The trim of the rival. */
  readonly rival: Rect<S>;
  /** Whether they face each other only across a corner. */
  readonly isAcrossCorner: boolean;
}

export function faceOf<S extends Side>({ trim }: Bleeding<S>, rival: Bleeding<S>): Facing<S> {
  const { trim: other } = rival;
  const left = trim.x - (other.x + other.w);
  const right = other.x - (trim.x + trim.w);
  const bottom = trim.y - (other.y + other.h);
  const top = other.y - (trim.y + trim.h);
  const gap = Math.max(left, right, bottom, top);
  const edge = gap === left ? 'left' : gap === right ? 'right' : gap === bottom ? 'bottom' : 'top';
  return {
    edge,
    gap,
    limit: Math.max(0, gap / 2, gap - rival.bleed),
    rival: other,
    isAcrossCorner: Math.max(left, right) > -TOLERANCE && Math.max(bottom, top) > -TOLERANCE,
  };
}

/** Whether the rival lies before the whole of the edge. */
export function coversEdge<S extends Side>({ edge, rival }: Facing<S>, trim: Rect<S>): boolean {
  return edge === 'left' || edge === 'right'
    ? within(rival.y, trim.y) && within(trim.y + trim.h, rival.y + rival.h)
    : within(rival.x, trim.x) && within(trim.x + trim.w, rival.x + rival.w);
}

/** What of the bleed lies beyond its limit, over the breadth of the rival. */
export function beyondLimit<S extends Side>(
  { edge, limit, rival }: Facing<S>,
  { trim, bleed }: Bleeding<S>,
): Rect<S> {
  const past = Math.max(0, bleed - limit);
  switch (edge) {
    case 'left':
      return { ...rival, x: trim.x - bleed, w: past };
    case 'right':
      return { ...rival, x: trim.x + trim.w + limit, w: past };
    case 'bottom':
      return { ...rival, y: trim.y - bleed, h: past };
    case 'top':
      return { ...rival, y: trim.y + trim.h + limit, h: past };
  }
}
