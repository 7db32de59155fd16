// How quantities are written for people: lengths in their own unit, money, spans of time, numbers and shares.
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

/**
 * `€ 12.40`, `EUR 1,204.50`, `−€ 3.00`. Cents are kept, and thousands parted from four figures on.
 *
 * @param currency - what stands before the amount, a symbol or a code
 */
export function showMoney(amount: number, currency: string): string {
  const [whole = '', cents = ''] = Math.abs(amount).toFixed(2).split('.');
  const parted = whole.replaceAll(/(?<=\d)(?=(?:\d{3})+$)/g, ',');
  const minus = amount < 0 && Number(`${whole}.${cents}`) !== 0 ? '−' : '';
  return `${minus}${currency} ${parted}.${cents}`;
}

/** `45 s`, `12 min`, `1 h 05 min`; from a minute on rounded up to whole minutes, since nobody plans in seconds. */
export function showTime(seconds: number): string {
  if (Math.round(seconds) < 60) return `${Math.round(seconds)} s`;
  const minutes = Math.ceil(seconds / 60);
  if (minutes < 60) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
}

/** A number with so many decimals, those at the end kept: `2.50`. */
export function showNumber(value: number, decimals: number): string {
  return value.toFixed(decimals);
}

/** A number with at most so many decimals: `2.5`. */
export function showShortNumber(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}

/** A number with so many significant digits: 123.4 in three of them is `123`. */
export function showSignificant(value: number, digits: number): string {
  return String(Number(value.toPrecision(digits)));
}

/** A share in percent: `0.014` is `1.4 %`. */
export function showPercent(share: number, decimals: number): string {
  return `${showNumber(share * 100, decimals)} %`;
}
