// A good layout within the copies there are, quickly: one for each part of the room, made of those of smaller parts.
import type { Size } from '../../geometry/space.ts';
import { blockOf, type CutTree } from './cutTree.ts';
import { fewStops } from './fewStops.ts';
import { joinParts } from './joinParts.ts';
import type { SizeOnSheet } from './sizes.ts';
import { stopFinder } from './stops.ts';
import type { Way } from './ways.ts';

/** How often the parts are filled, each time with other worths of the copies. */
const MOST_ROUNDS = 4;

/** By what share a copy gets dearer after the first round if none of its kind is laid; later ones change less. */
const CHANGE = 0.3;
const CHANGE_SLOWS = 0.2;

/** What float64 may have added to a worth, which is a share of the room. */
const NOISE = 1e-9;

/** How the layout of a part is made. */
const NOTHING = 0;
const BLOCK = 1;
const BESIDE = 2;
const STACKED = 3;

/**
 * A layout of so many copies (>= 1) of each size in the room (ticks), or no tree where none was found; there may be one
 * all the same. A cell's kind is the place of its size in the list. `looked` is the work done, in pairs of parts.
 *
 * Every part keeps the layout that is worth most, with the room that it really takes. Copies that a round leaves out are
 * worth more in the next one.
 *
 * @source Christofides & Hadjiconstantinou, European J. Opl Res. 83 (1995) 21-38, dynamic programming that looks away
 * from the copies, and prices on them (from memory); one layout within the copies for each part is our own addition.
 */
export function layPartByPart(
  sizes: readonly SizeOnSheet[],
  copies: readonly number[],
  room: Size,
): { readonly tree: CutTree | undefined; readonly looked: number } {
  const parts = partsOf(sizes, copies, room);
  const worth = sizes.map(({ ways }) => {
    const { w, h } = ways[0] as Way;
    return (w / room.w) * (h / room.h);
  });
  for (let round = 0; round < MOST_ROUNDS; round++) {
    parts.fill(worth);
    const laid = parts.laid();
    if (laid.every((n, kind) => n === copies[kind])) return { tree: parts.tree(), looked: parts.looked() };
    const change = CHANGE / (1 + CHANGE_SLOWS * round);
    for (const [kind, n] of laid.entries()) {
      worth[kind] = (worth[kind] as number) * (1 + change * (1 - n / (copies[kind] as number)));
    }
  }
  return { tree: undefined, looked: parts.looked() };
}

