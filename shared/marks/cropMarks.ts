// Crop marks: where the knife goes, told by fine lines that end before any bleed begins.
import { HEADS, type Head } from '../geometry/head.ts';
import { layInto } from '../geometry/lie.ts';
import { grow, growEdges } from '../geometry/rect.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Rect } from '../geometry/space.ts';
import { same, within } from '../geometry/tolerance.ts';
import { applyToRect, inverse } from '../geometry/transform.ts';
import { POINTS_PER } from '../units/length.ts';
import { HAIRLINE_PT, type LineMark } from './mark.ts';
import { CLEARANCE_PT } from './room.ts';

/** Length of a crop mark, the least that is still of use, and the least distance from the trim, in pt. */
const MARK_LENGTH_PT = 5 * POINTS_PER.mm;
const MIN_MARK_LENGTH_PT = 2 * POINTS_PER.mm;
const MARK_OFFSET_PT = 2 * POINTS_PER.mm;

/** A place on the sheet: what is cut out, and as far as art is printed around it: rectangles side by side. */
export interface MarkedCell {
  readonly trim: Rect;
  readonly bleed: readonly Rect[];
}

export interface CropMarks {
  readonly marks: readonly LineMark[];
  /** The edges of the sheet along which no crop mark found room. */
  readonly bare: readonly SheetEdge[];
  /** How many lines are to be cut, and how many of them have no crop mark at all. */
  readonly cuts: number;
  readonly unmarked: number;
}

/** The edge of the sheet that points up once all is turned by this head. */
const TURNED_UP: Readonly<Record<Head, SheetEdge>> = { 0: 'lead', 90: 'right', 180: 'tail', 270: 'left' };

/**
 * Crop marks at every trim edge, outward from the corners of every piece.
 *
 * A mark begins clear of its own bleed and at least 2 mm from the trim, is 5 mm long, and is cut short where the
 * printable area ends or where it would come as near to a neighbour; what is then shorter than 2 mm is left out, which
 * is what happens inside ordinary gutters. Marks that continue one another become one. Cells that fall on themselves when
 * mirrored give marks that do.
 *
 * @source Common practice, no source: 5 mm long, 0.25 pt, outside the bleed.
 */
export function cropMarks(cells: readonly MarkedCell[], area: Rect): CropMarks {
  const towards = HEADS.map((head) => {
    const turn = layInto({ x: 0, y: 0, w: 0, h: 0 }, head);
    const turned = cells.map((c) => ({
      trim: applyToRect(turn, c.trim),
      bleed: c.bleed.map((r) => applyToRect(turn, r)),
    }));
    const strokes = strokesUp(turned, applyToRect(turn, area));
    return { edge: TURNED_UP[head], strokes: strokes.map((s) => applyToRect(inverse(turn), s)) };
  });
  const strokes = towards.flatMap((t) => t.strokes);
  const upright = joinUpright(strokes.filter((s) => s.h > s.w));
  const level = joinUpright(strokes.filter((s) => s.w > s.h).map(transpose)).map(transpose);
  const cuts = [
    ...distinct(cells.flatMap((c) => [c.trim.x, c.trim.x + c.trim.w])).map((x) => ({ x })),
    ...distinct(cells.flatMap((c) => [c.trim.y, c.trim.y + c.trim.h])).map((y) => ({ y })),
  ];
  return {
    marks: [...upright, ...level].map(drawStroke),
    bare: towards.filter((t) => t.strokes.length === 0).map((t) => t.edge),
    cuts: cuts.length,
    unmarked: cuts.filter((c) =>
      'x' in c ? !upright.some((s) => same(s.x, c.x)) : !level.some((s) => same(s.y, c.y)),
    ).length,
  };
}

/** The strokes that lead upwards from the upper corners of every cell, each a rectangle without width. */
function strokesUp(cells: readonly MarkedCell[], area: Rect): readonly Rect[] {
  const placed = cells.map(({ trim, bleed }) => ({
    trim,
    free: [grow(trim, MARK_OFFSET_PT), ...bleed.map((r) => keptFree(trim, r))],
  }));
  const kept = placed.flatMap(({ free }) => free);
  const fromLeft = area.x + HAIRLINE_PT / 2;
  const toRight = area.x + area.w - HAIRLINE_PT / 2;
  return placed.flatMap(({ trim, free }) => {
    return [trim.x, trim.x + trim.w].flatMap((x) => {
      if (!within(fromLeft, x) || !within(x, toRight)) return [];
      const own = free.filter((f) => within(f.x, x) && within(x, f.x + f.w));
      const start = Math.max(...own.map((f) => f.y + f.h));
      let end = Math.min(start + MARK_LENGTH_PT, area.y + area.h);
      for (const f of kept) {
        if (f.y < end && !within(x, f.x) && !within(f.x + f.w, x) && !within(f.y + f.h, start)) end = f.y;
      }
      return within(MIN_MARK_LENGTH_PT, end - start) ? [{ x, y: start, w: 0, h: end - start }] : [];
    });
  });
}

/** What crop marks keep out of around a rectangle of the printed area of a piece. */
function keptFree(trim: Rect, printed: Rect): Rect {
  // An edge that lies within the trim is a step between two rectangles.
  const by = (out: number) => (within(0, out) ? Math.max(MARK_OFFSET_PT - out, CLEARANCE_PT) : CLEARANCE_PT);
  return growEdges(printed, {
    left: by(trim.x - printed.x),
    right: by(printed.x + printed.w - trim.x - trim.w),
    top: by(printed.y + printed.h - trim.y - trim.h),
    bottom: by(trim.y - printed.y),
  });
}

/** Upright strokes on one line that touch or overlap become one stroke; the lines run from left to right. */
function joinUpright(strokes: readonly Rect[]): readonly Rect[] {
  return distinct(strokes.map((s) => s.x)).flatMap((x) => {
    const joined: { x: number; y: number; w: number; h: number }[] = [];
    for (const s of strokes.filter((o) => same(o.x, x)).sort((a, b) => a.y - b.y)) {
      const last = joined.at(-1);
      if (last !== undefined && within(s.y, last.y + last.h)) last.h = Math.max(last.h, s.y + s.h - last.y);
      else joined.push({ x, y: s.y, w: 0, h: s.h });
    }
    return joined;
  });
}

/** The lengths in order, those that are the same to a printer only once. */
function distinct(lengths: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (const length of [...lengths].sort((a, b) => a - b)) {
    const last = found.at(-1);
    if (last === undefined || !same(last, length)) found.push(length);
  }
  return found;
}

function transpose(r: Rect): Rect {
  return { x: r.y, y: r.x, w: r.h, h: r.w };
}

function drawStroke({ x, y, w, h }: Rect): LineMark {
  return {
    kind: 'line',
    from: { x, y },
    to: { x: x + w, y: y + h },
    width: HAIRLINE_PT,
    ink: 'registration',
  };
}
