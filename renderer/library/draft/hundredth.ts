// Shares as people type them: in a hundred, where files hold parts of one.
import { numberIn } from '../../controls/numberIn.ts';

/** Finer than anybody types a share, so that 0.07 is 7 and not 7.000000000000001. */
const SIGNIFICANT_DIGITS = 12;

/** A share as it is shown: 0.5 is `50`. */
export function inHundred(share: number): string {
  return String(Number((share * 100).toPrecision(SIGNIFICANT_DIGITS)));
}

/** The share that was typed in a hundred, or what was typed where that is no number. */
export function shareIn(typed: string): number | string {
  const number = numberIn(typed);
  return typeof number === 'number' ? Number((number / 100).toPrecision(SIGNIFICANT_DIGITS)) : number;
}
