// Whether a layout that no guillotine can cut would hold more identical pieces. It is only said, never laid.
import type { Size } from '../../geometry/space.ts';
import type { Lies } from '../lies.ts';
import { mostAnyhow } from './countBounds.ts';
import { searchPinwheels } from './pinwheels.ts';
import { areTooMany, stopsFor } from './stops.ts';
import { offeredRegion } from './ticks.ts';
import { waysToLie } from './ways.ts';

/** The answer: surely not; yes, at least so many; or not known, but surely no more than so many. */
export type Denser =
  | { readonly kind: 'no-more' }
  | { readonly kind: 'more'; readonly atLeast: number }
  | { readonly kind: 'unknown'; readonly atMost: number };

/**
 * Whether a region could hold more than `count` cells of one size if cuts need not run from edge to edge, `count` being
 * what a guillotine gets out of it.
 *
 * Sizes in pt; the cell as it lies upright. The work is bounded by a count, about as much again as laying the pieces.
 */
export function couldHoldMore(cell: Size, lies: Lies, region: Size, count: number): Denser {
  const room = offeredRegion(region);
  const ways = waysToLie(cell, lies, room);
  const [way, otherWay] = ways;
  // Lying one way only, no layout at all holds more than a plain grid.
  if (way === undefined || otherWay === undefined) return { kind: 'no-more' };
  const stops = stopsFor(ways, room);
  const atMost = mostAnyhow(stops.across.at(-1) as number, stops.up.at(-1) as number, way.w, way.h);
  if (atMost <= count) return { kind: 'no-more' };
  const found = areTooMany(stops) ? count : searchPinwheels(ways, stops, count);
  return found > count ? { kind: 'more', atLeast: found } : { kind: 'unknown', atMost };
}
