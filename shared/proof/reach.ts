// How far the bleed of a printed face really reaches past each edge of the trim.
import type { Edges } from '../geometry/space.ts';
import { type Area, countStrangers, soften } from './band.ts';
import type { Grid } from './grid.ts';
import type { Picture } from './picture.ts';
import type { Found } from './settle.ts';

/** So many strange pixels in a row make it a row that does not show the art. */
const STRANGE_ROW = 3;

/**
 * How far, in pt, what was found shows the same as the art outside each edge of the trim, looked at row by row from
 * the trim outwards as far as `wanted` (pt). Both as they are and softened: a thin line along the edge that two
 * renderings draw differently is no fault, and softening must not blur the end of the bleed.
 */
export function reachOf(found: Found, art: Picture, wanted: Edges): Edges {
  const { grid } = found;
  let softened: Picture | undefined;
  const isStrange = (area: Area): boolean => {
    if (countStrangers(found.picture, art, area, STRANGE_ROW) < STRANGE_ROW) return false;
    softened ??= soften(art);
    return countStrangers(found.softened(), softened, area, STRANGE_ROW) >= STRANGE_ROW;
  };
  const along = (edge: keyof Edges): number => {
    const scale = edge === 'left' || edge === 'right' ? grid.across : grid.up;
    const rows = Math.floor(wanted[edge] * scale + 1e-6);
    for (let row = 0; row < rows; row++) {
      if (isStrange(rowOutside(grid, edge, row))) return row / scale;
    }
    return wanted[edge];
  };
  return { left: along('left'), right: along('right'), top: along('top'), bottom: along('bottom') };
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
