// How far the bleed of a printed face really reaches past each edge of the trim.
import type { Edges } from '../geometry/space.ts';
import { type Area, countStrangers } from './band.ts';
import type { Grid } from './grid.ts';
import type { Picture } from './picture.ts';

/** So many strange pixels in a row make it a row that does not show the art. */
const STRANGE_ROW = 3;

/**
 * How far, in pt, what was found shows the same as the art outside each edge of the trim, looked at row by row from
 * the trim outwards as far as `wanted` (pt). Both as they are and softened: a thin line along the edge that two
 * renderings draw differently is no fault, and softening must not blur the end of the bleed.
 */
export function reachOf(
  found: readonly [sharp: Picture, soft: Picture],
  art: readonly [sharp: Picture, soft: Picture],
  grid: Grid,
  wanted: Edges,
): Edges {
  const along = (edge: keyof Edges): number => {
    const scale = edge === 'left' || edge === 'right' ? grid.across : grid.up;
    const rows = Math.floor(wanted[edge] * scale + 1e-6);
    for (let row = 0; row < rows; row++) {
      const area = rowOutside(grid, edge, row);
      if ([0, 1].every((i) => isStrange(found[i], art[i], area))) return row / scale;
    }
    return wanted[edge];
  };
  return { left: along('left'), right: along('right'), top: along('top'), bottom: along('bottom') };
}

function isStrange(found: Picture | undefined, art: Picture | undefined, area: Area): boolean {
  if (found === undefined || art === undefined) return false;
  return countStrangers(found, art, area, STRANGE_ROW) >= STRANGE_ROW;
}

/** The pixels along one edge, `row` rows outside of the trim. */
function rowOutside({ margin, width, height }: Grid, edge: keyof Edges, row: number): Area {
  const trim = { left: margin, top: margin, right: margin + width, bottom: margin + height };
  switch (edge) {
    case 'left':
      return { ...trim, left: margin - row - 1, right: margin - row };
    case 'right':
      return { ...trim, left: trim.right + row, right: trim.right + row + 1 };
    case 'top':
      return { ...trim, top: margin - row - 1, bottom: margin - row };
    case 'bottom':
      return { ...trim, top: trim.bottom + row, bottom: trim.bottom + row + 1 };
  }
}
