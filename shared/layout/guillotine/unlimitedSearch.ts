// The most value that edge-to-edge cuts can get out of a region when there are as many copies as one likes.
import type { CutWay } from './cutTree.ts';
import { partingsOf, type Stops } from './stops.ts';
import type { Way } from './ways.ts';

/** A kind of piece lying one way: the room it needs (ticks) and what one copy is worth (> 0). */
export interface OfferedWay extends Way {
  readonly kind: number;
  readonly value: number;
}

/** What is searched: the ways on offer, the stops, and what a part can be worth at most. */
export interface UnlimitedTask {
  readonly ways: readonly OfferedWay[];
  readonly stops: Stops;
  /** No layout of the part that reaches to these stops is worth more. */
  readonly boundAt: (column: number, row: number) => number;
  /** Two layouts that differ in value differ by this at least; 0 where nothing is known. */
  readonly step: number;
}

/** How to make the answer: a block of equal cells, or two parts joined. */
export interface Builder<T> {
  readonly block: (way: OfferedWay, across: number, up: number) => T;
  readonly join: (way: CutWay, parts: readonly [T, T]) => T;
}

/** The parts that reach from the lower left of the region to two stops, by the numbers that `partAt` gives them. */
export interface UnlimitedSearch {
  readonly partAt: (column: number, row: number) => number;
  /** The greatest value of a part, worked out when it is first asked for. */
  readonly valueOf: (part: number) => number;
  /** What two parts are worth together if that is `needed` or more; else a bound on it, below `needed`. */
  readonly together: (near: number, far: number, needed: number) => number;
  /** The block of equal cells that is worth most in a part; of equal ones the one with the fewest lines, then the first. */
  readonly blockIn: (part: number) => BestBlock;
  /** The cuts worth trying in a part each way, see `partings`, and the part that a cut leaves up to a stop. */
  readonly cutsOf: (part: number) => readonly [Cuts, Cuts];
  /** How many pairs of parts have been looked at so far: the work done. */
  readonly looked: () => number;
}

/** A block of one kind and way; no way where none fits. */
export interface BestBlock {
  readonly value: number;
  readonly way: OfferedWay | undefined;
  readonly across: number;
  readonly up: number;
}

/** The cuts of a part one way: pairs of stops, and where the part up to stop s has its number: `base + s * stride`. */
export interface Cuts {
  readonly way: CutWay;
  readonly pairs: Int32Array;
  readonly base: number;
  readonly stride: number;
}

const UNKNOWN = -1;

/**
 * Exact by recursion over the stops: a part holds one block of equal cells or is cut in two. A part is worked out only
 * if it can be worth what the cut that asks for it needs; a cut is passed over when the bounds of its two parts show that
 * it cannot be better.
 *
 * @source Gilmore & Gomory, Operations Research 14 (1966) 1045-1074, for the recursion.
 */
export function searchUnlimited({ ways, stops, boundAt, step }: UnlimitedTask): UnlimitedSearch {
  const { across, up } = stops;
  const rows = up.length;
  const parts = across.length * rows;
  const values = new Float64Array(parts).fill(UNKNOWN);
  const bounds = new Float64Array(parts).fill(UNKNOWN);
  const partingsAcross = partingsOf(across);
  const partingsUp = partingsOf(up);
  let looked = 0;

  function boundOf(part: number): number {
    const known = bounds[part] as number;
    if (known !== UNKNOWN) return known;
    const row = part % rows;
    const most = boundAt((part - row) / rows, row);
    bounds[part] = most;
    return most;
  }

  /** Works a part out if it can be worth `floor` or more; where it turns out not to be, only its bound is lowered. */
  function solve(part: number, floor: number): void {
    const most = boundOf(part);
    if (values[part] !== UNKNOWN || most < floor) return;
    const best = { value: blockIn(part).value, hoped: 0, floor };
    for (const cuts of cutsOf(part)) cut(best, most, cuts);
    if (best.value < floor) {
      bounds[part] = Math.max(best.hoped, best.value);
      return;
    }
    values[part] = best.value;
    bounds[part] = best.value;
  }

  /** Tries all partings of a part one way, the most even first. No part is worth more than `most`. */
  function cut(
    best: { value: number; hoped: number; readonly floor: number },
    most: number,
    { pairs, base, stride }: Cuts,
  ): void {
    for (let p = pairs.length - 2; p >= 0 && best.value < most; p -= 2) {
      const near = base + (pairs[p] as number) * stride;
      const far = base + (pairs[p + 1] as number) * stride;
      const needed = Math.max(best.floor, best.value + step);
      const sum = together(near, far, needed);
      if (sum >= needed) best.value = sum;
      if (sum > best.hoped) best.hoped = sum;
    }
  }

  function together(near: number, far: number, needed: number): number {
    looked++;
    let sum = boundOf(near) + boundOf(far);
    if (sum < needed) return sum;
    solve(near, needed - boundOf(far));
    sum = boundOf(near) + boundOf(far);
    if (sum < needed) return sum;
    solve(far, needed - boundOf(near));
    return boundOf(near) + boundOf(far);
  }

  function blockIn(part: number): BestBlock {
    const row = part % rows;
    const w = across[(part - row) / rows] as number;
    const h = up[row] as number;
    let best: BestBlock = { value: 0, way: undefined, across: 0, up: 0 };
    for (const way of ways) {
      const inRow = Math.floor(w / way.w);
      const inColumn = Math.floor(h / way.h);
      const value = inRow * inColumn * way.value;
      const fewerLines = value > 0 && inRow + inColumn < best.across + best.up;
      if (value > best.value || (value === best.value && fewerLines)) {
        best = { value, way, across: inRow, up: inColumn };
      }
    }
    return best;
  }

  function cutsOf(part: number): readonly [Cuts, Cuts] {
    const row = part % rows;
    const column = (part - row) / rows;
    return [
      { way: 'side-by-side', pairs: partingsAcross(column), base: row, stride: rows },
      { way: 'stacked', pairs: partingsUp(row), base: part - row, stride: 1 },
    ];
  }

  return {
    partAt: (column, row) => column * rows + row,
    valueOf: (part) => {
      solve(part, 0);
      return values[part] as number;
    },
    together,
    blockIn,
    cutsOf,
    looked: () => looked,
  };
}
