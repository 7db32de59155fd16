// Learning what a printer takes from its own counter.
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '../../../shared/gang/chance.ts';
import { coefficientIntervals, type InkReading, learnInk } from '../../../shared/ink/fitInk.ts';
import { fitLine, fitThroughNothing } from '../../../shared/ink/fitLine.ts';
import { type FittedInk, predictInk, USUAL_INK } from '../../../shared/ink/inkModel.ts';

/**
 * NIST Statistical Reference Datasets, linear regression, "Norris": calibration of ozone monitors, y and x. The data were
 * written down from memory; that they give the certified values to ten digits shows them right.
 */
const NORRIS: readonly (readonly [y: number, x: number])[] = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888.0, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777.0],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338.0],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556.0],
  [228.3, 228.1],
  [998.0, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888.0, 887.2],
  [998.5, 999.0],
  [778.9, 779.0],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
];

describe('A line through readings', () => {
  it('has the certified coefficients and deviations of a reference data set', () => {
    const line = fitLine(NORRIS.map(([y, x]) => ({ x, y, weight: 1 })));
    expect(line.start).toBeCloseTo(-0.262323073774029, 10);
    expect(line.slope).toBeCloseTo(1.00211681802045, 12);
    expect(Math.sqrt(line.covariance.start)).toBeCloseTo(0.232818234301152, 10);
    expect(Math.sqrt(line.covariance.slope)).toBeCloseTo(0.429796848199937e-3, 12);
    expect(line.residual).toBeCloseTo(0.884796396144373, 10);
    expect(line.degrees).toBe(34);
  });

  // NIST Statistical Reference Datasets, "NoInt1": x from 60 to 70, y from 130 to 140.
  it('through nothing too', () => {
    const readings = Array.from({ length: 11 }, (_, i) => ({ x: 60 + i, y: 130 + i, weight: 1 }));
    const line = fitThroughNothing(readings);
    expect(line.slope).toBeCloseTo(2.07438016528926, 12);
    expect(Math.sqrt(line.covariance.slope)).toBeCloseTo(0.165289256198347e-1, 12);
    expect(line.residual).toBeCloseTo(3.56753034006338, 10);
    expect(line.degrees).toBe(10);
  });

  it('takes a reading of weight 2 for two readings of weight 1', () => {
    const once = [
      { x: 0, y: 1, weight: 1 },
      { x: 1, y: 2.5, weight: 1 },
      { x: 2, y: 2.9, weight: 1 },
    ];
    const [first, ...rest] = once;
    const double = fitLine([{ ...first!, weight: 2 }, ...rest]);
    const twice = fitLine([first!, ...once]);
    expect(double.start).toBeCloseTo(twice.start, 12);
    expect(double.slope).toBeCloseTo(twice.slope, 12);
  });
});

const chance = chanceFrom(7);
/** A number around 0 with a standard deviation of 1. @source Box and Muller 1958. */
const normal = () => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());

const TRUE = { base: 1.5, perCoverage: 7 };
const DEVIATION = 0.4;

/** A finished job on a printer that takes as much as is planted, give or take. */
function finish(area: number, coverage: number): InkReading {
  const ml = area * (TRUE.base + TRUE.perCoverage * coverage) + DEVIATION * Math.sqrt(area) * normal();
  return { area, coverage, ml };
}

function learn(readings: readonly InkReading[]): FittedInk {
  const learnt = learnInk(readings);
  if (!learnt.ok || learnt.value.model.source !== 'fitted') throw new Error('Nothing was learnt');
  return learnt.value.model;
}

const someJobs = () => [0.2, 0.5, 0.8, 1.1, 1.4, 1.8, 2.2].map((c, i) => finish(2 + 3 * (i % 4), c));

