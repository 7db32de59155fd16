// Sharing an area out among those who claim parts of it: every point goes to the strongest claim.
import type { Rect, Space } from '../geometry/space.ts';
import { type Claims, strengthAt } from './claims.ts';
import { countBelow, countUpTo, joinCells, latticeOf } from './lattice.ts';

/** What another claims, and whether it comes before the one for whom an area is shared out. */
export interface Other {
  readonly claims: Claims;
  readonly isFirst: boolean;
}

/**
 * What one gets of all that it may get, beside others, as rectangles side by side, from the bottom up. A point goes to
 * the strongest claim on it, of claims as strong as each other to the first in order.
 *
 * The lines of all claims make a lattice, and within one of its cells nothing changes; what is narrower than the
 * tolerance counts as nothing.
 */
export function shareGap<S extends Space>(mine: Claims, others: readonly Other[]): readonly Rect<S>[] {
  const lattice = latticeOf(mine.boxes, [mine.boxes, ...others.map(({ claims }) => claims.boxes)]);
  const { columns, rows } = lattice;
  const width = columns.length;
  const isLost = new Uint8Array(width * rows.length);
  for (const { claims, isFirst } of others) {
    const { boxes } = claims;
    const firstColumn = countUpTo(columns, boxes[0] ?? 0);
    const endColumn = countBelow(columns, boxes[1] ?? 0);
    const endRow = countBelow(rows, boxes[3] ?? 0);
    for (let row = countUpTo(rows, boxes[2] ?? 0); row < endRow; row++) {
      const y = rows[row] ?? 0;
      for (let column = firstColumn; column < endColumn; column++) {
        const cell = row * width + column;
        if (isLost[cell] === 1) continue;
        const x = columns[column] ?? 0;
        const own = strengthAt(mine, x, y);
        const theirs = strengthAt(claims, x, y);
        if (theirs < own || (isFirst && theirs === own)) isLost[cell] = 1;
      }
    }
  }
  return joinCells(lattice, (column, row) => isLost[row * width + column] === 0);
}
