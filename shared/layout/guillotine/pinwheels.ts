// Pinwheels: five parts round a middle, the simplest layout that no edge-to-edge cut can part.
import { gapsOf, partingsOf, type Stops } from './stops.ts';
import type { UnlimitedSearch } from './unlimitedSearch.ts';

/** How many pinwheels and cuts are looked at, those of the guillotine's search before it included, before the search gives up. */
const MOST_LOOKED = 800_000;

/** How deep pinwheels may lie within pinwheels. */
const MOST_DEPTH = 3;

/** What is searched: what a guillotine gets out of the parts, what no layout exceeds, and the area of a cell (ticks). */
export interface PinwheelTask {
  readonly search: UnlimitedSearch;
  readonly stops: Stops;
  /** No layout of the part that reaches to these stops holds more. */
  readonly boundAt: (column: number, row: number) => number;
  readonly area: number;
}

const UNKNOWN = -1;

type Part = readonly [column: number, row: number];

/**
 * The most cells found in the whole of the stops' room when any part may be a pinwheel, at most three within one
 * another. `count` is what a guillotine gets out of it; the answer is that or more.
 *
 * @source Morabito & Morales, J. Opl Res. Soc. 49 (1998) 819-828, a recursive procedure over first-order cuts (from
 * memory).
 */
export function searchPinwheels({ search, stops, boundAt, area }: PinwheelTask, count: number): number {
  const { across, up } = stops;
  const columns = across.length;
  const rows = up.length;
  const partingsAcross = partingsOf(across);
  const partingsUp = partingsOf(up);
  const gapsAcross = gapsOf(across);
  const gapsUp = gapsOf(up);
  const bounds = new Int32Array(columns * rows).fill(UNKNOWN);
  const known = Array.from({ length: MOST_DEPTH + 1 }, () => new Map<number, number>());
  let looked = 0;

  const mayLook = () => ++looked + search.looked() <= MOST_LOOKED;

  function mostAt(column: number, row: number): number {
    const part = column * rows + row;
    if (bounds[part] === UNKNOWN) bounds[part] = boundAt(column, row);
    return bounds[part] as number;
  }

  /** The most found in the part that reaches to these stops, with pinwheels `depth` deep. */
  function countAt(column: number, row: number, depth: number): number {
    if (depth === 0) return search.valueOf(search.partAt(column, row));
    const part = column * rows + row;
    const before = known[depth]?.get(part);
    if (before !== undefined) return before;
    const most = mostAt(column, row);
    let best = countAt(column, row, depth - 1);
    if (best < most) best = turn(column, row, depth, best);
    if (best < most) best = cutInTwo(column, row, depth, best);
    known[depth]?.set(part, best);
    return best;
  }

  /** What the parts hold together, or `best` as soon as they cannot hold more than that. */
  function together(parts: readonly Part[], depth: number, best: number): number {
    let hoped = parts.reduce((sum, [column, row]) => sum + mostAt(column, row), 0);
    for (const [column, row] of parts) {
      if (hoped <= best) return best;
      hoped += countAt(column, row, depth) - mostAt(column, row);
    }
    return Math.max(best, hoped);
  }

  function cutInTwo(column: number, row: number, depth: number, least: number): number {
    let best = least;
    const beside = partingsAcross(column);
    for (let p = 0; p < beside.length && mayLook(); p += 2) {
      const [near, far] = [beside[p] as number, beside[p + 1] as number];
      if (mostAt(near, row) + mostAt(far, row) > best) {
        best = together(
          [
            [near, row],
            [far, row],
          ],
          depth,
          best,
        );
      }
    }
    const stacked = partingsUp(row);
    for (let p = 0; p < stacked.length && mayLook(); p += 2) {
      const [near, far] = [stacked[p] as number, stacked[p + 1] as number];
      if (mostAt(column, near) + mostAt(column, far) > best) {
        best = together(
          [
            [column, near],
            [column, far],
          ],
          depth,
          best,
        );
      }
    }
    return best;
  }

  /**
   * The best of all pinwheels of a part, or `least` if none holds more. Their parts are: lower left, x2 wide and y1
   * high; lower right, y2 high; upper left, x1 wide; upper right; and the middle between x1 and x2, y1 and y2.
   */
  function turn(column: number, row: number, depth: number, least: number): number {
    let best = least;
    const w = across[column] as number;
    const h = up[row] as number;
    const most = mostAt(column, row);
    const mostOn = (room: number) => Math.floor(room / area + 1e-9);
    for (let x2 = 2; x2 < column; x2++) {
      const right = gapsAcross[column * columns + x2] as number;
      for (let y1 = 1; y1 < row - 1; y1++) {
        const lowerLeft = mostAt(x2, y1);
        const afterOne = w * h - (across[x2] as number) * (up[y1] as number);
        if (lowerLeft + mostOn(afterOne) <= best) continue;
        const above = gapsUp[row * rows + y1] as number;
        for (let y2 = y1 + 1; y2 < row; y2++) {
          const lower = lowerLeft + mostAt(right, y2);
          const afterTwo = afterOne - (w - (across[x2] as number)) * (up[y2] as number);
          if (lower + mostOn(afterTwo) <= best) continue;
          const over = gapsUp[row * rows + y2] as number;
          const middleUp = gapsUp[y2 * rows + y1] as number;
          for (let x1 = 1; x1 < x2; x1++) {
            if (best === most || !mayLook()) return best;
            const middle = gapsAcross[x2 * columns + x1] as number;
            const beside = gapsAcross[column * columns + x1] as number;
            const hoped = lower + mostAt(x1, above) + mostAt(beside, over) + mostAt(middle, middleUp);
            if (hoped <= best) continue;
            const parts = [
              [x2, y1],
              [right, y2],
              [x1, above],
              [beside, over],
              [middle, middleUp],
            ] as const;
            best = together(parts, depth - 1, best);
          }
        }
      }
    }
    return best;
  }

  let best = count;
  for (let depth = 1; depth <= MOST_DEPTH && best === count; depth++)
    best = countAt(columns - 1, rows - 1, depth);
  return best;
}
