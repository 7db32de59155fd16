// A few of the stops of a direction, well chosen: enough for a good layout, too few to prove one the best.
import { type Run, sumsOf } from './stops.ts';

/** With this many stops there are enough for a good layout. */
const ENOUGH_STOPS = 80;

/** Rows from an edge are stops as long as there are no more than this. */
const MOST_STOPS = 160;

/**
 * Stops from 0 on, ascending: all there are if they are few, else those where rows of one length end that begin at the near edge, then those that begin at
 * the far edge; the widest gaps are halved until there are stops enough. Whole numbers (ticks).
 */
export function fewStops(runs: readonly Run[], room: number): Float64Array {
  const all = sumsOf(runs, room, ENOUGH_STOPS);
  if (all !== undefined) return all;
  const stops = new Set([0, room]);
  const longestFirst = runs.toSorted((a, b) => b.length - a.length);
  for (const fromFarEdge of [false, true]) {
    for (const { length, copies } of longestFirst) {
      for (let laid = 1; laid <= copies && laid * length <= room && stops.size < MOST_STOPS; laid++) {
        stops.add(fromFarEdge ? room - laid * length : laid * length);
      }
    }
  }
  const inOrder = [...stops].sort((a, b) => a - b);
  while (inOrder.length < ENOUGH_STOPS) halveWidestGap(inOrder);
  return Float64Array.from(inOrder);
}

function halveWidestGap(stops: number[]): void {
  let widest = 1;
  const gap = (k: number) => (stops[k] as number) - (stops[k - 1] as number);
  for (let k = 2; k < stops.length; k++) if (gap(k) > gap(widest)) widest = k;
  stops.splice(widest, 0, (stops[widest - 1] as number) + Math.floor(gap(widest) / 2));
}
