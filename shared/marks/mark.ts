// What is printed outside the live area, as plain geometry: lines, rings, filled shapes and words.
import { type Head, headOf } from '../geometry/head.ts';
import { layInto } from '../geometry/lie.ts';
import { around, grow, growEdges } from '../geometry/rect.ts';
import type { Point, Rect, Size, Space } from '../geometry/space.ts';
import { apply, applyToRect, type Transform } from '../geometry/transform.ts';

/**
 * - `registration`: on every plate there is. For what shows whether the plates, or the two sides, meet: crop marks and
 *   register targets.
 * - `black`: on the black plate alone. For what is read: words and scales. On every plate they would take four layers of
 *   ink and blur as soon as one plate is off.
 * - `paper`: knocked out of what lies below.
 *
 * @source ISO 32000-1, 8.6.6.4: the colorant All is meant for marks such as these. The rest: common practice, no source.
 */
export type MarkInk = 'registration' | 'black' | 'paper';

/** The stroke of a fine line, in pt. */
export const HAIRLINE_PT = 0.25;

export interface LineMark {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
  /** The stroke, in pt; the line ends flat at its two points. */
  readonly width: number;
  readonly ink: MarkInk;
}

export interface RingMark {
  readonly kind: 'ring';
  readonly centre: Point;
  readonly radius: number;
  /** The stroke, in pt. */
  readonly width: number;
  readonly ink: MarkInk;
}

export interface ShapeMark {
  readonly kind: 'shape';
  readonly corners: readonly Point[];
  readonly ink: MarkInk;
}

export interface WordsMark {
  readonly kind: 'words';
  readonly words: string;
  /** Where the baseline starts. */
  readonly at: Point;
  /** Of the type, in pt. */
  readonly size: number;
  /** How long the line of type is, in pt. */
  readonly width: number;
  readonly head: Head;
  readonly ink: MarkInk;
}

/** One mark, in pt, in the frame of the side it is printed on. */
export type Mark = LineMark | RingMark | ShapeMark | WordsMark;

/** How far type reaches above and below its baseline, as shares of its size, accents included. */
export const ASCENT = 0.93;
export const DESCENT = 0.24;

/** How long a line of type of size 1 is, in pt, in the face that the words will be printed in. */
export type Measure = (words: string) => number;

/** The upright rectangle that holds all the ink of a mark. */
export function boundsOf(mark: Mark): Rect {
  switch (mark.kind) {
    case 'line': {
      const { from, to } = mark;
      const half = mark.width / 2 / Math.hypot(to.x - from.x, to.y - from.y);
      const x = half * Math.abs(to.y - from.y);
      const y = half * Math.abs(to.x - from.x);
      return growEdges(aroundPoints([from, to]), { left: x, right: x, top: y, bottom: y });
    }
    case 'ring':
      return grow(aroundPoints([mark.centre]), mark.radius + mark.width / 2);
    case 'shape':
      return aroundPoints(mark.corners);
    case 'words': {
      const line = { x: 0, y: -DESCENT * mark.size, w: mark.width, h: (ASCENT + DESCENT) * mark.size };
      const turned = applyToRect(layInto({ x: 0, y: 0, w: 0, h: 0 }, mark.head), line);
      return { ...turned, x: turned.x + mark.at.x, y: turned.y + mark.at.y };
    }
  }
}

/** A mark that has no right or wrong reading, so that it may be looked at from behind. */
export type MirrorMark = LineMark | RingMark;

/** The mark where a transform that keeps lengths takes it. */
export function carryMark(mark: MirrorMark, m: Transform<Space, Space>): MirrorMark {
  return mark.kind === 'line'
    ? { ...mark, from: apply(m, mark.from), to: apply(m, mark.to) }
    : { ...mark, centre: apply(m, mark.centre) };
}

/** Marks that keep together, drawn upright with the lower left of their common room at the origin. */
export interface Stamp {
  readonly size: Size;
  readonly marks: readonly Mark[];
}

/** The marks of a stamp, laid into this room with this head. */
export function layStamp(stamp: Stamp, room: Rect, head: Head): readonly Mark[] {
  return stamp.marks.map((mark) => layMark(mark, layInto(room, head), head));
}

function layMark(mark: Mark, m: Transform<Space, Space>, head: Head): Mark {
  switch (mark.kind) {
    case 'line':
    case 'ring':
      return carryMark(mark, m);
    case 'shape':
      return { ...mark, corners: mark.corners.map((p) => apply(m, p)) };
    case 'words':
      return { ...mark, at: apply(m, mark.at), head: headOf(mark.head + head) };
  }
}

function aroundPoints(points: readonly Point[]): Rect {
  const box = around(points.map((p) => ({ x: p.x, y: p.y, w: 0, h: 0 })));
  if (box === undefined) throw new Error('A mark without a point');
  return box;
}
