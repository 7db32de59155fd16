// Turning a piece where it lies: about its own middle, then drawn to where its bleed prints and its partner has room.
import {
  AXES,
  keepWithin,
  lengthAlong,
  mirroredAxis,
  type SheetAxis,
  type Span,
  spanOf,
} from '../bench/axis.ts';
import { headOf } from '../geometry/head.ts';
import { centre, grow, wholeOf } from '../geometry/rect.ts';
import { turnOf } from '../geometry/work.ts';
import { designNamed } from '../layout/forms.ts';
import type { Position } from '../layout/position.ts';
import { points } from '../units/length.ts';
import { designsOf, type Job, sheetOf, usableOf } from './job.ts';
import { partnerIndex } from './partners.ts';

/** A position turned by quarter turns counter-clockwise. A half turn leaves the trim where it is. */
export function turnHead(job: Job, position: Position, quarters: number): Position {
  const turned = aboutMiddle(position, quarters);
  return quarters % 2 === 0
    ? turned
    : AXES.reduce((p, axis) => draw(p, axis, rooms(job, position, turned, axis)), turned);
}

function aboutMiddle(position: Position, quarters: number): Position {
  const { trim } = position;
  const middle = centre(trim);
  const size = quarters % 2 === 0 ? { w: trim.w, h: trim.h } : { w: trim.h, h: trim.w };
  return {
    ...position,
    head: headOf(position.head + 90 * quarters),
    trim: { x: middle.x - size.w / 2, y: middle.y - size.h / 2, ...size },
  };
}

/** Where the trim of a turned position may lie along an axis, in pt: the best place first, anywhere on the sheet last. */
function rooms(job: Job, before: Position, turned: Position, axis: SheetAxis): readonly Span[] {
  const { size } = sheetOf(job.brief);
  const turn = turnOf(job.brief.work);
  const { bleed } = designNamed(designsOf(job.brief), turned.piece);
  const usable = usableOf(job.brief);
  const sheet = spanOf(wholeOf(size), axis);
  const printed = usable === undefined ? sheet : spanOf(grow(usable, -bleed), axis);
  if (turn === undefined || mirroredAxis(turn) !== axis || partnerIndex(job, before) === undefined) {
    return [printed, sheet];
  }
  const middle = lengthAlong(size, axis) / 2;
  const isLow = centre(before.trim)[axis] <= middle;
  const length = lengthAlong(turned.trim, axis);
  /** The part of the piece's own half of the sheet that leaves half a gutter to the axis, or what is left of it. */
  const half = (margin: number): Span => {
    const clear = Math.max(0, Math.min(points(job.brief.gutter) / 2, middle - margin - length));
    return isLow ? { from: 0, to: middle - clear } : { from: middle + clear, to: sheet.to };
  };
  const margin = isLow ? printed.from : sheet.to - printed.to;
  return [common(printed, half(margin)), half(0), sheet];
}

function common(a: Span, b: Span): Span {
  return { from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) };
}

/** The position moved along an axis by as little as brings it into the first room that it fits. */
function draw(position: Position, axis: SheetAxis, into: readonly Span[]): Position {
  const { trim } = position;
  const length = lengthAlong(trim, axis);
  const room = into.find((span) => length <= span.to - span.from);
  if (room === undefined) return position;
  return { ...position, trim: { ...trim, [axis]: keepWithin(room, trim[axis], length) } };
}
