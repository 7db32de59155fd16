// As many identical pieces on one sheet as a guillotine can cut.
import type { Size } from '../../geometry/space.ts';
import type { Lies } from '../lies.ts';
import { mostAnyhow, mostUpTo } from './countBounds.ts';
import { blockOf, type CutTree, cellsOf, type LaidCell } from './cutTree.ts';
import { couldHoldMore, type Denser } from './denser.ts';
import { layInFewestBlocks } from './fewestBlocks.ts';
import { mostInGrid, tidiestGrid } from './grid.ts';
import { joinParts } from './joinParts.ts';
import { areTooMany, plainStopsFor, stopsFor } from './stops.ts';
import { offeredRegion } from './ticks.ts';
import { searchUnlimited } from './unlimitedSearch.ts';
import { type Way, waysToLie } from './ways.ts';

/** A layout of one region: the cells and the cuts that part them. `tree` is `undefined` where nothing fits. */
export interface IdenticalLayout {
  readonly count: number;
  readonly cells: readonly LaidCell[];
  readonly tree: CutTree | undefined;
  /** Whether no layout that a guillotine can cut holds more. */
  readonly proven: boolean;
  /** Whether a layout that no guillotine can cut would hold more; worked out when it is asked for. */
  readonly denser: () => Denser;
}

/**
 * The most cells of one size that edge-to-edge cuts can get out of a region, pushed into its lower left.
 *
 * Sizes in pt; the cell as it lies upright. Where a plain grid reaches the optimum it is a plain grid, the one with the
 * fewest lines; else the layout with the fewest blocks. The count is proven for anything that holds up to about a
 * thousand cells; beyond that only cuts at whole rows are tried, and it is proven only where it reaches a bound.
 */
export function layIdentical(cell: Size, lies: Lies, region: Size): IdenticalLayout {
  const room = offeredRegion(region);
  const ways = waysToLie(cell, lies, room);
  const best = bestTree(cell, ways, room);
  const cells = best.tree === undefined ? [] : cellsOf(best.tree);
  return { count: cells.length, cells, ...best };
}

type BestTree = Pick<IdenticalLayout, 'tree' | 'proven' | 'denser'>;

function bestTree(cell: Size, ways: readonly Way[], room: Size): BestTree {
  const inGrid = mostInGrid(ways, room);
  const grid = tidiestGrid(inGrid, ways, room);
  const [first] = ways;
  const noMore = { proven: true, denser: () => ({ kind: 'no-more' as const }) };
  if (first === undefined || grid === undefined) return { tree: undefined, ...noMore };
  const asGrid = blockOf(0, cell, grid);
  // Lying one way only, no layout at all holds more than the grid.
  if (ways.length === 1) return { tree: asGrid, ...noMore };
  const most = mostAnyhow(room.w, room.h, first.w, first.h);
  if (inGrid === most) return { tree: asGrid, ...noMore };

  const { whole, thinned, ...task } = searchOf(ways, first, room);
  const count = task.search.valueOf(whole);
  const tree =
    count === inGrid
      ? asGrid
      : layInFewestBlocks<CutTree>(task.search, whole, {
          block: ({ onItsSide }, across, up) => blockOf(0, cell, { onItsSide, across, up }),
          join: joinParts,
        });
  return {
    tree,
    proven: !thinned || count === most,
    denser: () => couldHoldMore(count, mostAnywhere(ways, first, room), thinned ? undefined : task),
  };
}

/** The search over all stops or, where these are too many, over those of whole rows; `whole` is its largest part. */
function searchOf(ways: readonly Way[], { w, h }: Way, room: Size) {
  const all = stopsFor(ways, room);
  const thinned = areTooMany(all);
  const stops = thinned ? plainStopsFor(ways, room) : all;
  const boundAt = mostUpTo(stops, w, h);
  const alike = ways.map((way) => ({ ...way, kind: 0, value: 1 }));
  const search = searchUnlimited({ ways: alike, stops, boundAt, step: 1 });
  const whole = search.partAt(stops.across.length - 1, stops.up.length - 1);
  return { search, stops, boundAt, area: w * h, whole, thinned };
}

/** What no layout at all exceeds: the bound of the room as far as cells can reach in it. */
function mostAnywhere(ways: readonly Way[], { w, h }: Way, room: Size): number {
  const { across, up } = stopsFor(ways, room);
  return mostAnyhow(across.at(-1) as number, up.at(-1) as number, w, h);
}
