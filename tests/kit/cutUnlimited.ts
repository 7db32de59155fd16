// Several sizes on one sheet, as many copies of each as pay best.
import type { Size } from '../../shared/geometry/space.ts';
import { blockOf, type CutTree, cellsOf, type LaidCell } from '../../shared/layout/guillotine/cutTree.ts';
import { layInFewestBlocks } from '../../shared/layout/guillotine/fewestBlocks.ts';
import { joinParts } from '../../shared/layout/guillotine/joinParts.ts';
import { stopsFor } from '../../shared/layout/guillotine/stops.ts';
import { offeredRegion } from '../../shared/layout/guillotine/ticks.ts';
import { searchUnlimited } from '../../shared/layout/guillotine/unlimitedSearch.ts';
import { waysToLie } from '../../shared/layout/guillotine/ways.ts';
import type { Lies } from '../../shared/layout/lies.ts';

/** A kind of piece on offer: the cell it needs (pt, as it lies upright), how it may lie, what a copy is worth (> 0). */
export interface Offer {
  readonly cell: Size;
  readonly lies: Lies;
  readonly value: number;
}

/** What was cut out of a region. A cell's `kind` is the place of its offer in the list. */
export interface ValuedLayout {
  readonly value: number;
  readonly cells: readonly LaidCell[];
  readonly tree: CutTree | undefined;
}

/** The most value that edge-to-edge cuts get out of a region (pt) when each kind may be cut as often as one likes. */
export function cutUnlimited(offers: readonly Offer[], region: Size): ValuedLayout {
  const room = offeredRegion(region);
  const ways = offers.flatMap(({ cell, lies, value }, kind) =>
    waysToLie(cell, lies, room).map((way) => ({ ...way, kind, value })),
  );
  const dearest = Math.max(0, ...ways.map(({ w, h, value }) => value / (w * h)));
  const stops = stopsFor(ways, room);
  const most = (w: number, h: number) => dearest * w * h * ROUNDED_UP;
  const search = searchUnlimited({
    ways,
    stops,
    boundAt: (column, row) => most(stops.across[column] as number, stops.up[row] as number),
    step: offers.every(({ value }) => Number.isInteger(value)) ? 1 : 0,
  });
  const whole = search.partAt(stops.across.length - 1, stops.up.length - 1);
  const tree = layInFewestBlocks<CutTree>(search, whole, {
    block: ({ kind, onItsSide }, across, up) =>
      blockOf(kind, (offers[kind] as Offer).cell, { onItsSide, across, up }),
    join: joinParts,
  });
  return { value: search.valueOf(whole), cells: tree === undefined ? [] : cellsOf(tree), tree };
}

/** A bound may only err upwards. */
const ROUNDED_UP = 1 + 1e-12;
