// The most value that edge-to-edge cuts can get out of a region when there are as many copies as one likes.
import type { CutWay } from './cutTree.ts';
import { partings, type Stops } from './stops.ts';
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
  /** No layout of a part of this size (ticks) is worth more. */
  readonly bound: (w: number, h: number) => number;
}

/** How to make the answer: a block of equal cells, or two parts joined. */
export interface Builder<T> {
  readonly block: (way: OfferedWay, across: number, up: number) => T;
  readonly join: (way: CutWay, parts: readonly [T, T]) => T;
}

export interface UnlimitedSearch {
  /** The greatest value of the part that reaches to these stops, worked out when it is first asked for. */
  readonly valueAt: (across: number, up: number) => number;
  /** A best layout of that part with the fewest blocks, or `undefined` where nothing fits. */
  readonly layoutAt: <T>(across: number, up: number, builder: Builder<T>) => T | undefined;
  /** How many pairs of parts have been looked at so far: the work done. */
  readonly looked: () => number;
}

const UNKNOWN = -1;
const EMPTY = 0;

/**
 * Exact by recursion over the stops: a part holds one block of equal cells or is cut in two. Every part is worked out
 * once; a cut is passed over when the bounds of its two parts show that it cannot be better. Among layouts of equal
 * value the one with the fewest blocks wins, since it is the easiest to cut.
 *
 * @source Gilmore & Gomory, Operations Research 14 (1966) 1045-1074, for the recursion.
 */
export function searchUnlimited(task: UnlimitedTask): UnlimitedSearch {
  const { ways, bound } = task;
  const { across, up } = task.stops;
  const rows = up.length;
  const parts = across.length * rows;
  const values = new Float64Array(parts).fill(UNKNOWN);
  const bounds = new Float64Array(parts).fill(UNKNOWN);
  const blocks = new Int32Array(parts);
  // EMPTY, -1 - way for a block, or 1 + 2 * (place in the partings) + (1 if stacked).
  const choices = new Int32Array(parts);
  const partingsAcross: (Int32Array | undefined)[] = [];
  const partingsUp: (Int32Array | undefined)[] = [];
  let looked = 0;

  function boundOf(part: number): number {
    const known = bounds[part] as number;
    if (known !== UNKNOWN) return known;
    const row = part % rows;
    const most = bound(across[(part - row) / rows] as number, up[row] as number);
    bounds[part] = most;
    return most;
  }

  function solve(part: number): void {
    if (values[part] !== UNKNOWN) return;
    const row = part % rows;
    const column = (part - row) / rows;
    layBlock(part, across[column] as number, up[row] as number);
    partingsAcross[column] ??= partings(across, column);
    cut(part, partingsAcross[column], row, rows, 1);
    partingsUp[row] ??= partings(up, row);
    cut(part, partingsUp[row], part - row, 1, 2);
  }

  function layBlock(part: number, w: number, h: number): void {
    let value = 0;
    let lines = 0;
    let choice = EMPTY;
    for (let k = 0; k < ways.length; k++) {
      const way = ways[k] as OfferedWay;
      const inRow = Math.floor(w / way.w);
      const inColumn = Math.floor(h / way.h);
      const worth = inRow * inColumn * way.value;
      if (worth > value || (worth === value && worth > 0 && inRow + inColumn < lines)) {
        value = worth;
        lines = inRow + inColumn;
        choice = -1 - k;
      }
    }
    values[part] = value;
    blocks[part] = choice === EMPTY ? 0 : 1;
    choices[part] = choice;
  }

  /** Tries all partings of a part one way; the part up to stop s of that way is `base + s * stride`. */
  function cut(part: number, pairs: Int32Array, base: number, stride: number, code: 1 | 2): void {
    let value = values[part] as number;
    let count = blocks[part] as number;
    const most = boundOf(part);
    for (let p = 0; p < pairs.length; p += 2) {
      if (value >= most && count <= 2) break;
      looked++;
      const near = base + (pairs[p] as number) * stride;
      const far = base + (pairs[p + 1] as number) * stride;
      const farMost = boundOf(far);
      const hoped = boundOf(near) + farMost;
      if (hoped < value || (hoped === value && count <= 2)) continue;
      solve(near);
      const left = (values[near] as number) + farMost;
      if (left < value || (left === value && count <= (blocks[near] as number) + 1)) continue;
      solve(far);
      const together = (values[near] as number) + (values[far] as number);
      const blocksTogether = (blocks[near] as number) + (blocks[far] as number);
      if (together > value || (together === value && blocksTogether < count)) {
        value = together;
        count = blocksTogether;
        choices[part] = p + code;
      }
    }
    values[part] = value;
    blocks[part] = count;
  }

  function layoutOf<T>(part: number, builder: Builder<T>): T | undefined {
    solve(part);
    const choice = choices[part] as number;
    if (choice === EMPTY) return undefined;
    const row = part % rows;
    const column = (part - row) / rows;
    if (choice < 0) {
      const way = ways[-1 - choice] as OfferedWay;
      const inRow = Math.floor((across[column] as number) / way.w);
      const inColumn = Math.floor((up[row] as number) / way.h);
      return builder.block(way, inRow, inColumn);
    }
    const stacked = choice % 2 === 0;
    const pairs = (stacked ? partingsUp[row] : partingsAcross[column]) as Int32Array;
    const place = choice - (stacked ? 2 : 1);
    const [near, far] = [pairs[place] as number, pairs[place + 1] as number].map((stop) =>
      layoutOf(stacked ? part - row + stop : stop * rows + row, builder),
    );
    // The far part is the longer one: nothing lies in it only where nothing lies in the near one either.
    if (far === undefined || near === undefined) return far;
    return builder.join(stacked ? 'stacked' : 'side-by-side', [near, far]);
  }

  return {
    valueAt: (column, row) => {
      solve(column * rows + row);
      return values[column * rows + row] as number;
    },
    layoutAt: (column, row, builder) => layoutOf(column * rows + row, builder),
    looked: () => looked,
  };
}
