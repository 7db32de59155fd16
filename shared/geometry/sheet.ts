// The sheet in its printer: its size, the border it cannot print, and the area that can be printed on both sides.
import { growEdges, intersection, wholeOf } from './rect.ts';
import type { Rect, Size } from './space.ts';
import { seenFromBehind, type Turn } from './turn.ts';

/** The four edges of a sheet, named as the printer meets them while side 1 is printed. */
export type SheetEdge = 'lead' | 'tail' | 'left' | 'right';

/** A length in pt for every edge of the sheet. */
export type SheetEdges = Readonly<Record<SheetEdge, number>>;

/** What can be printed on one side, in that side's own frame. */
export function printableArea<S extends 'side1' | 'side2'>(sheet: Size, unprintable: SheetEdges): Rect<S> {
  return growEdges<S>(wholeOf(sheet), {
    left: -unprintable.left,
    right: -unprintable.right,
    top: -unprintable.lead,
    bottom: -unprintable.tail,
  });
}

/**
 * Where a two-sided piece may lie on side 1: printable there, and printable for its back once the sheet is turned.
 * Without a turn it is the printable area itself. `undefined` when nothing is left.
 */
export function usableArea(
  sheet: Size,
  unprintable: SheetEdges,
  turn: Turn | undefined,
): Rect<'side1'> | undefined {
  const front = printableArea<'side1'>(sheet, unprintable);
  if (front.w <= 0 || front.h <= 0) return undefined;
  if (turn === undefined) return front;
  return intersection(front, seenFromBehind(printableArea<'side2'>(sheet, unprintable), turn, sheet));
}
