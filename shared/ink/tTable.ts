// Student's t: how far a quantity worked out from few readings may lie from the truth.

/** Two-sided 95 % points for 1 to 30 degrees of freedom. */
const UP_TO_THIRTY = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131,
  2.12, 2.11, 2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048, 2.045, 2.042,
] as const;

/** Those for more, each from the degrees of freedom named. */
const BEYOND = [
  { from: 100, t: 1.984 },
  { from: 80, t: 1.99 },
  { from: 60, t: 2 },
  { from: 40, t: 2.021 },
] as const;

/**
 * The two-sided 95 % point of Student's t. Between two rows of the table the one for fewer degrees is taken, which
 * errs towards the wider interval.
 *
 * @param degrees A whole number from 1.
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, column 0.975.
 */
export function studentT95(degrees: number): number {
  const listed = UP_TO_THIRTY[Math.min(degrees, UP_TO_THIRTY.length) - 1];
  if (listed === undefined) throw new Error(`There is no t for ${degrees} degrees of freedom`);
  return BEYOND.find(({ from }) => degrees >= from)?.t ?? listed;
}
