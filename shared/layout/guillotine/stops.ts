// The stops of the back gauge: every distance from an edge at which a cut can be of use.
import type { Size } from '../../geometry/space.ts';

/**
 * One length that pieces have along a direction, and how many of them can lie in line.
 * Lengths are whole numbers (ticks).
 */
export interface Run {
  readonly length: number;
  readonly copies: number;
}

/**
 * All sums of the lengths that stay within `room`, ascending, from 0. A cut elsewhere can be moved back to the stop
 * before it and loses nothing.
 *
 * @source Christofides & Whitlock, Operations Research 25 (1977) 30-44: normal patterns.
 */
export function sumsOf(runs: readonly Run[], room: number): Float64Array;
/** The same, or `undefined` where there are more than `most` of them. */
export function sumsOf(runs: readonly Run[], room: number, most: number): Float64Array | undefined;
export function sumsOf(runs: readonly Run[], room: number, most = Infinity): Float64Array | undefined {
  const sums = new Set<number>([0]);
  for (const { length, copies } of runs) {
    for (const start of [...sums]) {
      for (let laid = 1, sum = start + length; laid <= copies && sum <= room; laid++, sum += length) {
        sums.add(sum);
      }
      if (sums.size > most) return undefined;
    }
  }
  return Float64Array.from(sums).sort();
}

/** The stops across a region and up it, ascending, in ticks. */
export interface Stops {
  readonly across: Float64Array;
  readonly up: Float64Array;
}

/** All stops in a region for pieces (ticks) of which there are as many copies as one likes, or `copies` of each. */
export function stopsFor(ways: readonly (Size & { readonly copies?: number })[], room: Size): Stops {
  return {
    across: sumsOf(
      ways.map(({ w, copies }) => ({ length: w, copies: copies ?? Infinity })),
      room.w,
    ),
    up: sumsOf(
      ways.map(({ h, copies }) => ({ length: h, copies: copies ?? Infinity })),
      room.h,
    ),
  };
}

/** The stops at which rows of one kind end, without those where kinds follow one another: few, however small the pieces. */
export function plainStopsFor(ways: readonly Size[], room: Size): Stops {
  const each = ways.map((way) => stopsFor([way], room));
  const together = (lists: readonly Float64Array[]) =>
    Float64Array.from(new Set(lists.flatMap((list) => [...list]))).sort();
  return { across: together(each.map((stops) => stops.across)), up: together(each.map((stops) => stops.up)) };
}

/** What a search may look at, in pairs of parts, if no bound spares it a look: about a second's work. */
const MOST_LOOKS = 300e6;

/** Whether a search over all these stops would take too long. */
export function areTooMany({ across, up }: Stops): boolean {
  return (across.length * up.length * (across.length + up.length)) / 2 > MOST_LOOKS;
}

/** The index of the last stop that is no farther than `length`. */
export function lastStop(stops: Float64Array, length: number): number {
  let low = 0;
  let high = stops.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((stops[middle] as number) <= length) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** How finely the table of {@link stopFinder} divides the room. */
const TABLE_SIZE = 2048;

/** A function that finds, as {@link lastStop} does but faster, the index of the last stop no farther than a length >= 0. */
export function stopFinder(stops: Float64Array): (length: number) => number {
  const unit = Math.max(1, stops.at(-1) as number) / TABLE_SIZE;
  const table = Int32Array.from({ length: TABLE_SIZE + 1 }, (_, k) => lastStop(stops, Math.floor(k * unit)));
  return (length) => {
    let stop = table[Math.min(TABLE_SIZE, Math.floor(length / unit))] as number;
    while (stop > 0 && (stops[stop] as number) > length) stop--;
    while (stop + 1 < stops.length && (stops[stop + 1] as number) <= length) stop++;
    return stop;
  };
}

/**
 * The cuts worth trying in a part that is as long as stop `index`: pairs of stops (near, far), one after the other in
 * the answer, near <= far, that fit into it together and of which neither can be longer without the other giving way.
 */
export function partings(stops: Float64Array, index: number): Int32Array {
  const whole = stops[index] as number;
  const pairs: number[] = [];
  let far = index;
  for (let near = 1; near <= far; near++) {
    while ((stops[far] as number) > whole - (stops[near] as number)) far--;
    const spare = whole - (stops[far] as number);
    while (near < far && (stops[near + 1] as number) <= spare) near++;
    if (near <= far) pairs.push(near, far);
  }
  return Int32Array.from(pairs);
}

/** The {@link partings} up to each stop, worked out when they are first asked for. */
export function partingsOf(stops: Float64Array): (index: number) => Int32Array {
  const known: Int32Array[] = [];
  return (index) => {
    known[index] ??= partings(stops, index);
    return known[index];
  };
}

/** For every two stops, `gaps[to * n + from]` is the last stop that fits between them, counted from the edge. */
export function gapsOf(stops: Float64Array): Int32Array {
  const n = stops.length;
  const gaps = new Int32Array(n * n);
  for (let to = 0; to < n; to++) {
    let gap = to;
    for (let from = 0; from <= to; from++) {
      const room = (stops[to] as number) - (stops[from] as number);
      while ((stops[gap] as number) > room) gap--;
      gaps[to * n + from] = gap;
    }
  }
  return gaps;
}
