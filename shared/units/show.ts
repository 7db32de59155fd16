// Showing points to people in their own unit, short and without false precision.
import { POINTS_PER, type Unit } from './length.ts';

/** A thousandth of an inch, a hundredth of a millimetre, a hundredth of a point: finer than any of them is cut. */
const DECIMALS: Readonly<Record<Unit, number>> = { in: 3, mm: 2, pt: 2 };

/** A length in pt as a person reads it: `0.25 in`, `6.35 mm`. */
export function showLength(pt: number, unit: Unit): string {
  return `${showAmount(pt, unit)} ${unit}`;
}

/** A size in pt as a person reads it: `5 × 7 in`. */
export function showSize(size: { readonly w: number; readonly h: number }, unit: Unit): string {
  return `${showAmount(size.w, unit)} × ${showAmount(size.h, unit)} ${unit}`;
}

/** Lets 3.175 mm, which float64 holds as a little less, still round up. */
const HALVES_UP = 1 + 1e-12;

function showAmount(pt: number, unit: Unit): string {
  const rounded = Number(((pt / POINTS_PER[unit]) * HALVES_UP).toFixed(DECIMALS[unit]));
  return String(rounded === 0 ? 0 : rounded);
}
