// Upright rectangles: growing, meeting, holding one another.
import type { Edges, Rect, Size, Space } from './space.ts';
import { TOLERANCE, within } from './tolerance.ts';

/** The rectangle grown by `by` pt on every side (negative shrinks). */
export function grow<S extends Space>(rect: Rect<S>, by: number): Rect<S> {
  return growEdges(rect, { left: by, right: by, top: by, bottom: by });
}

/** The rectangle grown by its own length on each edge, in pt (negative shrinks). */
export function growEdges<S extends Space>(rect: Rect<S>, by: Edges): Rect<S> {
  return {
    x: rect.x - by.left,
    y: rect.y - by.bottom,
    w: rect.w + by.left + by.right,
    h: rect.h + by.bottom + by.top,
  };
}

/** The rectangle moved by (dx, dy) pt. */
export function shift<S extends Space>(rect: Rect<S>, dx: number, dy: number): Rect<S> {
  return { x: rect.x + dx, y: rect.y + dy, w: rect.w, h: rect.h };
}

/** What two rectangles have in common, or `undefined` where they share no area. */
export function intersection<S extends Space>(a: Rect<S>, b: Rect<S>): Rect<S> | undefined {
  const x = Math.max(a.x, b.x);
  const y = Math.max(a.y, b.y);
  const w = Math.min(a.x + a.w, b.x + b.w) - x;
  const h = Math.min(a.y + a.h, b.y + b.h) - y;
  return w > 0 && h > 0 ? { x, y, w, h } : undefined;
}

/** The smallest rectangle around all of them, or `undefined` for none. */
export function around<S extends Space>(rects: readonly Rect<S>[]): Rect<S> | undefined {
  if (rects.length === 0) return undefined;
  const x = Math.min(...rects.map((r) => r.x));
  const y = Math.min(...rects.map((r) => r.y));
  const right = Math.max(...rects.map((r) => r.x + r.w));
  const top = Math.max(...rects.map((r) => r.y + r.h));
  return { x, y, w: right - x, h: top - y };
}

/** Whether two rectangles share more area than the tolerance forgives; touching edges do not overlap. */
export function overlap<S extends Space>(a: Rect<S>, b: Rect<S>): boolean {
  const common = intersection(a, b);
  return common !== undefined && common.w > TOLERANCE && common.h > TOLERANCE;
}

/** Whether `outer` holds the whole of `inner`, the tolerance granted. */
export function holds<S extends Space>(outer: Rect<S>, inner: Rect<S>): boolean {
  return (
    within(outer.x, inner.x) &&
    within(outer.y, inner.y) &&
    within(inner.x + inner.w, outer.x + outer.w) &&
    within(inner.y + inner.h, outer.y + outer.h)
  );
}

/** The middle of a rectangle as its own space's point. */
export function centre<S extends Space>(rect: Rect<S>): { readonly x: number; readonly y: number } {
  return { x: rect.x + rect.w / 2, y: rect.y + rect.h / 2 };
}

/** The whole of something of this size, with its lower left at the origin. */
export function wholeOf<S extends Space>(size: Size): Rect<S> {
  return { x: 0, y: 0, w: size.w, h: size.h };
}
