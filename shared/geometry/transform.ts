// Affine transforms that say from which space to which they lead.
import type { Point, Rect, Space } from './space.ts';

declare const from: unique symbol;
declare const to: unique symbol;

/**
 * The matrix `[a b c d e f]` of ISO 32000: x' = a x + c y + e, y' = b x + d y + f, lengths in pt.
 * `From` is contravariant: a transform that starts in one space does not fit where another is expected.
 */
export interface Transform<From extends Space, To extends Space> {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
  readonly [from]?: (space: From) => void;
  readonly [to]?: To;
}

/** Where a point lands. */
export function apply<F extends Space, T extends Space>(m: Transform<F, T>, p: Point<F>): Point<T> {
  return { x: m.a * p.x + m.c * p.y + m.e, y: m.b * p.x + m.d * p.y + m.f };
}

/** First `first`, then `second`. */
export function chain<F extends Space, M extends Space, T extends Space>(
  first: Transform<F, M>,
  second: Transform<M, T>,
): Transform<F, T> {
  return {
    a: second.a * first.a + second.c * first.b,
    b: second.b * first.a + second.d * first.b,
    c: second.a * first.c + second.c * first.d,
    d: second.b * first.c + second.d * first.d,
    e: second.a * first.e + second.c * first.f + second.e,
    f: second.b * first.e + second.d * first.f + second.f,
  };
}

/** The transform that leads back. Throws for one that flattens the plane, which no placement does. */
export function inverse<F extends Space, T extends Space>(m: Transform<F, T>): Transform<T, F> {
  const det = m.a * m.d - m.b * m.c;
  if (!Number.isFinite(det) || Math.abs(det) < 1e-12) {
    throw new Error(`A transform that flattens the plane has no way back: ${JSON.stringify(m)}`);
  }
  return {
    a: m.d / det,
    b: -m.b / det,
    c: -m.c / det,
    d: m.a / det,
    e: (m.c * m.f - m.d * m.e) / det,
    f: (m.b * m.e - m.a * m.f) / det,
  };
}

/** The upright rectangle around where a rectangle lands (its exact image for quarter turns and mirrors). */
export function applyToRect<F extends Space, T extends Space>(m: Transform<F, T>, r: Rect<F>): Rect<T> {
  const corners = [
    apply(m, { x: r.x, y: r.y }),
    apply(m, { x: r.x + r.w, y: r.y }),
    apply(m, { x: r.x, y: r.y + r.h }),
    apply(m, { x: r.x + r.w, y: r.y + r.h }),
  ];
  const x = Math.min(...corners.map((p) => p.x));
  const y = Math.min(...corners.map((p) => p.y));
  return {
    x,
    y,
    w: Math.max(...corners.map((p) => p.x)) - x,
    h: Math.max(...corners.map((p) => p.y)) - y,
  };
}
