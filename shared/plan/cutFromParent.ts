// Sheets cut down from a parent sheet: to the sizes that are named, or to equal parts.
import { same } from '../geometry/tolerance.ts';
import { layIdentical } from '../layout/guillotine/identical.ts';
import type { Lies } from '../layout/lies.ts';
import type { Feed, ParentSheet } from '../library/library.ts';
import type { Length } from '../units/length.ts';
import type { SheetSource } from './candidate.ts';
import type { CutCounter } from './cuts.ts';
import { type CutFor, type GrainIn, goesInto, grainIn } from './feeding.ts';
import { roundedDown, sizeInPoints } from './measures.ts';

/** A sheet cut from a parent, either edge of which may lead. */
export interface CutSheet {
  readonly source: Extract<SheetSource, { is: 'parent' }>;
  readonly size: readonly [Length, Length];
  readonly grain: GrainIn;
}

/** Halves, thirds, quarters and so on down to eighths. What is smaller has to be named. */
const MAX_DIVISION = 8;

/** Every sheet that can be cut from the parent and goes into the feed, as many out of each parent as a guillotine allows. */
export function sheetsFromParent(
  parent: ParentSheet,
  feed: Feed,
  { typed, cuts }: Pick<CutFor, 'typed' | 'cuts'>,
): readonly CutSheet[] {
  const named = parent.cutTo.length > 0 ? parent.cutTo : [typed, ...equalParts(parent)];
  const sizes = named.filter((size, i) => named.findIndex((other) => isSameSize(size, other)) === i);
  return sizes.filter((size) => isTaken(feed, size)).flatMap((size) => waysOut(parent, size, cuts));
}

function equalParts({ size }: ParentSheet): readonly (readonly [Length, Length])[] {
  const { w, h } = sizeInPoints(size);
  const counts = Array.from({ length: MAX_DIVISION }, (_, i) => i + 1);
  return counts.flatMap((across) =>
    counts
      .filter((up) => across * up <= MAX_DIVISION)
      .map((up) => [roundedDown(w / across, size[0].unit), roundedDown(h / up, size[1].unit)] as const),
  );
}

function isTaken(feed: Feed, [a, b]: readonly [Length, Length]): boolean {
  return goesInto(feed, [a, b]) || goesInto(feed, [b, a]);
}

function isSameSize(one: readonly [Length, Length], other: readonly [Length, Length]): boolean {
  const [a, b] = [sizeInPoints(one), sizeInPoints(other)];
  return (same(a.w, b.w) && same(a.h, b.h)) || (same(a.w, b.h) && same(a.h, b.w));
}

/**
 * The most sheets of one size out of a parent, the grain the same way in all of them; and more where some may lie across
 * the others, so that their grain is mixed.
 */
function waysOut(
  parent: ParentSheet,
  size: readonly [Length, Length],
  cuts: CutCounter,
): readonly CutSheet[] {
  const region = sizeInPoints(parent.size);
  const out = (lies: Lies) => ({ lies, ...layIdentical(sizeInPoints(size), lies, region) });
  const [upright, onItsSide, either] = [out('upright'), out('on-its-side'), out('either')];
  const oneWay = onItsSide.count > upright.count ? onItsSide : upright;
  const ways = either.count > oneWay.count ? [oneWay, either] : [oneWay];
  return ways
    .filter(({ count }) => count > 0)
    .map(({ lies, count, cells }) => ({
      source: { is: 'parent', form: parent, out: count, cuts: cuts.count(region, cells) },
      size,
      grain: grainOf(parent, lies),
    }));
}

/** The first length of an upright sheet lies along the first one of its parent. */
function grainOf(parent: ParentSheet, lies: Lies): GrainIn {
  const grain = grainIn(parent);
  if (grain === 'unknown' || lies === 'upright') return grain;
  if (lies === 'either') return 'mixed';
  return grain === 'first' ? 'second' : 'first';
}
