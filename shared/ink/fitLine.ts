// A straight line through weighed readings, with how sure its two coefficients are.

/** One reading: `y` is told by `x`, and counts as much as `weight` readings of weight 1. */
export interface Weighed {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** `y = start + slope x`. */
export interface Line {
  readonly start: number;
  readonly slope: number;
  /** Variances of the coefficients, and their covariance. */
  readonly covariance: { readonly start: number; readonly both: number; readonly slope: number };
  /** Standard deviation of a reading of weight 1 from the line. */
  readonly residual: number;
  /** Readings beyond the coefficients that were fitted. */
  readonly degrees: number;
}

/**
 * The line that leaves the least weighed sum of squares. Needs three readings at least, not all at one `x`.
 *
 * @source weighted least squares in closed form, as in any textbook of statistics; checked against the certified values of
 * the NIST Statistical Reference Datasets.
 */
export function fitLine(readings: readonly Weighed[]): Line {
  const { all, x, y } = meansOf(readings);
  let across = 0;
  let together = 0;
  for (const one of readings) {
    across += one.weight * (one.x - x) ** 2;
    together += one.weight * (one.x - x) * (one.y - y);
  }
  const slope = together / across;
  const start = y - slope * x;
  const degrees = readings.length - 2;
  const variance = leftOver(readings, start, slope) / degrees;
  return {
    start,
    slope,
    covariance: {
      start: variance * (1 / all + x ** 2 / across),
      both: (-variance * x) / across,
      slope: variance / across,
    },
    residual: Math.sqrt(variance),
    degrees,
  };
}

/** The line through nothing that leaves the least: `y = slope x`. Needs two readings at least, not all at 0. */
export function fitThroughNothing(readings: readonly Weighed[]): Line {
  let across = 0;
  let together = 0;
  for (const { x, y, weight } of readings) {
    across += weight * x ** 2;
    together += weight * x * y;
  }
  const slope = together / across;
  const degrees = readings.length - 1;
  const variance = leftOver(readings, 0, slope) / degrees;
  return {
    start: 0,
    slope,
    covariance: { start: 0, both: 0, slope: variance / across },
    residual: Math.sqrt(variance),
    degrees,
  };
}

/** The weighed standard deviation of where the readings lie. */
export function spreadOf(readings: readonly Weighed[]): number {
  const { all, x } = meansOf(readings);
  return Math.sqrt(readings.reduce((sum, one) => sum + one.weight * (one.x - x) ** 2, 0) / all);
}

function meansOf(readings: readonly Weighed[]) {
  let [all, x, y] = [0, 0, 0];
  for (const one of readings) {
    all += one.weight;
    x += one.weight * one.x;
    y += one.weight * one.y;
  }
  return { all, x: x / all, y: y / all };
}

function leftOver(readings: readonly Weighed[], start: number, slope: number): number {
  return readings.reduce((sum, { x, y, weight }) => sum + weight * (y - start - slope * x) ** 2, 0);
}
