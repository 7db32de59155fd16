// Prices on copies: what makes an unlimited layout ask for no more copies than there are.
import type { Axes, LimitedTask } from './limitedTask.ts';
import { type Relaxation, relax, relaxedLayout } from './relaxation.ts';
import type { Builder } from './unlimitedSearch.ts';

/** The prices found and what they show. */
export interface Priced<T> {
  /** For each kind, its value less the price of a copy. */
  readonly worth: Float64Array;
  /** No layout within the copies is worth more than this. */
  readonly bound: number;
  /** The best layout within the copies come across on the way, or `undefined` if none is worth more than asked. */
  readonly found: { readonly value: number; readonly layout: T } | undefined;
}

/** What a search for prices aims at. */
export interface PriceAim {
  /** The value that a layout must reach to be of interest. */
  readonly toBeat: number;
  /** What is of interest once a layout of this value is found. */
  readonly above: (value: number) => number;
}

/** After so many prices without a better bound the steps are halved, and after so many halvings the search ends. */
const PATIENCE = 10;
const LEAST_STEP = 0.01;

/** Steps aim at this part of what is to be beaten: those that aim at it come ever nearer without falling below. */
const AIM = 0.99;

/**
 * A search for the prices that give the least bound, to be taken as far as one likes: it goes on until so many rounds
 * are done in all. Kinds that the unlimited layout uses too often get dearer, those it leaves over get cheaper. Ends
 * as soon as the bound falls below `toBeat`, which layouts found on the way raise.
 *
 * @source Lagrangian relaxation with subgradient steps: Held, Wolfe & Crowder, Mathematical Programming 6 (1974) 62-88
 * (from memory).
 */
export function searchPrices<T>(
  task: LimitedTask,
  axes: Axes,
  builder: Builder<T>,
  aim: PriceAim,
): (rounds: number) => Priced<T> {
  const { values, copies } = task;
  const parts = axes.across.stops.length * axes.up.stops.length;
  const tables: Relaxation = { most: new Float64Array(parts), choices: new Int32Array(parts) };
  const prices = new Float64Array(values.length);
  const worth = new Float64Array(values.length);
  const best = { prices: prices.slice(), bound: Infinity };
  let found: Priced<T>['found'];
  let toBeat = aim.toBeat;
  let size = 1;
  let idle = 0;
  let done = 0;
  let ended = false;

  /** One round: the bound by the prices as they are, and the next prices. Ends where no others would better the bound. */
  function improve(): void {
    for (let k = 0; k < worth.length; k++) worth[k] = (values[k] as number) - (prices[k] as number);
    relax(task, axes, worth, tables);
    const bound = prices.reduce(
      (sum, price, k) => sum + price * (copies[k] as number),
      tables.most[parts - 1] as number,
    );
    const used = countKinds(task, axes, tables);
    keepLayout(used);
    if (bound < best.bound) {
      best.bound = bound;
      best.prices.set(prices);
      idle = 0;
    } else if (++idle === PATIENCE) {
      prices.set(best.prices);
      size /= 2;
      idle = 0;
      return;
    }
    changePrices(bound, used);
  }

  /** Keeps the relaxed layout, without the copies that there are not, if it is worth more than asked. */
  function keepLayout(used: readonly number[]): void {
    if (!axes.across.exact || !axes.up.exact) return;
    const value = used.reduce(
      (sum, n, k) => sum + Math.min(n, copies[k] as number) * (values[k] as number),
      0,
    );
    if (value < toBeat) return;
    const layout = layoutWithin(task, axes, tables, builder);
    if (layout !== undefined) found = { value, layout };
    toBeat = aim.above(value);
  }

  function changePrices(bound: number, used: readonly number[]): void {
    const spare = used.map((n, k) => {
      const left = (copies[k] as number) - n;
      return left > 0 && prices[k] === 0 ? 0 : left;
    });
    const length = spare.reduce((sum, left) => sum + left * left, 0);
    ended = length === 0 || toBeat === Infinity;
    if (ended) return;
    const by = (size * (bound - AIM * toBeat)) / length;
    for (let k = 0; k < prices.length; k++)
      prices[k] = Math.max(0, (prices[k] as number) - by * (spare[k] as number));
  }

  return (rounds) => {
    for (; done < rounds && !ended && best.bound >= toBeat && size > LEAST_STEP; done++) improve();
    const worth = Float64Array.from(values, (value, k) => value - (best.prices[k] as number));
    return { worth, bound: best.bound, found };
  };
}

function countKinds(task: LimitedTask, axes: Axes, tables: Relaxation): number[] {
  const used = task.copies.map(() => 0);
  relaxedLayout<true>(task, axes, tables, {
    block: ({ kind }) => {
      used[kind] = (used[kind] as number) + 1;
      return true;
    },
    join: () => true,
  });
  return used;
}

/** The relaxed layout without the copies that there are not. */
function layoutWithin<T>(
  task: LimitedTask,
  axes: Axes,
  tables: Relaxation,
  builder: Builder<T>,
): T | undefined {
  const left = [...task.copies];
  return relaxedLayout<T | undefined>(task, axes, tables, {
    block: (way, across, up) => {
      const copies = left[way.kind] as number;
      left[way.kind] = copies - 1;
      return copies > 0 ? builder.block(way, across, up) : undefined;
    },
    join: (way, [a, b]) => (a === undefined ? b : b === undefined ? a : builder.join(way, [a, b])),
  });
}
