// A length as a person typed it: its amount and unit stay what they were, and points are only worked out from them.

/** The units people type. */
export type Unit = 'in' | 'mm' | 'pt';

/** All units, in the order they are offered. */
export const UNITS: readonly Unit[] = ['in', 'mm', 'pt'];

/**
 * Points to the unit. The one place where units are converted.
 *
 * @source The inch is 25.4 mm exactly (international yard and pound agreement, 1959); the PDF unit is 1/72 inch
 * (ISO 32000-1, 8.3.2.3).
 */
export const POINTS_PER: Readonly<Record<Unit, number>> = { in: 72, mm: 72 / 25.4, pt: 1 };

/** A typed length. `typed` is what is kept in files, so that `1/8 in` comes back as `1/8 in`. */
export interface Length {
  readonly amount: number;
  readonly unit: Unit;
  readonly typed: string;
}

/** The length in points. */
export function points(length: Length): number {
  return length.amount * POINTS_PER[length.unit];
}

/** A length of this amount, typed as a person would type it. */
export function lengthOf(amount: number, unit: Unit): Length {
  return { amount, unit, typed: `${amount} ${unit}` };
}
