// Areas and lengths of paper as it is bought, and sizes that a person can set on a cutter.
import type { Size } from '../geometry/space.ts';
import { type Length, lengthOf, POINTS_PER, points, type Unit } from '../units/length.ts';

/** In pt. */
const POINTS_PER_METRE = 1000 * POINTS_PER.mm;

/** Square metres of an area in pt. */
export function squareMetres({ w, h }: Size): number {
  return (w * h) / POINTS_PER_METRE ** 2;
}

/** Metres of a length in pt. */
export function metres(pt: number): number {
  return pt / POINTS_PER_METRE;
}

/** A typed size in pt. */
export function sizeInPoints([w, h]: readonly [Length, Length]): Size {
  return { w: points(w), h: points(h) };
}

/** What the scale of a cutter shows, in parts of the unit: hundredths of an inch, tenths of a millimetre, points. */
const PARTS: Readonly<Record<Unit, number>> = { in: 100, mm: 10, pt: 1 };

/** Takes what float64 added to a whole number of parts for nothing. */
const ROUNDING_NOISE = 1e-6;

/** The longest length that the scale of a cutter shows and that is no longer than this one (pt). */
export function roundedDown(pt: number, unit: Unit): Length {
  return lengthOf(Math.floor(partsOf(pt, unit) + ROUNDING_NOISE) / PARTS[unit], unit);
}

/** The shortest length that the scale of a cutter shows and that is no shorter than this one (pt). */
export function roundedUp(pt: number, unit: Unit): Length {
  return lengthOf(Math.ceil(partsOf(pt, unit) - ROUNDING_NOISE) / PARTS[unit], unit);
}

function partsOf(pt: number, unit: Unit): number {
  return (pt / POINTS_PER[unit]) * PARTS[unit];
}
