// The ways in which a cell may lie in a region, and the room it needs in each.
import type { Size } from '../../geometry/space.ts';
import type { Lies } from '../lies.ts';
import { needed } from './ticks.ts';

/** One way for a cell to lie, with the room it then needs in ticks. */
export interface Way {
  readonly w: number;
  readonly h: number;
  readonly onItsSide: boolean;
}

/** The size of a cell (pt), given as it lies upright, when it lies upright or on its side. */
export function asItLies(cell: Size, onItsSide: boolean): Size {
  return onItsSide ? { w: cell.h, h: cell.w } : { w: cell.w, h: cell.h };
}

/** The ways a cell (pt) may lie that differ and fit the region (ticks), upright first. */
export function waysToLie(cell: Size, lies: Lies, region: Size): Way[] {
  const w = needed(cell.w);
  const h = needed(cell.h);
  const ways: Way[] = [];
  if (lies !== 'on-its-side') ways.push({ w, h, onItsSide: false });
  if (lies === 'on-its-side' || (lies === 'either' && w !== h)) ways.push({ w: h, h: w, onItsSide: true });
  return ways.filter((way) => way.w <= region.w && way.h <= region.h);
}