describe('What is learnt from finished jobs', () => {
  it('is what was planted, where nothing is left to chance', () => {
    const exact = [0.3, 0.9, 1.5, 2.4].map((coverage, i) => {
      const area = 1 + i;
      return { area, coverage, ml: area * (1.5 + 7 * coverage) };
    });
    const model = learn(exact);
    expect(model.base).toBeCloseTo(1.5, 10);
    expect(model.perCoverage).toBeCloseTo(7, 10);
    expect(model.residual).toBeCloseTo(0, 7);
    expect(model.readings).toBe(4);
    expect(model.degrees).toBe(2);
  });

  it('holds the planted coefficients in its intervals, and the next job in its prediction, 19 times in 20', () => {
    const trials = 4000;
    let [base, perCoverage, next] = [0, 0, 0];
    for (let trial = 0; trial < trials; trial++) {
      const model = learn(someJobs());
      const intervals = coefficientIntervals(model);
      base += Number(intervals.base.low <= TRUE.base && TRUE.base <= intervals.base.high);
      const { low, high } = intervals.perCoverage;
      perCoverage += Number(low <= TRUE.perCoverage && TRUE.perCoverage <= high);
      const job = finish(12, 1.7);
      const told = predictInk(model, job);
      next += Number(told.low <= job.ml && job.ml <= told.high);
    }
    // Of 4000 trials at 0.95 the share has a standard deviation of 0.0034: four of them either way.
    for (const held of [base, perCoverage, next]) expect(Math.abs(held / trials - 0.95)).toBeLessThan(0.014);
  });

  it('is surer the more jobs there are', () => {
    const few = learn(someJobs());
    const many = learn(Array.from({ length: 30 }, someJobs).flat());
    const job = { area: 5, coverage: 1 };
    const width = (model: FittedInk) => predictInk(model, job).high - predictInk(model, job).low;
    expect(width(many)).toBeLessThan(width(few));
    expect(many.perCoverage).toBeCloseTo(TRUE.perCoverage, 0);
  });

  it('is nothing yet from three jobs: the rule of thumb stays, and it is said how many more are needed', () => {
    expect(learnInk(someJobs().slice(0, 3))).toEqual({
      ok: true,
      value: {
        model: USUAL_INK,
        says: 'The rule of thumb is kept: 4 readings at least are needed to learn from, 1 more than there are.',
      },
    });
  });

  it('is nothing from jobs of one coverage, or from readings that run backwards', () => {
    const alike = learnInk([1, 2, 3, 4].map((area) => finish(area, 1)));
    expect(alike.ok && alike.value.model).toBe(USUAL_INK);
    expect(alike.ok && alike.value.says).toContain('much the same coverage');
    const backwards = learnInk(
      [0.1, 1, 2, 3].map((coverage) => ({ area: 1, coverage, ml: 9 - 3 * coverage })),
    );
    expect(backwards.ok && backwards.value.model).toBe(USUAL_INK);
    expect(backwards.ok && backwards.value.says).toContain('Look through them for a slip');
  });

  it('has no base below nothing', () => {
    const learnt = learnInk(
      [0.5, 1, 2, 3].map((coverage) => ({ area: 1, coverage, ml: 6 * coverage - 0.5 })),
    );
    if (!learnt.ok || learnt.value.model.source !== 'fitted') throw new Error('Nothing was learnt');
    expect(learnt.value.model.base).toBe(0);
    expect(learnt.value.model.degrees).toBe(3);
    expect(learnt.value.model.perCoverage).toBeLessThan(6);
    expect(learnt.value.says).toBe(
      'Learnt from 4 readings. The base came out below nothing and was taken as none.',
    );
  });

  it.each([
    [{ area: 0, coverage: 1, ml: 5 }, 'Reading 2 needs a printed area of more than nothing.'],
    [
      { area: 1, coverage: 4.5, ml: 5 },
      'Reading 2 needs a coverage from 0 to 4: 1 is one ink over all of it.',
    ],
    [
      { area: 1, coverage: -1, ml: 5 },
      'Reading 2 needs a coverage from 0 to 4: 1 is one ink over all of it.',
    ],
    [{ area: 1, coverage: 1, ml: -5 }, 'Reading 2 needs an amount of ink that is not negative.'],
    [{ area: 1, coverage: 1, ml: Number.NaN }, 'Reading 2 needs an amount of ink that is not negative.'],
  ])('refuses a reading that cannot be', (wrong, message) => {
    const learnt = learnInk([finish(1, 1), wrong]);
    expect(learnt.ok || learnt.fault).toMatchObject({ code: 'ink-reading-invalid', message });
  });
});
