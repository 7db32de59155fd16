// Several sizes on one sheet, no more copies of each than there are orders for.
import type { Size } from '../../shared/geometry/space.ts';
import { blockOf, type CutTree, cellsOf } from '../../shared/layout/guillotine/cutTree.ts';
import { joinParts } from '../../shared/layout/guillotine/joinParts.ts';
import { type Effort, searchLimited } from '../../shared/layout/guillotine/limitedSearch.ts';
import { offeredRegion } from '../../shared/layout/guillotine/ticks.ts';
import { waysToLie } from '../../shared/layout/guillotine/ways.ts';
import type { Offer, ValuedLayout } from './cutUnlimited.ts';

/** An offer of which there are only so many copies (>= 1). */
export interface LimitedOffer extends Offer {
  readonly copies: number;
}

/** The best layout found, and how sure it is: `bound` is what no layout can be worth more than. */
export interface LimitedLayout extends ValuedLayout {
  readonly proven: boolean;
  readonly bound: number;
}

/**
 * The most value that edge-to-edge cuts get out of a region (pt) when there are only so many copies of each kind.
 * Exact if the search ends within its effort (`proven`); else the best found, with the bound.
 */
export function cutLimited(offers: readonly LimitedOffer[], region: Size, effort: Effort): LimitedLayout {
  const room = offeredRegion(region);
  const ways = offers.flatMap(({ cell, lies, value }, kind) =>
    waysToLie(cell, lies, room).map((way) => ({ ...way, kind, value })),
  );
  const task = {
    room,
    ways,
    values: offers.map((offer) => offer.value),
    copies: offers.map((offer) => offer.copies),
  };
  const least = Math.min(...task.values);
  const search = searchLimited<CutTree>(task, least, effort, {
    block: ({ kind, onItsSide }, across, up) =>
      blockOf(kind, (offers[kind] as Offer).cell, { onItsSide, across, up }),
    join: joinParts,
  });
  const { found, proven, bound } = search.run();
  const tree = found?.layout;
  return { value: found?.value ?? 0, cells: tree === undefined ? [] : cellsOf(tree), tree, proven, bound };
}
