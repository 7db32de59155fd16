// Whether forms have too few places for an order, told by prices and without filling them.
import type { CopiesOnForms } from './waysToMake.ts';

/** The ways to make a design, and how many designs have just these. */
export interface WaysOfDesigns {
  readonly ways: readonly CopiesOnForms[];
  readonly designs: number;
}

/** Whether it is proven that places are lacking, and the ways that were priced to find out. */
export interface Pricing {
  readonly lacking: boolean;
  readonly steps: number;
}

/** Prices are changed so often at most. */
const MAX_ROUNDS = 30;
/** Prices aim at so many places lacking, as a share of those of one form. */
const TARGET_GAP_SHARE = 0.02;
/** Fewer places than this are rounding. */
const ROUNDING_SHARE = 1e-6;

/**
 * Whether forms that run for these lengths lack places for the designs, whichever way each is made.
 *
 * A place of each form has a price, and each design takes the way that costs it least. If that comes to more than all
 * places are worth, no choice of ways fits the forms. Prices begin as the lengths of the runs, and rise on forms of
 * which too much is taken. Not lacking proves nothing.
 *
 * @source Lagrangian relaxation with subgradient steps of Polyak's length; from memory.
 */
export function priceWays(
  choices: readonly WaysOfDesigns[],
  slots: number,
  runs: readonly number[],
): Pricing {
  let prices = shares(runs);
  let steps = 0;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const beyond = runs.map(() => -slots);
    for (const { ways, designs } of choices) {
      const cheapest = cheapestOf(ways, prices);
      if (cheapest === undefined) return { lacking: true, steps };
      for (let form = 0; form < runs.length; form++) {
        beyond[form] = (beyond[form] ?? 0) + designs * (cheapest[form] ?? 0);
      }
      steps += ways.length;
    }
    const lack = costOf(beyond, prices);
    if (lack > ROUNDING_SHARE) return { lacking: true, steps };
    const length = costOf(beyond, beyond);
    if (length === 0) break;
    const step = (TARGET_GAP_SHARE * slots - lack) / length;
    prices = shares(prices.map((price, form) => Math.max(0, price + step * (beyond[form] ?? 0))));
  }
  return { lacking: false, steps };
}

function cheapestOf(ways: readonly CopiesOnForms[], prices: readonly number[]): CopiesOnForms | undefined {
  let least = Number.POSITIVE_INFINITY;
  let cheapest: CopiesOnForms | undefined;
  for (const way of ways) {
    const cost = costOf(way, prices);
    if (cost >= least) continue;
    least = cost;
    cheapest = way;
  }
  return cheapest;
}

function costOf(copies: readonly number[], prices: readonly number[]): number {
  let cost = 0;
  for (let form = 0; form < prices.length; form++) cost += (copies[form] ?? 0) * (prices[form] ?? 0);
  return cost;
}

/** In the same proportions, 1 all together. */
function shares(prices: readonly number[]): readonly number[] {
  let all = 0;
  for (const price of prices) all += price;
  return prices.map((price) => price / all);
}
