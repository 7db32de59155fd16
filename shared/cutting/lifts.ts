// Lifts: how many piles the printed sheets make at the guillotine.
import { TOLERANCE } from '../geometry/tolerance.ts';
import type { Cutter } from './cutter.ts';
import type { PrintedPile } from './cuttingInput.ts';
import type { Lifts } from './order.ts';

/** As few lifts as the cutter allows, as even as can be. A cutter that takes not even one sheet gives none. */
export function liftsOf({ sheets, caliper }: PrintedPile, cutter: Cutter): Lifts {
  const highest = Math.min(cutter.opening, cutter.mostStack);
  const most = Math.floor((highest + TOLERANCE) / caliper);
  if (most < 1) return { sheets: [], height: 0 };
  const lifts = Math.ceil(sheets / most);
  const least = Math.floor(sheets / lifts);
  const larger = sheets - least * lifts;
  return {
    sheets: Array.from({ length: lifts }, (_, i) => (i < larger ? least + 1 : least)),
    height: Math.ceil(sheets / lifts) * caliper,
  };
}
