// How far a printed area reaches past each edge of its trim, stretch by stretch.
import { growEdges } from '../geometry/rect.ts';
import type { Edges, Rect, Side } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';
import type { BleedArea } from './bleeds.ts';

/** A stretch of an edge, from its left or lower end, and how far the bleed reaches there, in pt. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly reach: number;
}

/** The stretches of every edge, in order, each edge from its one end to the other. */
export type Reaches = Readonly<Record<keyof Edges, readonly Stretch[]>>;

/** A rectangle as an edge sees it: along the edge from its left or lower end, and outwards from it. */
interface Seen {
  readonly from: number;
  readonly to: number;
  readonly near: number;
  readonly far: number;
}

/** How far the area reaches past every edge of the trim. */
export function reachAlong<S extends Side>(trim: Rect<S>, area: BleedArea<S>): Reaches {
  const level = ({ x, w }: Rect<S>) => ({ from: x - trim.x, to: x + w - trim.x });
  const upright = ({ y, h }: Rect<S>) => ({ from: y - trim.y, to: y + h - trim.y });
  const [right, top] = [trim.x + trim.w, trim.y + trim.h];
  const seen = (view: (rect: Rect<S>) => Seen, length: number) => stretchesOf(area.map(view), length);
  return {
    left: seen((r) => ({ ...upright(r), near: trim.x - r.x - r.w, far: trim.x - r.x }), trim.h),
    right: seen((r) => ({ ...upright(r), near: r.x - right, far: r.x + r.w - right }), trim.h),
    bottom: seen((r) => ({ ...level(r), near: trim.y - r.y - r.h, far: trim.y - r.y }), trim.w),
    top: seen((r) => ({ ...level(r), near: r.y - top, far: r.y + r.h - top }), trim.w),
  };
}

/** The least that the bleed reaches past each edge, in pt. */
export function leastReach(reaches: Reaches): Edges {
  const least = (edge: keyof Edges) => Math.min(...reaches[edge].map(({ reach }) => reach));
  return { left: least('left'), right: least('right'), top: least('top'), bottom: least('bottom') };
}

/** The trim with as much bleed as there is all along each edge: the printed area without its steps. */
export function boxWithin<S extends Side>(trim: Rect<S>, area: BleedArea<S>): Rect<S> {
  return growEdges(trim, leastReach(reachAlong(trim, area)));
}

function stretchesOf(rects: readonly Seen[], length: number): readonly Stretch[] {
  const ends = rects.flatMap(({ from, to }) => [from, to]);
  const stops = [0, ...ends.filter((end) => end > TOLERANCE && end < length - TOLERANCE), length];
  stops.sort((a, b) => a - b);
  const found: { from: number; to: number; reach: number }[] = [];
  for (const [i, to] of stops.entries()) {
    const from = stops[i - 1];
    if (from === undefined || to - from <= TOLERANCE) continue;
    const reach = reachAt(rects, (from + to) / 2);
    const last = found.at(-1);
    if (last?.reach === reach) last.to = to;
    else found.push({ from, to, reach });
  }
  return found;
}

/** How far one gets outwards from the edge at this place without leaving the rectangles. */
function reachAt(rects: readonly Seen[], at: number): number {
  const here = rects.filter(({ from, to }) => from < at && at < to).sort((a, b) => a.near - b.near);
  return here.reduce((reach, { near, far }) => (near <= reach + TOLERANCE ? Math.max(reach, far) : reach), 0);
}
