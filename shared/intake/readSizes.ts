// Reading trim and bleed from a page of art alone, before anybody has said how large the piece is.
import { grow, holds } from '../geometry/rect.ts';
import type { Rect, Size } from '../geometry/space.ts';
import type { ArtPage } from '../pdf/art/artPage.ts';
import { alike, FIT_TOLERANCE_PT } from '../pdf/art/fit.ts';
import { type Length, lengthOf, POINTS_PER, points, type Unit } from '../units/length.ts';
import { type LengthPair, usualSizeOf } from './usualSizes.ts';

/** One way to read a page. */
export interface SizeReading {
  readonly trim: LengthPair;
  readonly bleed: Length;
  /** In words, where it was read. */
  readonly from: string;
}

/**
 * The bleeds that art is usually made with.
 *
 * @source common practice, no source
 */
const BLEEDS: readonly Length[] = [
  { amount: 1 / 8, unit: 'in', typed: '1/8 in' },
  lengthOf(3, 'mm'),
  { amount: 1 / 16, unit: 'in', typed: '1/16 in' },
  lengthOf(2, 'mm'),
  lengthOf(5, 'mm'),
  { amount: 1 / 4, unit: 'in', typed: '1/4 in' },
];

/**
 * Every way in which a page can be read, the likeliest first; one only where there is no doubt. A TrimBox of its own
 * is never doubted. Without one a page is read as a usual size with a usual bleed around it or none, and where no
 * usual size fits, it may be the piece itself or have either of the most usual bleeds.
 */
export function readSizes(page: ArtPage, unit: Unit): readonly SizeReading[] {
  const { media, crop, trim } = page.boxes;
  const saysTrim = page.given.trim && !alike(trim, media) && !alike(trim, crop);
  if (saysTrim) return [fromTrimBox(page, unit)];
  const bleeds = likeliestFirst(unit);
  const usual = [...bleeds, lengthOf(0, unit)].flatMap((bleed) => {
    const size = usualSizeOf(within(crop, points(bleed)));
    return size === undefined ? [] : [readingOf(size, bleed)];
  });
  if (usual.length > 0) return onePerSize(usual);
  const open = [lengthOf(0, unit), ...bleeds.slice(0, 2)].filter((bleed) => isRoomy(crop, points(bleed)));
  return open.map((bleed) => readingOf(writtenSize(within(crop, points(bleed)), unit), bleed));
}

function fromTrimBox(page: ArtPage, unit: Unit): SizeReading {
  const { trim, bleed, media } = page.boxes;
  const end = page.given.bleed && holds(grow(bleed, FIT_TOLERANCE_PT), trim) ? bleed : media;
  const reach = Math.min(
    trim.x - end.x,
    trim.y - end.y,
    end.x + end.w - trim.x - trim.w,
    end.y + end.h - trim.y - trim.h,
  );
  const usual = likeliestFirst(unit).find((b) => points(b) <= reach + FIT_TOLERANCE_PT);
  return {
    trim: usualSizeOf(trim) ?? writtenSize(trim, unit),
    bleed: usual ?? lengthOf(0, unit),
    from: 'its TrimBox',
  };
}

/** The bleeds of the person's own unit before the others; of those whose size is alike, that of their unit. */
function likeliestFirst(unit: Unit): readonly Length[] {
  const own = unit === 'mm' ? 'mm' : 'in';
  return BLEEDS.toSorted((a, b) => Number(b.unit === own) - Number(a.unit === own));
}

function readingOf(trim: LengthPair, bleed: Length): SizeReading {
  const from =
    bleed.amount === 0 ? 'the page, without bleed' : `the page, with ${bleed.typed} of bleed around it`;
  return { trim, bleed, from };
}

/** Readings of the same trim count once. */
function onePerSize(readings: readonly SizeReading[]): readonly SizeReading[] {
  const same = (a: SizeReading, b: SizeReading) =>
    Math.abs(points(a.trim[0]) - points(b.trim[0])) < FIT_TOLERANCE_PT &&
    Math.abs(points(a.trim[1]) - points(b.trim[1])) < FIT_TOLERANCE_PT;
  return readings.filter((one, i) => readings.findIndex((other) => same(one, other)) === i);
}

function within(box: Rect<'art'>, bleed: number): Size {
  return { w: box.w - 2 * bleed, h: box.h - 2 * bleed };
}

function isRoomy(box: Rect<'art'>, bleed: number): boolean {
  return box.w > 4 * bleed && box.h > 4 * bleed;
}

/** As exact as it can be typed: a thousandth of an inch, a hundredth of the others. */
function writtenSize({ w, h }: Size, unit: Unit): LengthPair {
  const digits = unit === 'in' ? 1000 : 100;
  const written = (pt: number) => lengthOf(Math.round((pt / POINTS_PER[unit]) * digits) / digits, unit);
  return [written(w), written(h)];
}
