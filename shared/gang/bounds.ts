// What no plan of a gang run can be below: the proof of how good a plan is.
import { type GangOrder, sum } from './gang.ts';

/** No fewer forms have places for every design. */
export function leastForms({ quantities, slots }: GangOrder): number {
  return Math.ceil(quantities.length / slots);
}

/** No more are ever worth having: a form for each design does, or as many as are allowed. */
export function mostForms({ quantities, mostForms: allowed }: GangOrder): number {
  return Math.min(quantities.length, allowed ?? quantities.length);
}

/**
 * Sheets that so many forms need at the very least.
 *
 * Every place of every sheet makes one piece at most. And where there are few places more than designs, some designs have
 * one place only, whose form must run as long as they are wanted; the best that can be hoped for is that those are
 * the designs with the smallest numbers, lying together by size.
 */
export function leastSheets({ quantities, slots }: GangOrder, forms: number): number {
  const single = Math.min(quantities.length, 2 * quantities.length - forms * slots);
  const smallest = quantities.toSorted((a, b) => a - b).slice(0, Math.max(0, single));
  const longest = smallest.toReversed().filter((_, place) => place % slots === 0);
  return Math.max(Math.ceil(sum(quantities) / slots), sum(longest));
}

/** Sheets below which it is proven that a number of forms does not make the order. */
export type ProvenSheets = ReadonlyMap<number, number>;

/** What a plan of so many forms cannot cost less than. */
function leastCostOf(order: GangOrder, proven: ProvenSheets, forms: number): number {
  const sheets = Math.max(leastSheets(order, forms), proven.get(forms) ?? 0);
  return order.formCost * forms + order.sheetCost * sheets;
}

/** What no plan can cost less than. */
export function leastCost(order: GangOrder, proven: ProvenSheets): number {
  return Math.min(...possibleCounts(order).map((forms) => leastCostOf(order, proven, forms)));
}

/** Numbers of forms with which a plan may yet cost less than `cost`. */
export function formsWorthTrying(order: GangOrder, proven: ProvenSheets, cost: number): readonly number[] {
  return possibleCounts(order).filter((forms) => gapOf(cost, leastCostOf(order, proven, forms)) > 0);
}

function possibleCounts(order: GangOrder): readonly number[] {
  const least = leastForms(order);
  return Array.from({ length: Math.max(0, mostForms(order) - least + 1) }, (_, more) => least + more);
}

/** Costs that differ by no more than this share are the same cost: a plan this near to its bound is the best there is. */
const SAME_COST = 1e-6;

/** How far a plan may be from the best, as a share of its cost: 0 where it is proven the best. */
export function gapOf(cost: number, bound: number): number {
  return bound >= cost * (1 - SAME_COST) ? 0 : (cost - bound) / cost;
}
