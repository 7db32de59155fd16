// Arrangements that no guillotine can cut: which pieces are in the way of every cut from edge to edge.
import {
  boundsOfPieces,
  type CuttingGrid,
  clearLines,
  type LineWay,
  type Part,
  partAt,
  spanOfTrim,
  trimOfPiece,
} from './cuttingGrid.ts';

/** A part with no way through, and the cut that comes nearest to one. */
export interface NoWayThrough {
  /** The pieces that cannot be parted. */
  readonly pieces: readonly number[];
  /** The piece along which that cut would run, and on which of its edges. */
  readonly along: { readonly piece: number; readonly edge: 'left' | 'right' | 'lead' | 'tail' };
  /** The pieces it would run through. */
  readonly through: readonly number[];
}

/**
 * The first part that cannot be cut, or `undefined` if the whole can. Which cuts are made first does not matter: a cut
 * from edge to edge never closes the way to another.
 */
export function noWayThrough(field: CuttingGrid, part: Part): NoWayThrough | undefined {
  if (part.pieces.length <= 1) return undefined;
  const inner: Part = { ...boundsOfPieces(field, part.pieces), pieces: part.pieces };
  for (const way of ['up', 'across'] as const) {
    const [line] = clearLines(field, inner, way);
    if (line === undefined) continue;
    const [one, other] = partAt(field, inner, way, line);
    return noWayThrough(field, one) ?? noWayThrough(field, other);
  }
  return nearestCut(field, inner);
}

/** The cut along some trim, inside the part, that runs through the fewest pieces. */
function nearestCut(field: CuttingGrid, part: Part): NoWayThrough {
  let nearest: NoWayThrough | undefined;
  for (const piece of part.pieces) {
    for (const edge of ['right', 'left', 'lead', 'tail'] as const) {
      const way: LineWay = edge === 'left' || edge === 'right' ? 'up' : 'across';
      const line = trimOfPiece(field, piece)[edge];
      const [first, last] = spanOfTrim(part, way);
      if (line === first || line === last) continue;
      const through = part.pieces.filter((other) => {
        const [from, to] = spanOfTrim(trimOfPiece(field, other), way);
        return from < line && line < to;
      });
      if (nearest === undefined || through.length < nearest.through.length) {
        nearest = { pieces: part.pieces, along: { piece, edge }, through };
      }
    }
  }
  if (nearest === undefined) throw new Error('Pieces that share every line lie over one another');
  return nearest;
}
