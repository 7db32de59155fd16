// The most value that edge-to-edge cuts can get out of a region when there are only so many copies of each kind.
import { joinBoxes } from './joinBoxes.ts';
import { type Axes, axesOf, type LimitedTask, valueOfAll } from './limitedTask.ts';
import { searchPrices } from './prices.ts';
import type { Builder } from './unlimitedSearch.ts';

/** How much a search may do before it gives up, by counts. */
export interface Effort {
  /** Stops in each direction, about; with more, bounds are worked out more coarsely. */
  readonly stops: number;
  /** Steps of the relaxations that look for prices. */
  readonly pricing: number;
  /** Pairs of boxes looked at. */
  readonly pairs: number;
  /** Boxes kept. */
  readonly boxes: number;
}

/** What a search found. */
export interface LimitedFind<T> {
  /** The best layout, or `undefined` where none is worth what was asked. */
  readonly found: { readonly value: number; readonly layout: T } | undefined;
  /** No layout is worth more than this. */
  readonly bound: number;
  /** Whether no layout is worth more than the one found (or, if none was found, worth what was asked). */
  readonly proven: boolean;
  /** Pairs of boxes looked at. */
  readonly looked: number;
}

/** A search that can be begun by its bound alone, and gone on with where that does not settle it. */
export interface LimitedSearch<T> {
  /** Whether prices show, within so many rounds, that no layout is worth what was asked. */
  readonly isRuledOut: (rounds: number) => boolean;
  readonly run: () => LimitedFind<T>;
}

/** Relaxations tried for prices, at most: more of them hardly better the bound. */
const MOST_ROUNDS = 200;

/** The bound is tried over fewer stops first, in so many times as few. */
const COARSER = 2;

/** What float64 may have added to a sum of values, as a part of the least step between two of them. */
const NOISE = 1e-6;

/** Looks for the layout that is worth most among those worth at least `atLeast` (> 0): by prices, then by joining boxes. */
export function searchLimited<T>(
  task: LimitedTask,
  atLeast: number,
  effort: Effort,
  builder: Builder<T>,
): LimitedSearch<T> {
  const step = leastStep(task.values, task.copies);
  // Beyond all copies there is nothing to be found.
  const all = valueOfAll(task) - step * NOISE;
  const above = (value: number) => (value >= all ? Infinity : value + step * (1 - NOISE));
  const least = atLeast - step * NOISE;
  const aim = { toBeat: least, above };
  const coarse = axesOf(task, effort.stops / COARSER);
  const coarsePrices = searchPrices(task, coarse, builder, aim);

  function run(): LimitedFind<T> {
    const isExact = coarse.across.exact && coarse.up.exact;
    const axes = isExact ? coarse : axesOf(task, effort.stops);
    const prices = isExact ? coarsePrices : searchPrices(task, axes, builder, aim);
    const priced = prices(mostRounds(axes, effort));
    const toBeat = priced.found === undefined ? least : above(priced.found.value);
    const joined =
      priced.bound < toBeat
        ? { found: undefined, bound: -Infinity, looked: 0 }
        : joinBoxes(task, axes, priced.worth, { toBeat, above, effort, builder });
    const found = joined.found ?? priced.found;
    const bound = Math.min(joined.bound, priced.bound);
    const proven = bound < (found === undefined ? least : above(found.value));
    return { found, bound: proven ? (found?.value ?? atLeast - step) : bound, proven, looked: joined.looked };
  }

  return {
    isRuledOut: (rounds) => {
      const { bound, found } = coarsePrices(rounds);
      return found === undefined && bound < least;
    },
    run,
  };
}

/** The least step between the values of two layouts: 1 where all values are whole, else a trifle of all there is. */
function leastStep(values: readonly number[], copies: readonly number[]): number {
  if (values.every(Number.isInteger)) return 1;
  return 1e-9 * values.reduce((sum, value, k) => sum + value * (copies[k] as number), 0);
}

/** How often the effort allows to relax over these stops; once is always allowed. */
function mostRounds({ across, up }: Axes, { pricing }: Effort): number {
  const steps = across.stops.length * up.stops.length * (across.stops.length + up.stops.length);
  return Math.min(MOST_ROUNDS, Math.ceil(pricing / steps));
}
