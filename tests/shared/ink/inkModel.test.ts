// How much ink a printed area takes, and how sure that is.
import { describe, expect, it } from 'vitest';
import { type FittedInk, predictInk, USUAL_INK } from '../../../shared/ink/inkModel.ts';
import { studentT95 } from '../../../shared/ink/tTable.ts';

const FITTED: FittedInk = {
  source: 'fitted',
  base: 1,
  perCoverage: 6,
  readings: 7,
  degrees: 5,
  covariance: { base: 0.04, both: -0.01, perCoverage: 0.01 },
  residual: 0.5,
};

describe('the ink of a printed area', () => {
  it('is what every square metre takes, and what covering it takes more', () => {
    expect(predictInk(FITTED, { area: 3, coverage: 1.5 }).ml).toBeCloseTo(3 * (1 + 6 * 1.5), 12);
  });

  it('lies half as much again either way while no printer has been read', () => {
    const { ml, low, high } = predictInk(USUAL_INK, { area: 10, coverage: 2 });
    expect(ml).toBeCloseTo(164, 12);
    expect(low).toBeCloseTo(82, 12);
    expect(high).toBeCloseTo(246, 12);
  });

  it('lies between bounds that hold both the doubt of the line and what jobs differ by', () => {
    const { ml, low, high } = predictInk(FITTED, { area: 4, coverage: 2 });
    // By hand: 16 x (0.04 - 0.04 + 0.04) + 0.25 x 4 = 1.64; t for 5 degrees is 2.571.
    const off = 2.571 * Math.sqrt(1.64);
    expect(ml - low).toBeCloseTo(off, 9);
    expect(high - ml).toBeCloseTo(off, 9);
  });

  it('is never said to be less than none', () => {
    expect(predictInk(FITTED, { area: 0.01, coverage: 0 }).low).toBe(0);
  });

  it('is none for no area, whatever the model', () => {
    for (const model of [USUAL_INK, FITTED]) {
      expect(predictInk(model, { area: 0, coverage: 1 })).toEqual({ ml: 0, low: 0, high: 0 });
    }
  });

  it('follows by a rule of thumb that drops of 3.6 picolitres, 1200 to the inch each way, bear out', () => {
    const dropsPerSquareMetre = (1200 / 0.0254) ** 2;
    expect(dropsPerSquareMetre * 3.6e-9).toBeCloseTo(USUAL_INK.perCoverage, 1);
  });
});

describe("Student's t", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2.
  it.each([
    [1, 12.706],
    [2, 4.303],
    [10, 2.228],
    [30, 2.042],
    [31, 2.042],
    [40, 2.021],
    [59, 2.021],
    [60, 2],
    [100, 1.984],
    [5000, 1.984],
  ])('for %i degrees of freedom is %f, the wider row between two', (degrees, t) => {
    expect(studentT95(degrees)).toBe(t);
  });

  it('does not exist without a reading to spare', () => {
    expect(() => studentT95(0)).toThrow('no t for 0 degrees');
  });
});
