// As many identical pieces on one sheet as a guillotine can cut.
import type { Size } from '../../geometry/space.ts';
import type { Lies } from '../lies.ts';
import { mostAnyhow, mostCells } from './countBounds.ts';
import { blockOf, type CutTree, cellsOf, type LaidCell } from './cutTree.ts';
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
  const { tree, proven } = bestTree(cell, ways, room);
  const cells = tree === undefined ? [] : cellsOf(tree);
  return { count: cells.length, cells, tree, proven };
}

function bestTree(cell: Size, ways: readonly Way[], room: Size): Pick<IdenticalLayout, 'tree' | 'proven'> {
  const inGrid = mostInGrid(ways, room);
  const grid = tidiestGrid(inGrid, ways, room);
  const [first] = ways;
  if (first === undefined || grid === undefined) return { tree: undefined, proven: true };
  const asGrid = blockOf(0, cell, grid);
  // Lying one way only, no layout at all holds more than the grid.
  if (ways.length === 1) return { tree: asGrid, proven: true };
  const most = mostAnyhow(room.w, room.h, first.w, first.h);
  if (inGrid === most) return { tree: asGrid, proven: true };

  const all = stopsFor(ways, room);
  const thinned = areTooMany(all);
  const stops = thinned ? plainStopsFor(ways, room) : all;
  const search = searchUnlimited({
    ways: ways.map((way) => ({ ...way, kind: 0, value: 1 })),
    stops,
    bound: (w, h) => mostCells(w, h, first.w, first.h),
  });
  const corner = [stops.across.length - 1, stops.up.length - 1] as const;
  const count = search.valueAt(...corner);
  const proven = !thinned || count === most;
  if (count === inGrid) return { tree: asGrid, proven };
  const tree = search.layoutAt<CutTree>(...corner, {
    block: ({ onItsSide }, across, up) => blockOf(0, cell, { onItsSide, across, up }),
    join: joinParts,
  });
  return { tree, proven };
}
