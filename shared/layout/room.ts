// The room that may be filled with cells, and how a cell in it becomes a trim rectangle on the sheet.
import type { Rect, Size } from '../geometry/space.ts';
import type { Turn } from '../geometry/turn.ts';

/**
 * A cell is a trim with half a gutter on every side, so that cells that touch leave the whole gutter between trims.
 * At the edge of the printable area only the bleed must fit, and half a gutter may stand over.
 */
export function cellOf(trim: Size, gutter: number): Size {
  return { w: trim.w + gutter, h: trim.h + gutter };
}

/** The room for cells, in pt, on a whole side or, in a one-form style, on one half of it. */
export interface Room {
  readonly region: Size;
  /** The trim rectangle on side 1 of a cell at this place of the region (lower left origin). */
  trimOf(cell: Rect<'side1'>): Rect<'side1'>;
}

/** The room on a side whose usable area is `usable`, for pieces with at most this bleed. */
export function wholeRoom(usable: Rect<'side1'>, bleed: number, gutter: number): Room {
  const inset = bleed - gutter / 2;
  return {
    region: { w: usable.w - 2 * inset, h: usable.h - 2 * inset },
    trimOf: (cell) => trimIn(cell, { x: usable.x + inset, y: usable.y + inset }, gutter),
  };
}

/**
 * The room on the half of side 1 that holds the fronts of a one-form style: the left half when the sheet is turned
 * side to side, the lead half when it is turned end to end. Cells at the region's origin stand nearest the axis, at
 * half a gutter from it, so that partners across the axis keep the whole gutter between them.
 */
export function halfRoom(
  usable: Rect<'side1'>,
  bleed: number,
  gutter: number,
  turn: Turn,
  sheet: Size,
): Room {
  const whole = wholeRoom(usable, bleed, gutter);
  const inset = bleed - gutter / 2;
  if (turn === 'side-to-side') {
    const axis = sheet.w / 2;
    const origin = { x: axis, y: usable.y + inset };
    return {
      region: { w: axis - usable.x - inset, h: whole.region.h },
      trimOf: (cell) => trimIn({ ...cell, x: -cell.x - cell.w }, origin, gutter),
    };
  }
  const axis = sheet.h / 2;
  const origin = { x: usable.x + inset, y: axis };
  return {
    region: { w: whole.region.w, h: usable.y + usable.h - inset - axis },
    trimOf: (cell) => trimIn(cell, origin, gutter),
  };
}

function trimIn(cell: Rect<'side1'>, origin: { x: number; y: number }, gutter: number): Rect<'side1'> {
  return {
    x: origin.x + cell.x + gutter / 2,
    y: origin.y + cell.y + gutter / 2,
    w: cell.w - gutter,
    h: cell.h - gutter,
  };
}
