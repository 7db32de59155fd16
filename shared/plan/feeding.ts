// What a feed asks of a sheet, and which way the grain runs on it.
import type { Size } from '../geometry/space.ts';
import { within } from '../geometry/tolerance.ts';
import type { Lies } from '../layout/lies.ts';
import type { Feed, Grain, StockSheet } from '../library/library.ts';
import { type Length, points } from '../units/length.ts';
import type { LaidCandidate, SheetSource } from './candidate.ts';
import type { CutCounter } from './cuts.ts';

/** A sheet, the edge that leads decided. */
export interface FedSheet {
  readonly source: SheetSource;
  /** Across the feed, along it. */
  readonly size: readonly [Length, Length];
  readonly grain: LaidCandidate['grain'];
}

/** What a job asks of the sheets that are cut for it. Lengths in pt but for those that were typed. */
export interface CutFor {
  /** The sheet that the job was typed in with. */
  readonly typed: readonly [Length, Length];
  /** Trim and gutter of each design, head up. */
  readonly cells: readonly (Size & { readonly lies: Lies })[];
  readonly gutter: number;
  /** The widest bleed. */
  readonly bleed: number;
  /** Whether what cannot be printed on an edge cannot be printed on the opposite one either, since the sheet is turned. */
  readonly turned: boolean;
  readonly cuts: CutCounter;
}

/** Whether the feed takes a sheet of this size, across the feed and along it. */
export function goesInto(feed: Feed, [across, along]: readonly [Length, Length]): boolean {
  return (
    within(points(feed.least[0]), points(across)) &&
    within(points(across), points(feed.most[0])) &&
    within(points(feed.least[1]), points(along)) &&
    within(points(along), points(feed.most[1]))
  );
}

/** Along which of two lengths of a sheet the grain runs. */
export type GrainIn = 'first' | 'second' | 'mixed' | 'unknown';

/** The grain of a sheet by the order in which its two lengths were typed. */
export function grainIn({
  grain,
  size,
}: {
  readonly grain: Grain;
  readonly size: StockSheet['size'];
}): GrainIn {
  if (grain === 'unknown') return 'unknown';
  return (grain === 'long') === points(size[0]) > points(size[1]) ? 'first' : 'second';
}
