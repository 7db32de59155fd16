// How much ink a printed area takes, by how much of it is covered, and how sure that is.
import { studentT95 } from './tTable.ts';

/** Ink by coverage: `ml = area x (base + perCoverage x coverage)`. A fitted one replaces the rule of thumb. */
export type InkModel = RuleOfThumb | FittedInk;

interface InkLaw {
  /** ml for every m2 printed, whatever is on it: cleaning, and what keeps the nozzles or rollers wet. */
  readonly base: number;
  /** ml more for every m2 that one ink covers whole. Four inks, each covering whole, are a coverage of 4. */
  readonly perCoverage: number;
}

/** What is taken until a printer has been read. */
export interface RuleOfThumb extends InkLaw {
  readonly source: 'rule-of-thumb';
  /** How far the truth may lie off, either way, as a share of what is predicted. */
  readonly spread: number;
}

/** What the counter of a printer said for finished jobs, as a line through its readings. */
export interface FittedInk extends InkLaw {
  readonly source: 'fitted';
  readonly readings: number;
  /** Readings beyond the coefficients that were fitted; from 1. */
  readonly degrees: number;
  /** Variances of the two coefficients and their covariance, (ml/m2)2. */
  readonly covariance: { readonly base: number; readonly both: number; readonly perCoverage: number };
  /** Standard deviation of what is left over for a job of 1 m2, ml. It grows with the square root of the area. */
  readonly residual: number;
}

/**
 * A rule of thumb for printers that spray ink.
 *
 * @source common practice, no source; the size follows from arithmetic: 1200 x 1200 drops to the square inch of 3.6
 * picolitres each are 8.0 ml to the square metre.
 */
export const USUAL_INK: RuleOfThumb = { source: 'rule-of-thumb', base: 0.4, perCoverage: 8, spread: 0.5 };

/** What is printed: its area in m2 and its mean coverage, from 0 (blank) to 4 (four inks, all whole). */
export interface InkedArea {
  readonly area: number;
  readonly coverage: number;
}

/** Ink in ml, and between what it will lie: 19 times in 20 for a fitted model. */
export interface InkAmount {
  readonly ml: number;
  readonly low: number;
  readonly high: number;
}

/** The ink that a printed area takes. What is fitted is never taken for more certain than its readings make it. */
export function predictInk(model: InkModel, { area, coverage }: InkedArea): InkAmount {
  const ml = area * (model.base + model.perCoverage * coverage);
  const off = area === 0 ? 0 : offBy(model, { area, coverage }, ml);
  return { ml, low: Math.max(0, ml - off), high: ml + off };
}

function offBy(model: InkModel, { area, coverage }: InkedArea, ml: number): number {
  if (model.source === 'rule-of-thumb') return model.spread * ml;
  const { base, both, perCoverage } = model.covariance;
  const ofLine = area ** 2 * (base + 2 * coverage * both + coverage ** 2 * perCoverage);
  const ofJob = model.residual ** 2 * area;
  return studentT95(model.degrees) * Math.sqrt(Math.max(0, ofLine) + ofJob);
}
