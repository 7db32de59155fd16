// What a plain page is drawn from: paths and words in shades of grey, that an office printer prints and a window shows.
import { type Head, headOf } from '../../geometry/head.ts';
import type { Point, Rect, Space } from '../../geometry/space.ts';
import { apply, type Transform } from '../../geometry/transform.ts';

/** `ink` is read, `soft` stands back, `pale` lies behind words, `paper` is white on dark. */
export type InkTone = 'ink' | 'soft' | 'pale' | 'paper';

/** How a path is drawn along: its width in pt, and the lengths of dashes and gaps where it is broken. */
export interface Stroke {
  readonly tone: InkTone;
  readonly width: number;
  readonly dash?: readonly number[];
}

/** A cubic curve to `to`, drawn towards `c1` first and arriving from `c2`. */
export interface Bend {
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
}

/** One stretch of a path without lifting the pen. */
export interface Contour {
  readonly from: Point;
  readonly along: readonly (Point | Bend)[];
  readonly closed: boolean;
}

export interface PathShape {
  readonly kind: 'path';
  readonly contours: readonly Contour[];
  readonly fill?: InkTone;
  readonly stroke?: Stroke;
}

/** The weight of type. */
export type Weight = 'plain' | 'strong';

export interface WordsShape {
  readonly kind: 'words';
  readonly words: string;
  /** Where the baseline starts. */
  readonly at: Point;
  /** In pt. */
  readonly size: number;
  readonly weight: Weight;
  readonly tone: InkTone;
  readonly head: Head;
}

/** Anything on a page, in pt, y up. */
export type Shape = PathShape | WordsShape;

/** How a path looks. */
export type Look = Pick<PathShape, 'fill' | 'stroke'>;

export function line(from: Point, to: Point, stroke: Stroke): PathShape {
  return { kind: 'path', contours: [{ from, along: [to], closed: false }], stroke };
}

export function polygon(corners: readonly [Point, ...Point[]], look: Look): PathShape {
  const [from, ...along] = corners;
  return { kind: 'path', contours: [{ from, along, closed: true }], ...look };
}

export function box(r: Rect, look: Look): PathShape {
  return boxes([r], look);
}

/** Many boxes as one path. */
export function boxes(rects: readonly Rect[], look: Look): PathShape {
  const contours = rects.map(({ x, y, w, h }) => ({
    from: { x, y },
    along: [
      { x: x + w, y },
      { x: x + w, y: y + h },
      { x, y: y + h },
    ],
    closed: true,
  }));
  return { kind: 'path', contours, ...look };
}

/** A curve from `from` along one bend. */
export function curve(from: Point, bend: Bend, stroke: Stroke): PathShape {
  return { kind: 'path', contours: [{ from, along: [bend], closed: false }], stroke };
}

/** The shapes moved by (dx, dy). */
export function moveShapes(shapes: readonly Shape[], dx: number, dy: number): readonly Shape[] {
  return carryShapes(shapes, { a: 1, b: 0, c: 0, d: 1, e: dx, f: dy }, 0);
}

/** The shapes through a transform that keeps lengths and turns by the quarter turns of `head`. */
export function carryShapes(
  shapes: readonly Shape[],
  m: Transform<Space, Space>,
  head: Head,
): readonly Shape[] {
  const carry = (p: Point) => apply(m, p);
  return shapes.map((shape) => {
    if (shape.kind === 'words') {
      return { ...shape, at: carry(shape.at), head: headOf(shape.head + head) };
    }
    const contours = shape.contours.map(({ from, along, closed }) => ({
      from: carry(from),
      along: along.map((step) =>
        'to' in step ? { c1: carry(step.c1), c2: carry(step.c2), to: carry(step.to) } : carry(step),
      ),
      closed,
    }));
    return { ...shape, contours };
  });
}
