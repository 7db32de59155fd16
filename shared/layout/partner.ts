// Partners: in a one-form style, the place on the form that falls behind a position when the sheet is turned.
import type { ReaderTurn } from '../geometry/head.ts';
import type { Size } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import type { Turn } from '../geometry/turn.ts';
import { behind } from './forms.ts';
import type { Position } from './position.ts';

/**
 * Where the partner of a position lies on the one form. The form that prints side 2 is the one that printed side 1,
 * so what must be seen on side 2 is what the form must hold at the same numbers.
 */
export function partnerOf(position: Position, turned: ReaderTurn, turn: Turn, sheet: Size): Position {
  const { piece, face, head, trim } = behind(position, turned, turn, sheet);
  return { piece, face, head, trim: { x: trim.x, y: trim.y, w: trim.w, h: trim.h } };
}

/** Whether two positions put the same face of the same piece on the same place, the same way up. */
export function coincide(a: Position, b: Position): boolean {
  return (
    a.piece === b.piece &&
    a.face === b.face &&
    a.head === b.head &&
    same(a.trim.x, b.trim.x) &&
    same(a.trim.y, b.trim.y) &&
    same(a.trim.w, b.trim.w) &&
    same(a.trim.h, b.trim.h)
  );
}
