// What a region could yield if copies were not limited but had a price: an upper bound on what it yields with limits.
import type { Axes, LimitedTask } from './limitedTask.ts';
import type { Builder, OfferedWay } from './unlimitedSearch.ts';

/** The tables of a relaxation; the part up to stops (column, row) stands at `column * rows + row`. */
export interface Relaxation {
  /** The most that a part yields, by the priced values, copies unlimited. */
  readonly most: Float64Array;
  /** How a part yields it: see `choiceOf`. */
  readonly choices: Int32Array;
}

const NARROWER = -1;
const SHORTER = -2;
const FIRST_PIECE = -3;

/**
 * Works out what every part yields at most when a copy of kind k is worth `worth[k]` (its value less its price; not
 * worth cutting if <= 0), into the tables given.
 *
 * A choice is NARROWER or SHORTER (as the part before this one), FIRST_PIECE - way for one piece, or 2 * (place in the
 * partings) + (1 if stacked).
 *
 * @source Gilmore & Gomory, Operations Research 14 (1966) 1045-1074, over stops.
 */
export function relax(task: LimitedTask, axes: Axes, worth: Float64Array, tables: Relaxation): void {
  const { most, choices } = tables;
  const columns = axes.across.stops.length;
  const rows = axes.up.stops.length;
  const pieces = bestPieces(task, axes, worth);
  most.fill(0, 0, rows);
  for (let column = 1; column < columns; column++) {
    const first = column * rows;
    const beside = axes.across.partings[column] as Int32Array;
    most[first] = 0;
    for (let row = 1; row < rows; row++) {
      const part = first + row;
      let best = most[part - rows] as number;
      let choice = NARROWER;
      if ((most[part - 1] as number) > best) {
        best = most[part - 1] as number;
        choice = SHORTER;
      }
      const piece = pieces.get(part);
      if (piece !== undefined) {
        const value = worth[(task.ways[piece] as OfferedWay).kind] as number;
        if (value > best) {
          best = value;
          choice = FIRST_PIECE - piece;
        }
      }
      for (let p = 0; p < beside.length; p += 2) {
        const sum =
          (most[(beside[p] as number) * rows + row] as number) +
          (most[(beside[p + 1] as number) * rows + row] as number);
        if (sum > best) {
          best = sum;
          choice = p;
        }
      }
      const stacked = axes.up.partings[row] as Int32Array;
      for (let p = 0; p < stacked.length; p += 2) {
        const sum =
          (most[first + (stacked[p] as number)] as number) +
          (most[first + (stacked[p + 1] as number)] as number);
        if (sum > best) {
          best = sum;
          choice = p + 1;
        }
      }
      most[part] = best;
      choices[part] = choice;
    }
  }
}

/** The way that yields most in the smallest part that holds it. */
function bestPieces({ ways }: LimitedTask, axes: Axes, worth: Float64Array): Map<number, number> {
  const best = new Map<number, number>();
  for (const [k, way] of ways.entries()) {
    const part = axes.across.sizeOf(way.w) * axes.up.stops.length + axes.up.sizeOf(way.h);
    const other = best.get(part);
    if (
      other === undefined ||
      (worth[way.kind] as number) > (worth[(ways[other] as OfferedWay).kind] as number)
    ) {
      best.set(part, k);
    }
  }
  return best;
}

/** The layout that a relaxation found for the whole room, piece by piece. */
export function relaxedLayout<T>(
  task: LimitedTask,
  axes: Axes,
  { most, choices }: Relaxation,
  builder: Builder<T>,
): T | undefined {
  const rows = axes.up.stops.length;
  const layoutAt = (column: number, row: number): T | undefined => {
    const part = column * rows + row;
    if (most[part] === 0) return undefined;
    const choice = choices[part] as number;
    if (choice === NARROWER) return layoutAt(column - 1, row);
    if (choice === SHORTER) return layoutAt(column, row - 1);
    if (choice <= FIRST_PIECE) {
      const way = task.ways[FIRST_PIECE - choice] as OfferedWay;
      return builder.block(way, 1, 1);
    }
    const stacked = choice % 2 === 1;
    const pairs = (stacked ? axes.up.partings[row] : axes.across.partings[column]) as Int32Array;
    const place = choice - (choice % 2);
    const [near, far] = [pairs[place] as number, pairs[place + 1] as number].map((stop) =>
      stacked ? layoutAt(column, stop) : layoutAt(stop, row),
    );
    if (near === undefined) return far;
    if (far === undefined) return near;
    return builder.join(stacked ? 'stacked' : 'side-by-side', [near, far]);
  };
  return layoutAt(axes.across.stops.length - 1, rows - 1);
}

/**
 * The most that can still be cut outside a box that lies in the corner of the room and reaches to stops (column, row),
 * in a table like the relaxation's: a layout that holds the box grows from it by a part beside or on top of it at a time.
 * What two parts of a parting can reach together, each of them can reach with the other beside it.
 *
 * @source Viswanathan & Bagchi, Operations Research 41 (1993) 768-776 (from memory).
 */
export function mostOutside({ across, up }: Axes, { most }: Relaxation): Float64Array {
  const columns = across.stops.length;
  const rows = up.stops.length;
  const outside = new Float64Array(columns * rows);
  /** A box may grow by a part to what is grown already. */
  const grow = (box: number, part: number, grown: number) => {
    const more = (most[part] as number) + (outside[grown] as number);
    if (more > (outside[box] as number)) outside[box] = more;
  };
  const growByParting = (near: number, far: number, grown: number) => {
    grow(near, far, grown);
    grow(far, near, grown);
  };
  for (let column = columns - 1; column >= 0; column--) {
    const beside = across.partings[column] as Int32Array;
    for (let row = rows - 1; row >= 0; row--) {
      const part = column * rows + row;
      // A box is worth no less than a larger one, and no box at all grows to anything.
      if (column + 1 < columns) grow(part, 0, part + rows);
      if (row + 1 < rows) grow(part, 0, part + 1);
      grow(row, part, part);
      grow(part - row, part, part);
      const onTop = up.partings[row] as Int32Array;
      for (let p = 0; p < onTop.length; p += 2) {
        growByParting(part - row + (onTop[p] as number), part - row + (onTop[p + 1] as number), part);
      }
      for (let p = 0; p < beside.length; p += 2) {
        growByParting((beside[p] as number) * rows + row, (beside[p + 1] as number) * rows + row, part);
      }
    }
  }
  return outside;
}
