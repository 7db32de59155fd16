// How far each bleed is printed: whole where there is room, to the middle of the gutter where two would meet.
import { grow, growEdges, overlap } from '../geometry/rect.ts';
import type { Edges, Rect, Side } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';

/** A trim rectangle and the bleed its art has, in pt. */
export interface Bleeding<S extends Side> {
  readonly trim: Rect<S>;
  readonly bleed: number;
}

const EDGES = ['left', 'right', 'bottom', 'top'] as const;

/**
 * The printed area of each of them, in pt: its trim grown by its bleed, cut back to the middle of the gap wherever
 * it would run into the bleed of a neighbour (or to where a neighbour with less bleed than half the gap ends).
 * Pieces that overlap are left as they are; that is a fault of its own.
 */
export function bleedAreas<S extends Side>(placed: readonly Bleeding<S>[]): readonly Rect<S>[] {
  return placed.map((one) => {
    const near = placed.filter((other) => other !== one && mayMeet(one, other));
    const limits = near.map((other) => limitFrom(one, other));
    const reach = (edge: keyof Edges) =>
      Math.min(one.bleed, ...limits.map((limit) => limit[edge] ?? one.bleed));
    return growEdges(one.trim, {
      left: reach('left'),
      right: reach('right'),
      bottom: reach('bottom'),
      top: reach('top'),
    });
  });
}

/** Passes over what lies far apart, which on a sheet of many pieces is nearly all. */
function mayMeet<S extends Side>(
  { trim: a, bleed }: Bleeding<S>,
  { trim: b, bleed: theirs }: Bleeding<S>,
): boolean {
  const reach = bleed + theirs;
  return (
    a.x - b.x - b.w < reach && b.x - a.x - a.w < reach && a.y - b.y - b.h < reach && b.y - a.y - a.h < reach
  );
}

/** How far `one` may bleed towards `other`, on the edge that faces it across the widest gap. */
function limitFrom<S extends Side>(one: Bleeding<S>, other: Bleeding<S>): Partial<Edges> {
  if (!overlap(grow(one.trim, one.bleed), grow(other.trim, other.bleed))) return {};
  const gaps = gapsBetween(one.trim, other.trim);
  const facing = EDGES.reduce((widest, edge) => (gaps[edge] > gaps[widest] ? edge : widest));
  const gap = gaps[facing];
  if (gap < -TOLERANCE) return {};
  return { [facing]: Math.max(0, gap / 2, gap - other.bleed) };
}

function gapsBetween<S extends Side>(a: Rect<S>, b: Rect<S>): Edges {
  return {
    left: a.x - (b.x + b.w),
    right: b.x - (a.x + a.w),
    bottom: a.y - (b.y + b.h),
    top: b.y - (a.y + a.h),
  };
}