/** The parts that reach from the lower left of the room to two of a few stops. */
function partsOf(sizes: readonly SizeOnSheet[], copies: readonly number[], room: Size) {
  const kinds = copies.length;
  const ways = sizes.flatMap((size, kind) => size.ways.map((way) => ({ ...way, kind })));
  const runs = (length: (way: Way) => number) =>
    ways.map((way) => ({ length: length(way), copies: copies[way.kind] as number }));
  const across = fewStops(
    runs((way) => way.w),
    room.w,
  );
  const up = fewStops(
    runs((way) => way.h),
    room.h,
  );
  const columnAt = stopFinder(across);
  const rowAt = stopFinder(up);
  const rows = up.length;
  const parts = across.length * rows;
  /** The worth of each part's layout, and the room (ticks) that it really takes. */
  const most = new Float64Array(parts);
  const w = new Float64Array(parts);
  const h = new Float64Array(parts);
  /** The copies of each kind in it, no more than there are. */
  const laid = new Int32Array(parts * kinds);
  /** How it is made; of which two parts, or of which way in how many columns. */
  const made = new Uint8Array(parts);
  const first = new Int32Array(parts);
  const second = new Int32Array(parts);
  let worth: readonly number[] = [];
  let looked = 0;

  function fill(newWorth: readonly number[]): void {
    worth = newWorth;
    for (let column = 1; column < across.length; column++) {
      for (let row = 1; row < rows; row++) {
        const part = column * rows + row;
        clear(part);
        takeOver(part, part - rows);
        takeOver(part, part - 1);
        for (let k = 0; k < ways.length; k++) tryBlock(part, k, column, row);
        tryBeside(part, column, row);
        tryStacked(part, column, row);
      }
    }
  }

  function clear(part: number): void {
    most[part] = 0;
    w[part] = 0;
    h[part] = 0;
    made[part] = NOTHING;
    laid.fill(0, part * kinds, (part + 1) * kinds);
  }

  /** Whether a layout is better than that of the part: worth more, or as much in less room. */
  function isBetter(part: number, value: number, width: number, height: number): boolean {
    const before = most[part] as number;
    if (value > before + NOISE) return true;
    return value > before - NOISE && width * height < (w[part] as number) * (h[part] as number);
  }

  function keep(part: number, value: number, width: number, height: number): void {
    most[part] = value;
    w[part] = width;
    h[part] = height;
  }

  function makeOf(part: number, how: number, a: number, b: number): void {
    made[part] = how;
    first[part] = a;
    second[part] = b;
  }

  function takeOver(part: number, smaller: number): void {
    const [value, width, height] = [most[smaller] as number, w[smaller] as number, h[smaller] as number];
    if (!isBetter(part, value, width, height)) return;
    keep(part, value, width, height);
    makeOf(part, made[smaller] as number, first[smaller] as number, second[smaller] as number);
    laid.copyWithin(part * kinds, smaller * kinds, (smaller + 1) * kinds);
  }

  function tryBlock(part: number, k: number, column: number, row: number): void {
    const way = ways[k] as (typeof ways)[number];
    const inRow = Math.floor((across[column] as number) / way.w);
    const inColumn = Math.floor((up[row] as number) / way.h);
    const n = Math.min(copies[way.kind] as number, inRow * inColumn);
    if (n === 0) return;
    const columns = Math.min(n, inRow);
    const value = n * (worth[way.kind] as number);
    const [width, height] = [columns * way.w, Math.ceil(n / columns) * way.h];
    if (!isBetter(part, value, width, height)) return;
    keep(part, value, width, height);
    makeOf(part, BLOCK, k, columns);
    laid.fill(0, part * kinds, (part + 1) * kinds);
    laid[part * kinds + way.kind] = n;
  }

  function tryBeside(part: number, column: number, row: number): void {
    const room = across[column] as number;
    let before = 0;
    for (let near = rows + row; near < part; near += rows) {
      // Like the part before it, as far as it is worth.
      if (most[near] === before) continue;
      before = most[near] as number;
      const far = columnAt(room - (w[near] as number)) * rows + row;
      if (mayBeBetter(part, near, far)) tryJoin(part, BESIDE, near, far);
    }
  }

  function tryStacked(part: number, column: number, row: number): void {
    const room = up[row] as number;
    let before = 0;
    for (let near = column * rows + 1; near < part; near++) {
      if (most[near] === before) continue;
      before = most[near] as number;
      const far = column * rows + rowAt(room - (h[near] as number));
      if (mayBeBetter(part, near, far)) tryJoin(part, STACKED, near, far);
    }
  }

  function mayBeBetter(part: number, near: number, far: number): boolean {
    looked++;
    return (most[near] as number) + (most[far] as number) > (most[part] as number) + NOISE;
  }

  function tryJoin(part: number, how: number, near: number, far: number): void {
    let value = 0;
    for (let kind = 0; kind < kinds; kind++) value += together(near, far, kind) * (worth[kind] as number);
    const [wA, wB, hA, hB] = [w[near] as number, w[far] as number, h[near] as number, h[far] as number];
    const width = how === BESIDE ? wA + wB : Math.max(wA, wB);
    const height = how === BESIDE ? Math.max(hA, hB) : hA + hB;
    if (!isBetter(part, value, width, height)) return;
    keep(part, value, width, height);
    makeOf(part, how, near, far);
    for (let kind = 0; kind < kinds; kind++) laid[part * kinds + kind] = together(near, far, kind);
  }

  /** The copies of a kind in two parts, as far as there are so many. */
  function together(a: number, b: number, kind: number): number {
    const n = (laid[a * kinds + kind] as number) + (laid[b * kinds + kind] as number);
    return Math.min(n, copies[kind] as number);
  }

  function treeOf(part: number, left: number[]): CutTree | undefined {
    const how = made[part];
    const [a, b] = [first[part] as number, second[part] as number];
    if (how === NOTHING) return undefined;
    if (how === BLOCK) {
      const { kind, onItsSide } = ways[a] as (typeof ways)[number];
      const n = Math.min(laid[part * kinds + kind] as number, left[kind] as number);
      if (n === 0) return undefined;
      left[kind] = (left[kind] as number) - n;
      const columns = Math.min(b, n);
      const grid = { onItsSide, across: columns, up: Math.ceil(n / columns) };
      return blockOf(kind, (sizes[kind] as SizeOnSheet).cell, grid, n);
    }
    const near = treeOf(a, left);
    const far = treeOf(b, left);
    if (near === undefined || far === undefined) return near ?? far;
    return joinParts(how === STACKED ? 'stacked' : 'side-by-side', [near, far]);
  }

  const whole = parts - 1;
  return {
    /** Finds a layout for every part when a copy of kind k is worth `worth[k]`. */
    fill,
    /** The copies of each kind in the layout of the whole room. */
    laid: () => Array.from(laid.subarray(whole * kinds)),
    tree: () => treeOf(whole, [...copies]),
    looked: () => looked,
  };
}
