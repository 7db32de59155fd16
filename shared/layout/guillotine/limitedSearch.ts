// The most value that edge-to-edge cuts can get out of a region when there are only so many copies of each kind.
import { Boxes, type NewBox } from './boxes.ts';
import { HopefulFirst } from './hopefulFirst.ts';
import { type Axes, axesOf, type LimitedTask, valueOfAll } from './limitedTask.ts';
import { findPrices } from './prices.ts';
import { mostOutside, type Relaxation, relax } from './relaxation.ts';
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

/** Relaxations tried for prices, at most: more of them hardly better the bound. */
const MOST_ROUNDS = 200;

/** What float64 may have added to a sum of values, as a part of the least step between two of them. */
const NOISE = 1e-6;

/**
 * Joins boxes, most hopeful first, until none is left that could become better than the best found.
 *
 * Only layouts worth at least `atLeast` (> 0) are of interest. Two boxes are joined only where neither wastes more than
 * the hope of the other allows.
 *
 * @source Viswanathan & Bagchi, Operations Research 41 (1993) 768-776, best first from the pieces up (from memory);
 * the bounds by prices on copies are our own addition.
 */
export function searchLimited<T>(
  task: LimitedTask,
  atLeast: number,
  effort: Effort,
  builder: Builder<T>,
): LimitedFind<T> {
  const { room, ways, values, copies } = task;
  const step = leastStep(values, copies);
  // Beyond all copies there is nothing to be found.
  const all = valueOfAll(task) - step * NOISE;
  const above = (value: number) => (value >= all ? Infinity : value + step * (1 - NOISE));
  const axes = axesOf(task, effort.stops);
  const priced = findPrices(task, axes, builder, {
    rounds: Math.min(MOST_ROUNDS, Math.ceil(effort.pricing / costOfRelaxing(axes))),
    toBeat: atLeast - step * NOISE,
    above,
  });
  let found = priced.found;
  let toBeat = found === undefined ? atLeast - step * NOISE : above(found.value);
  let looked = 0;
  const ended = (bound: number): LimitedFind<T> => {
    const proven = bound < toBeat;
    return { found, bound: proven ? (found?.value ?? atLeast - step) : bound, proven, looked };
  };
  if (priced.bound < toBeat) return ended(priced.bound);

  const future = futureOf(task, axes, priced.worth);
  const boxes = new Boxes(copies);
  const waiting = new HopefulFirst((a, b) => {
    const more = (boxes.hope[a] as number) - (boxes.hope[b] as number);
    return more > 0 || (more === 0 && (boxes.value[a] as number) > (boxes.value[b] as number));
  });
  const keep = (box: NewBox, number: number | undefined) => {
    if (number === undefined) return;
    waiting.add(number);
    if (box.value < toBeat) return;
    found = { value: box.value, layout: boxes.layoutOf(number, ways, builder) };
    toBeat = above(box.value);
  };
  for (const [k, { w, h, value, kind }] of ways.entries()) {
    const box = future(w, h, value, priced.worth[kind] as number);
    if (box.hope >= toBeat) keep(box, boxes.keepPiece(k, kind, box));
  }

  // Those that have been joined with one another, the least wasteful first.
  const joined: number[] = [];
  for (let a = waiting.take(); a !== undefined; a = waiting.take()) {
    const hopeOfA = boxes.hope[a] as number;
    if (hopeOfA < toBeat) break;
    if (looked > effort.pairs || boxes.size > effort.boxes) return ended(Math.min(hopeOfA, priced.bound));
    const lossOfA = boxes.loss[a] as number;
    joined.splice(placeByLoss(joined, lossOfA, boxes), 0, a);
    for (const b of joined) {
      if (hopeOfA - (boxes.loss[b] as number) < toBeat) break;
      looked++;
      if ((boxes.hope[b] as number) - lossOfA < toBeat || !boxes.canJoin(a, b)) continue;
      const [wA, hA, wB, hB] = [boxes.w[a], boxes.h[a], boxes.w[b], boxes.h[b]] as [
        number,
        number,
        number,
        number,
      ];
      const value = (boxes.value[a] as number) + (boxes.value[b] as number);
      const worth = (boxes.worth[a] as number) + (boxes.worth[b] as number);
      if (wA + wB <= room.w) {
        const box = future(wA + wB, Math.max(hA, hB), value, worth);
        if (box.hope >= toBeat) keep(box, boxes.keepJoin('side-by-side', a, b, box));
      }
      if (hA + hB <= room.h) {
        const box = future(Math.max(wA, wB), hA + hB, value, worth);
        if (box.hope >= toBeat) keep(box, boxes.keepJoin('stacked', a, b, box));
      }
    }
  }
  return ended(-Infinity);
}

/** The least step between the values of two layouts: 1 where all values are whole, else a trifle of all there is. */
function leastStep(values: readonly number[], copies: readonly number[]): number {
  if (values.every(Number.isInteger)) return 1;
  return 1e-9 * values.reduce((sum, value, k) => sum + value * (copies[k] as number), 0);
}

function costOfRelaxing({ across, up }: Axes): number {
  return across.stops.length * up.stops.length * (across.stops.length + up.stops.length);
}

/** A function that says of a box what it can become and what it wastes, when a copy of kind k is worth `worth[k]`. */
function futureOf(task: LimitedTask, axes: Axes, worth: Float64Array) {
  const { across, up } = axes;
  const rows = up.stops.length;
  const parts = across.stops.length * rows;
  const tables: Relaxation = { most: new Float64Array(parts), choices: new Int32Array(parts) };
  relax(task, axes, worth, tables);
  const outside = mostOutside(axes, tables);
  const prices = task.values.reduce(
    (sum, value, k) => sum + (value - (worth[k] as number)) * (task.copies[k] as number),
    0,
  );
  return (w: number, h: number, value: number, boxWorth: number): NewBox => ({
    w,
    h,
    value,
    worth: boxWorth,
    hope: boxWorth + prices + (outside[across.endOf(w) * rows + up.endOf(h)] as number),
    loss: (tables.most[across.sizeOf(w) * rows + up.sizeOf(h)] as number) - boxWorth,
  });
}

/** Where a box of this loss belongs among boxes ordered by theirs, after its equals. */
function placeByLoss(ordered: readonly number[], loss: number, boxes: Boxes): number {
  let low = 0;
  let high = ordered.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((boxes.loss[ordered[middle] as number] as number) <= loss) low = middle + 1;
    else high = middle;
  }
  return low;
}
