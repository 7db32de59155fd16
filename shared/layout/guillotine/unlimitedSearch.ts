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

/** The best layout of a part so far: its value, its blocks, how it is made, and what there is to know about the rest. */
interface Best {
  value: number;
  blocks: number;
  choice: number;
  /** Less than this is of no interest. */
  readonly floor: number;
  /** The most that the layouts looked at could be worth, as far as their parts are known. */
  hoped: number;
}

const UNKNOWN = -1;
const EMPTY = 0;

/**
 * Exact by recursion over the stops: a part holds one block of equal cells or is cut in two. A part is worked out only
 * if it can be worth what the cut that asks for it needs; a cut is passed over when the bounds of its two parts show that
 * it cannot be better. Among layouts of equal value the one with the fewest blocks wins, since it is the easiest to cut.
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

  /** Works a part out if it can be worth `floor` or more; where it turns out not to be, only its bound is lowered. */
  function solve(part: number, floor: number): void {
    const most = boundOf(part);
    if (values[part] !== UNKNOWN || most < floor) return;
    const row = part % rows;
    const column = (part - row) / rows;
    const best = bestBlock(across[column] as number, up[row] as number, floor);
    partingsAcross[column] ??= partings(across, column);
    cut(best, most, partingsAcross[column], row, rows, 1);
    partingsUp[row] ??= partings(up, row);
    cut(best, most, partingsUp[row], part - row, 1, 2);
    if (best.value < floor) {
      bounds[part] = best.hoped;
      return;
    }
    values[part] = best.value;
    bounds[part] = best.value;
    blocks[part] = best.blocks;
    choices[part] = best.choice;
  }

  function bestBlock(w: number, h: number, floor: number): Best {
    const best: Best = { value: 0, blocks: 0, choice: EMPTY, floor, hoped: 0 };
    let lines = 0;
    for (let k = 0; k < ways.length; k++) {
      const way = ways[k] as OfferedWay;
      const inRow = Math.floor(w / way.w);
      const inColumn = Math.floor(h / way.h);
      const worth = inRow * inColumn * way.value;
      if (worth > best.value || (worth === best.value && worth > 0 && inRow + inColumn < lines)) {
        best.value = worth;
        best.blocks = 1;
        best.choice = -1 - k;
        lines = inRow + inColumn;
      }
    }
    best.hoped = best.value;
    return best;
  }

  /**
   * Tries all partings of a part one way, the most even first; the part up to stop s of that way is
   * `base + s * stride`. No part is worth more than `most`.
   */
  function cut(best: Best, most: number, pairs: Int32Array, base: number, stride: number, code: 1 | 2): void {
    for (let p = pairs.length - 2; p >= 0; p -= 2) {
      if (best.value >= most && best.blocks <= 2) return;
      looked++;
      const near = base + (pairs[p] as number) * stride;
      const far = base + (pairs[p + 1] as number) * stride;
      const needed = Math.max(best.floor, best.value);
      if (mayBetter(best, near, far, 2)) {
        solve(near, needed - boundOf(far));
        if (mayBetter(best, near, far, (blocks[near] as number) + 1)) {
          solve(far, needed - boundOf(near));
          const together = (blocks[near] as number) + (blocks[far] as number);
          if (mayBetter(best, near, far, together)) {
            best.value = boundOf(near) + boundOf(far);
            best.blocks = together;
            best.choice = p + code;
          }
        }
      }
      best.hoped = Math.max(best.hoped, boundOf(near) + boundOf(far));
    }
  }

  /** Whether two parts, in so many blocks at least, may yet be better than the best. True of two that are solved if they are. */
  function mayBetter(best: Best, near: number, far: number, leastBlocks: number): boolean {
    const hoped = boundOf(near) + boundOf(far);
    if (hoped < best.floor || hoped < best.value) return false;
    return hoped > best.value || leastBlocks < best.blocks;
  }

  function layoutOf<T>(part: number, builder: Builder<T>): T | undefined {
    solve(part, 0);
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
      solve(column * rows + row, 0);
      return values[column * rows + row] as number;
    },
    layoutAt: (column, row, builder) => layoutOf(column * rows + row, builder),
    looked: () => looked,
  };
}
