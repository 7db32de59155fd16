// What the hand is over: a piece, an edge of the sheet by which it is turned, or the table.
import { intersection } from '../../../shared/geometry/rect.ts';
import type { SheetEdge } from '../../../shared/geometry/sheet.ts';
import type { Point, Rect, Side, Size } from '../../../shared/geometry/space.ts';
import type { ShownPiece } from './shownPieces.ts';

/** The piece at a point, the uppermost where several lie over each other. */
export function pieceAt(pieces: readonly ShownPiece[], at: Point<Side>): ShownPiece | undefined {
  return pieces.findLast(
    ({ trim }) => at.x >= trim.x && at.x <= trim.x + trim.w && at.y >= trim.y && at.y <= trim.y + trim.h,
  );
}

/** The positions that a frame touches. */
export function piecesIn(pieces: readonly ShownPiece[], frame: Rect<Side>): readonly number[] {
  return pieces.filter(({ trim }) => intersection(trim, frame) !== undefined).map((p) => p.position);
}

/**
 * The edge of the sheet at a point that lies outside it by no more than `reach` pt, or inside by a quarter of that.
 * At a corner it is the nearer edge.
 */
export function edgeAt(sheet: Size, at: Point<Side>, reach: number): SheetEdge | undefined {
  const outside: Readonly<Record<SheetEdge, number>> = {
    left: -at.x,
    right: at.x - sheet.w,
    tail: -at.y,
    lead: at.y - sheet.h,
  };
  const edges = (Object.keys(outside) as SheetEdge[]).filter(
    (edge) => outside[edge] >= -reach / 4 && outside[edge] <= reach,
  );
  const farthestOut = Math.max(...Object.values(outside));
  return farthestOut > reach ? undefined : edges.sort((a, b) => outside[b] - outside[a])[0];
}
