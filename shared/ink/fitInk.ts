// Learning from the printer's own counter: an ink model out of what finished jobs took.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import { fitLine, fitThroughNothing, type Line, spreadOf } from './fitLine.ts';
import { type FittedInk, type InkedArea, type InkModel, type RuleOfThumb, USUAL_INK } from './inkModel.ts';
import { studentT95 } from './tTable.ts';

/** What a finished job took: the area that was printed (m2), its coverage (0 to 4), and what the counter said (ml). */
export interface InkReading extends InkedArea {
  readonly ml: number;
}

/** The model to go by, and why, in words. */
export interface LearntInk {
  readonly model: InkModel;
  readonly says: string;
}

/** Two coefficients take two readings, and how far off they are is told by those beyond. */
const MIN_READINGS = 4;

/** Jobs whose coverages differ by less than this, as a standard deviation, do not tell the base from the rest. */
const MIN_COVERAGE_SPREAD = 0.05;

/** The most that four inks can cover. */
const MAX_COVERAGE = 4;

/**
 * Fits the model to readings. A job counts as its area does: what two square metres take is told twice as surely as what
 * one takes. Where the readings do not tell enough, the rule of thumb stays, and it is said why.
 *
 * Refuses (`ink-reading-invalid`) a reading that cannot be.
 */
export function learnInk(readings: readonly InkReading[], usual: RuleOfThumb = USUAL_INK): Result<LearntInk> {
  for (const [i, reading] of readings.entries()) {
    const fault = faultOf(reading, i + 1);
    if (fault !== undefined) return refuse(fault);
  }
  const keep = (says: string) => ok({ model: usual, says: `The rule of thumb is kept: ${says}` });
  if (readings.length < MIN_READINGS) {
    const more = MIN_READINGS - readings.length;
    return keep(`${MIN_READINGS} readings at least are needed to learn from, ${more} more than there are.`);
  }
  const weighed = readings.map(({ area, coverage, ml }) => ({ x: coverage, y: ml / area, weight: area }));
  if (spreadOf(weighed) < MIN_COVERAGE_SPREAD) {
    return keep('all jobs have much the same coverage. Add one that is almost blank or almost full.');
  }
  const free = fitLine(weighed);
  const line = free.start < 0 ? fitThroughNothing(weighed) : free;
  if (line.slope <= 0) {
    return keep('by the readings more coverage takes no more ink. Look through them for a slip.');
  }
  const base = free.start < 0 ? ' The base came out below nothing and was taken as none.' : '';
  const model = modelOf(line, readings.length);
  return ok({ model, says: `Learnt from ${readings.length} readings.${base}` });
}

function modelOf(line: Line, readings: number): FittedInk {
  const { start, slope, covariance, residual, degrees } = line;
  return {
    source: 'fitted',
    base: start,
    perCoverage: slope,
    readings,
    degrees,
    covariance: { base: covariance.start, both: covariance.both, perCoverage: covariance.slope },
    residual,
  };
}

/** Between what a coefficient lies, 19 times in 20. */
interface Interval {
  readonly low: number;
  readonly high: number;
}

/** How sure the coefficients are. Each interval is for itself. */
export function coefficientIntervals(model: FittedInk): {
  readonly base: Interval;
  readonly perCoverage: Interval;
} {
  const t = studentT95(model.degrees);
  const around = (value: number, variance: number): Interval => {
    const off = t * Math.sqrt(variance);
    return { low: value - off, high: value + off };
  };
  return {
    base: around(model.base, model.covariance.base),
    perCoverage: around(model.perCoverage, model.covariance.perCoverage),
  };
}

function faultOf({ area, coverage, ml }: InkReading, number: number): Fault | undefined {
  const wrong =
    !(area > 0) || !Number.isFinite(area)
      ? 'needs a printed area of more than nothing'
      : !(coverage >= 0 && coverage <= MAX_COVERAGE)
        ? `needs a coverage from 0 to ${MAX_COVERAGE}: 1 is one ink over all of it`
        : !(ml >= 0) || !Number.isFinite(ml)
          ? 'needs an amount of ink that is not negative'
          : undefined;
  if (wrong === undefined) return undefined;
  return {
    code: 'ink-reading-invalid',
    message: `Reading ${number} ${wrong}.`,
    remedy: 'Correct it, or take it out.',
    where: `readings[${number - 1}]`,
  };
}
