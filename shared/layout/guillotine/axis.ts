// One direction of a region, divided at stops that are few enough to work with.
import { partings, type Run, stopFinder, sumsOf } from './stops.ts';

/**
 * A direction and its stops. Where all stops are too many, lengths are counted in a coarser unit and pieces are
 * rounded down to it: what is found to be impossible then is impossible, but what is found to fit may not.
 */
export interface Axis {
  readonly stops: Float64Array;
  /** Whether the stops are exact, so that whatever fits between them really fits. */
  readonly exact: boolean;
  /** The cuts worth trying up to each stop: see {@link partings}. */
  readonly partings: readonly Int32Array[];
  /** The first stop from which as much is free as beyond this length (ticks) from the edge. */
  readonly endOf: (length: number) => number;
  /** The last stop up to which a piece of this length (ticks) reaches for sure. */
  readonly sizeOf: (length: number) => number;
}

/** The axis of a room (ticks) for pieces of these lengths, with at most about `most` stops. */
export function axisOf(runs: readonly Run[], room: number, most: number): Axis {
  const all = sumsOf(runs, room, most);
  const unit = all === undefined ? Math.ceil(room / most) : 1;
  const units = Math.floor(room / unit);
  const coarse = () =>
    sumsOf(
      runs.map(({ length, copies }) => ({ length: Math.floor(length / unit), copies })),
      units,
    );
  const stops = all ?? coarse();
  const find = stopFinder(stops);
  return {
    stops,
    exact: all !== undefined,
    partings: Array.from(stops, (_, index) => partings(stops, index)),
    endOf: (length) => find(units - Math.floor((room - length) / unit)),
    sizeOf: (length) => find(Math.floor(length / unit)),
  };
}
