// What is drawn on a plain page, taken apart: words with the room they take, and paths with the boxes around them.

import type { Point } from '../../shared/geometry/space.ts';
import { ASCENT, DESCENT } from '../../shared/marks/mark.ts';
import type { PathShape, Shape, WordsShape } from '../../shared/pdf/document/shape.ts';
import { MEASURES } from './setPapers.ts';

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export const pathsIn = (shapes: readonly Shape[]): readonly PathShape[] =>
  shapes.filter((shape): shape is PathShape => shape.kind === 'path');
export const wordsIn = (shapes: readonly Shape[]): readonly WordsShape[] =>
  shapes.filter((shape): shape is WordsShape => shape.kind === 'words');
export const textIn = (shapes: readonly Shape[]): string =>
  wordsIn(shapes)
    .map(({ words }) => words)
    .join(' ');

export const pointsOf = ({ contours }: PathShape): readonly Point[] =>
  contours.flatMap(({ from, along }) => [from, ...along.map((step) => ('to' in step ? step.to : step))]);

/** The box around a path, its stroke left out. */
export function extentOf(shape: PathShape): Extent {
  const points = pointsOf(shape);
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** The room that upright words take, accents and tails included. */
export function roomOf({ words, at, size, weight }: WordsShape): Extent {
  return {
    left: at.x,
    right: at.x + MEASURES[weight](words) * size,
    bottom: at.y - DESCENT * size,
    top: at.y + ASCENT * size,
  };
}

/** Whether one lies in the other with this much to spare, in pt. */
export function liesIn(inner: Extent, outer: Extent, spare = 0): boolean {
  const by = spare - 1e-6;
  return (
    inner.left >= outer.left + by &&
    inner.right <= outer.right - by &&
    inner.bottom >= outer.bottom + by &&
    inner.top <= outer.top - by
  );
}

/** Whether two have no room in common. */
export function liesApart(a: Extent, b: Extent): boolean {
  const near = 1e-6;
  return (
    a.right <= b.left + near ||
    b.right <= a.left + near ||
    a.top <= b.bottom + near ||
    b.top <= a.bottom + near
  );
}
