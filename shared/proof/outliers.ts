// Outliers: pixels that no renderer's grain explains, where several of them lie close together.
import { blur, isOutlier, type PixelArea } from './band.ts';
import type { Picture } from './picture.ts';

/**
 * So many outliers close together are something that was printed or left out. The bowls that make an 8 of a 3 in type
 * of 6 pt are 10 and more at 300 to the inch; a picture that a renderer sets one pixel off leaves none.
 */
export const MIN_CLUSTERED_OUTLIERS = 5;

/** Outliers are close together in a square of so many pixels: 1 mm at 300 to the inch. */
const SQUARE_PX = 12;

/**
 * Whether the area of one picture shows something that the other does not. A pixel counts when it is an outlier in
 * the pictures as they were drawn and still is in both of them blurred, where thin lines meet halfway.
 */
export function haveOutliers(a: Picture, b: Picture, area: PixelArea): boolean {
  const candidates: (readonly [x: number, y: number])[] = [];
  for (let y = area.top; y < area.bottom; y++) {
    for (let x = area.left; x < area.right; x++) if (isOutlier(a, b, x, y)) candidates.push([x, y]);
  }
  if (candidates.length < MIN_CLUSTERED_OUTLIERS) return false;
  const [softA, softB] = [blur(a), blur(b)];
  return areClose(candidates.filter(([x, y]) => isOutlier(softA, softB, x, y)));
}

/** Whether enough of the places lie within a square and its neighbours to the right and below. */
function areClose(places: readonly (readonly [x: number, y: number])[]): boolean {
  const counts = new Map<string, number>();
  const keyOf = (column: number, row: number) => `${column},${row}`;
  for (const [x, y] of places) {
    const [column, row] = [Math.floor(x / SQUARE_PX), Math.floor(y / SQUARE_PX)];
    for (const [dx, dy] of [
      [0, 0],
      [-1, 0],
      [0, -1],
      [-1, -1],
    ] as const) {
      const key = keyOf(column + dx, row + dy);
      const count = (counts.get(key) ?? 0) + 1;
      if (count >= MIN_CLUSTERED_OUTLIERS) return true;
      counts.set(key, count);
    }
  }
  return false;
}
