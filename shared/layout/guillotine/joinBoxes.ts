// Joining boxes, the most hopeful first, until none is left that could become better than the best found.
import { Boxes, type NewBox } from './boxes.ts';
import type { CutWay } from './cutTree.ts';
import { HopefulFirst } from './hopefulFirst.ts';
import type { Axes, LimitedTask } from './limitedTask.ts';
import { mostOutside, type Relaxation, relax } from './relaxation.ts';
import type { Builder, OfferedWay } from './unlimitedSearch.ts';

/** What is of interest, and how much may be done for it. */
export interface JoiningAim<T> {
  /** Layouts worth less are of no interest. */
  readonly toBeat: number;
  /** What is of interest once a layout of this value is found. */
  readonly above: (value: number) => number;
  /** Pairs of boxes looked at, and boxes kept, at most. */
  readonly effort: { readonly pairs: number; readonly boxes: number };
  readonly builder: Builder<T>;
}

/** The best layout found, if any; no other is worth more than `bound` (-Infinity if none is better); pairs looked at. */
export interface Joined<T> {
  readonly found: { readonly value: number; readonly layout: T } | undefined;
  readonly bound: number;
  readonly looked: number;
}

/**
 * Two boxes are joined only where neither wastes more than the hope of the other allows; `worth[k]` is what a copy of kind
 * k is worth less its price.
 *
 * @source Viswanathan & Bagchi, Operations Research 41 (1993) 768-776, best first from the pieces up (from memory);
 * the bounds by prices on copies are our own addition.
 */
export function joinBoxes<T>(
  task: LimitedTask,
  axes: Axes,
  worth: Float64Array,
  aim: JoiningAim<T>,
): Joined<T> {
  const { room, ways, copies } = task;
  const future = futureOf(task, axes, worth);
  const boxes = new Boxes(copies);
  const waiting = new HopefulFirst((a, b) => {
    const more = (boxes.hope[a] as number) - (boxes.hope[b] as number);
    return more > 0 || (more === 0 && (boxes.value[a] as number) > (boxes.value[b] as number));
  });
  let found: Joined<T>['found'];
  let toBeat = aim.toBeat;
  let looked = 0;

  function keep(box: NewBox, number: number | undefined): void {
    if (number === undefined) return;
    waiting.add(number);
    if (box.value < toBeat) return;
    found = { value: box.value, layout: boxes.layoutOf(number, ways, aim.builder) };
    toBeat = aim.above(box.value);
  }

  function keepPiece({ w, h, value, kind }: OfferedWay, k: number): void {
    const worthOfPiece = worth[kind] as number;
    const hope = future.hope(w, h, worthOfPiece);
    if (hope < toBeat) return;
    const box = { w, h, value, worth: worthOfPiece, hope, loss: future.loss(w, h, worthOfPiece) };
    keep(box, boxes.keepPiece(k, kind, box));
  }

  /** Joins two boxes of which there are copies enough, as a box of w x h. */
  function join(way: CutWay, a: number, b: number, w: number, h: number): void {
    const worthOfBoth = (boxes.worth[a] as number) + (boxes.worth[b] as number);
    const hope = future.hope(w, h, worthOfBoth);
    if (hope < toBeat) return;
    const value = (boxes.value[a] as number) + (boxes.value[b] as number);
    const box = { w, h, value, worth: worthOfBoth, hope, loss: future.loss(w, h, worthOfBoth) };
    keep(box, boxes.keepJoin(way, a, b, box));
  }

  function joinBothWays(a: number, b: number): void {
    const wA = boxes.w[a] as number;
    const wB = boxes.w[b] as number;
    const hA = boxes.h[a] as number;
    const hB = boxes.h[b] as number;
    if (wA + wB <= room.w) join('side-by-side', a, b, wA + wB, Math.max(hA, hB));
    if (hA + hB <= room.h) join('stacked', a, b, Math.max(wA, wB), hA + hB);
  }

  for (const [k, way] of ways.entries()) keepPiece(way, k);
  // Those that have been joined with one another, the least wasteful first.
  const joined: number[] = [];
  for (let a = waiting.take(); a !== undefined; a = waiting.take()) {
    const hope = boxes.hope[a] as number;
    if (hope < toBeat) break;
    if (looked > aim.effort.pairs || boxes.size > aim.effort.boxes) return { found, bound: hope, looked };
    const loss = boxes.loss[a] as number;
    joined.splice(placeByLoss(joined, loss, boxes), 0, a);
    for (const b of joined) {
      if (hope - (boxes.loss[b] as number) < toBeat) break;
      looked++;
      if ((boxes.hope[b] as number) - loss >= toBeat && boxes.canJoin(a, b)) joinBothWays(a, b);
    }
  }
  return { found, bound: -Infinity, looked };
}

/** What a box of w x h (ticks) can become, and what it wastes, when a copy of kind k is worth `worth[k]`. */
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
  return {
    hope: (w: number, h: number, boxWorth: number) =>
      boxWorth + prices + (outside[across.endOf(w) * rows + up.endOf(h)] as number),
    loss: (w: number, h: number, boxWorth: number) =>
      (tables.most[across.sizeOf(w) * rows + up.sizeOf(h)] as number) - boxWorth,
  };
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
