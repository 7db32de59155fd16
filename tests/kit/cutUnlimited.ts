// Several sizes on one sheet, as many copies of each as pay best.
import type { Size } from '../../shared/geometry/space.ts';
import { blockOf, type CutTree, cellsOf, type LaidCell } from '../../shared/layout/guillotine/cutTree.ts';
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
  const search = searchUnlimited({ ways, stops, bound: (w, h) => dearest * w * h * ROUNDED_UP });
  const corner = [stops.across.length - 1, stops.up.length - 1] as const;
  const tree = search.layoutAt<CutTree>(...corner, {
    block: ({ kind, onItsSide }, across, up) =>
      blockOf(kind, (offers[kind] as Offer).cell, { onItsSide, across, up }),
    join: joinParts,
  });
  return { value: search.valueAt(...corner), cells: tree === undefined ? [] : cellsOf(tree), tree };
}

/** A bound may only err upwards. */
const ROUNDED_UP = 1 + 1e-12;
