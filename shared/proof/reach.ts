// How far the bleed of a printed face really reaches past each edge of the trim.
import type { Edges } from '../geometry/space.ts';
import type { Reaches, Stretch } from '../layout/bleedReach.ts';
import type { Found } from './alignment.ts';
import { blur, countOutliers, type PixelArea } from './band.ts';
import type { PixelGrid } from './grid.ts';
import type { Picture } from './picture.ts';

/** So many outliers in a row make it a row that does not show the art. */
const MIN_OUTLIERS_IN_ROW = 3;

/** What was found before a stretch of an edge, in pt. */
export interface Reached {
  readonly wanted: number;
  readonly reaches: number;
}

/**
 * How far what was found shows the same as the art outside each edge of the trim, looked at row by row from the trim
 * outwards as far as is wanted, for each stretch that wants any. Both as they are and blurred: a thin line along the
 * edge that two renderings draw differently is no fault, and blurring must not reach the end of the bleed.
 *
 * Where a bleed has a step, `shifted` (pt) is how far the step may have moved along the edge.
 */
export function reachOf(
  found: Found,
  art: Picture,
  wanted: Reaches,
  shifted: number,
): Readonly<Record<keyof Edges, readonly Reached[]>> {
  const { grid } = found;
  let blurred: Picture | undefined;
  const isStrange = (area: PixelArea): boolean => {
    if (countOutliers(found.picture, art, area, MIN_OUTLIERS_IN_ROW) < MIN_OUTLIERS_IN_ROW) return false;
    blurred ??= blur(art);
    return countOutliers(found.blurred(), blurred, area, MIN_OUTLIERS_IN_ROW) >= MIN_OUTLIERS_IN_ROW;
  };
  const along = (edge: keyof Edges): readonly Reached[] =>
    wanted[edge].flatMap((stretch) => {
      const { from, to } = inPixels(stretch, grid, edge, shifted);
      if (stretch.reach === 0 || to - from < MIN_OUTLIERS_IN_ROW) return [];
      const scale = edge === 'left' || edge === 'right' ? grid.across : grid.up;
      const rows = Math.floor(stretch.reach * scale + 1e-6);
      for (let row = 0; row < rows; row++) {
        if (isStrange(rowOutside(grid, edge, row, from, to))) {
          return [{ wanted: stretch.reach, reaches: row / scale }];
        }
      }
      return [{ wanted: stretch.reach, reaches: stretch.reach }];
    });
  return { left: along('left'), right: along('right'), top: along('top'), bottom: along('bottom') };
}

/** The pixels along an edge that lie surely within a stretch, counted from the edge's left or lower end. */
function inPixels(
  { from, to }: Stretch,
  grid: PixelGrid,
  edge: keyof Edges,
  shifted: number,
): { readonly from: number; readonly to: number } {
  const isLevel = edge === 'top' || edge === 'bottom';
  const [scale, length] = isLevel ? [grid.across, grid.width] : [grid.up, grid.height];
  const blurred = 1 + shifted * scale;
  return {
    from: from * scale < 0.5 ? 0 : Math.ceil(from * scale + blurred),
    to: to * scale > length - 0.5 ? length : Math.floor(to * scale - blurred),
  };
}

/** The pixels `row` rows outside of one edge of the trim, from one place along it to another. */
function rowOutside(
  { margin, width, height }: PixelGrid,
  edge: keyof Edges,
  row: number,
  from: number,
  to: number,
): PixelArea {
  const level = { left: margin + from, right: margin + to };
  const upright = { top: margin + height - to, bottom: margin + height - from };
  switch (edge) {
    case 'left':
      return { ...upright, left: margin - row - 1, right: margin - row };
    case 'right':
      return { ...upright, left: margin + width + row, right: margin + width + row + 1 };
    case 'top':
      return { ...level, top: margin - row - 1, bottom: margin - row };
    case 'bottom':
      return { ...level, top: margin + height + row, bottom: margin + height + row + 1 };
  }
}
