import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import { compareCosts } from '../../../shared/run/compareCosts.ts';
import type { RunEvent } from '../../../shared/run/events.ts';
import { impressionsOf, measuredOf, sheetsUsed } from '../../../shared/run/impressions.ts';
import { plannedRun } from '../../../shared/run/planned.ts';
import { candidateByHand, plannedByHand, plannedSupper, roundPlan } from '../../kit/plannedRuns.ts';
import { go, good, load, noGo, runOf, spoiled, supperRun, turned, undo } from '../../kit/runs.ts';

const measured = (ink?: number, minutes?: number): RunEvent => ({
  kind: 'measured',
  ...(ink === undefined ? {} : { ink }),
  ...(minutes === undefined ? {} : { minutes }),
});

/** 33 of 36 sheets used: two proofs, 31 in pass 1 of which 1 is spoiled, 29 of 30 in pass 2. */
const EVENTS = [
  load(36),
  noGo('dark'),
  go,
  good(1, 30),
  spoiled(1, 1, 'askew'),
  turned,
  good(2, 27),
  spoiled(2, 2, 'askew'),
];

describe('what a run used', () => {
  it('is every sheet that was printed on, and every time one went through the printer', () => {
    const run = runOf(supperRun, ...EVENTS);
    expect(sheetsUsed(run)).toBe(33);
    // Two proof sheets twice, 31 in pass 1 and 29 in pass 2.
    expect(impressionsOf(run)).toBe(64);
    expect(impressionsOf(runOf({ ...supperRun, passes: 1 }, load(5), go, good(1, 3)))).toBe(4);
  });

  it('is measured by the last word on it that stands', () => {
    expect(measuredOf(runOf(supperRun))).toStrictEqual({});
    const run = runOf(supperRun, measured(70, 40), measured(72), measured(90, 99), undo(4));
    expect(measuredOf(run)).toEqual({ ink: 72, minutes: 40 });
    expect(measuredOf(runOf(supperRun, measured(70)))).toStrictEqual({ ink: 70 });
  });
});

describe('the cost against the plan', () => {
  it('has nothing to go by where no plan was there', () => {
    expect(compareCosts(runOf(supperRun, ...EVENTS))).toBeUndefined();
  });

  it('is paper by the sheet, and all that grows with the passes by the passes', () => {
    // Sheets: 33 of 30 planned, so 12 x 1.1. Passes: 64 of 60 planned, so each x 64/60.
    const compared = compareCosts(runOf(plannedSupper, ...EVENTS));
    const passes = '64 times through the printer instead of 60';
    expect(compared).toEqual({
      currency: '$',
      planned: 41.2,
      actual: 43.88,
      parts: [
        {
          part: 'paper',
          planned: 12,
          actual: 13.2,
          because: [{ says: '33 sheets used instead of 30', amount: 1.2 }],
          known: 'counted',
        },
        { part: 'ink', planned: 6, actual: 6.4, because: [{ says: passes, amount: 0.4 }], known: 'reckoned' },
        {
          part: 'labour',
          planned: 15,
          actual: 16,
          because: [{ says: passes, amount: 1 }],
          known: 'reckoned',
        },
        { part: 'makeReady', planned: 3, actual: 3, because: [], known: 'reckoned' },
        { part: 'trimming', planned: 4, actual: 4, because: [], known: 'reckoned' },
        {
          part: 'wear',
          planned: 1.2,
          actual: 1.28,
          because: [{ says: passes, amount: 0.08 }],
          known: 'counted',
        },
      ],
    });
  });

  it('tells what was measured apart from what more passes were to bring', () => {
    // 80 ml at 10 cents: 64 were to be expected of 64 passes. 46 minutes: 6 for setting up, 40 at the printer, of
    // which 32 were to be expected.
    const compared = compareCosts(runOf(plannedSupper, ...EVENTS, measured(80, 46)));
    const [, ink, labour, makeReady] = compared?.parts ?? [];
    expect(ink).toMatchObject({
      actual: 8,
      known: 'measured',
      because: [
        { says: '64 times through the printer instead of 60', amount: 0.4 },
        { says: '80 ml measured where 64 ml were to be expected', amount: 1.6 },
      ],
    });
    expect(labour).toMatchObject({
      actual: 20,
      known: 'measured',
      because: [
        { says: '64 times through the printer instead of 60', amount: 1 },
        { says: '40 minutes at the printer where 32 were to be expected', amount: 4 },
      ],
    });
    expect(makeReady).toMatchObject({ actual: 3, because: [], known: 'measured' });
  });

  it('takes setting up to have been quicker where all was done in less time than it alone was planned to take', () => {
    const compared = compareCosts(runOf(plannedSupper, ...EVENTS, measured(undefined, 4)));
    const [, , labour, makeReady] = compared?.parts ?? [];
    expect(labour?.actual).toBe(0);
    expect(makeReady).toMatchObject({
      actual: 2,
      because: [{ says: 'all was done in 4 minutes', amount: -1 }],
      known: 'measured',
    });
  });

  it('says what was measured in tenths', () => {
    // 64 of 60 passes: 64 ml, and 32 minutes at the printer, were to be expected.
    const compared = compareCosts(runOf(plannedSupper, ...EVENTS, measured(70.26, 40.04)));
    const [, ink, labour] = compared?.parts ?? [];
    expect(ink?.because[1]?.says).toBe('70.3 ml measured where 64 ml were to be expected');
    expect(labour?.because[1]?.says).toBe('34 minutes at the printer where 32 were to be expected');
  });

  it('stays a sum of money where no ink was planned and some was measured', () => {
    const planned = { ...roundPlan, ink: 0, cost: { ...roundPlan.cost, ink: 0 } };
    const compared = compareCosts(runOf({ ...plannedSupper, planned }, ...EVENTS, measured(5)));
    expect(compared?.parts[1]).toMatchObject({ part: 'ink', planned: 0, actual: 0 });
    // 43.88 less the 6.40 of ink.
    expect(compared?.actual).toBe(37.48);
  });

  it('adds up to the cent: every difference is the sum of its reasons, and the whole that of its parts', () => {
    const plan = fc.record({
      paper: fc.nat(50000),
      ink: fc.nat(50000),
      labour: fc.nat(50000),
      makeReady: fc.nat(5000),
      trimming: fc.nat(5000),
      wear: fc.nat(5000),
    });
    const count = fc.integer({ min: 1, max: 200 });
    const some = fc.option(fc.double({ min: 0.1, max: 5000, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(plan, count, count, some, some, (inCents, used, spoiledOnes, ink, minutes) => {
        const cost = Object.fromEntries(Object.entries(inCents).map(([part, n]) => [part, n / 100]));
        const planned = { ...roundPlan, cost: { ...roundPlan.cost, ...cost } };
        const events = [load(500), go, good(1, used), spoiled(1, spoiledOnes, 'jam')];
        const all = ink === undefined && minutes === undefined ? events : [...events, measured(ink, minutes)];
        const compared = compareCosts(runOf({ ...plannedSupper, planned }, ...all));
        if (compared === undefined) throw new Error('There is a plan');
        const inAll = { planned: 0, actual: 0 };
        for (const part of compared.parts) {
          const reasons = part.because.reduce((sum, { amount }) => sum + amount, 0);
          expect(part.actual - part.planned).toBeCloseTo(reasons, 6);
          expect(part.because.every(({ amount }) => amount !== 0)).toBe(true);
          inAll.planned += part.planned;
          inAll.actual += part.actual;
        }
        expect(compared.planned).toBeCloseTo(inAll.planned, 6);
        expect(compared.actual).toBeCloseTo(inAll.actual, 6);
      }),
    );
  });
});

describe('the plan that a run keeps', () => {
  it('is what its candidate was reckoned with, and its minutes are those that labour was paid for', () => {
    const planned = plannedByHand();
    const { minutes, labourPerHour, cost } = planned;
    expect((minutes.makeReady / 60) * labourPerHour).toBeCloseTo(cost.makeReady, 2);
    expect((minutes.atPrinter / 60) * labourPerHour).toBeCloseTo(cost.labour, 2);
    expect(minutes.hands).toBeLessThan(minutes.atPrinter);
    expect(planned.inked.coverage).toBe(1);
    // Four invitations of 5 x 7 in with 1/8 in of bleed all around, on both sides: 8 x 5.25 x 7.25 square inches.
    expect(planned.inked.area).toBeLessThanOrEqual(8 * 5.25 * 7.25 * 0.0254 ** 2 + 1e-9);
    expect(planned.sheets).toBeGreaterThan(30);
    expect(planned.cost.total).toBeCloseTo(
      cost.paper + cost.ink + cost.labour + cost.makeReady + cost.trimming + cost.wear,
      9,
    );
  });

  it('takes each face by how much of it is covered, and a sheet that prints nothing as not covered', () => {
    // Fronts covered twice and backs once, of one size: one and a half times on the whole.
    const covered = (_: string, face: string) => (face === 'front' ? 2 : 1);
    const candidate = candidateByHand();
    const planned = plannedRun(candidate, startingLibrary(), covered);
    expect(planned.inked.coverage).toBeCloseTo(1.5, 9);
    expect(plannedRun({ ...candidate, printed: [] }, startingLibrary(), covered).inked).toEqual({
      area: 0,
      coverage: 0,
    });
  });

  it('a run that goes just by its plan costs what was planned', () => {
    const rest = roundPlan.sheets - 1;
    const events = [load(30), go, good(1, rest), turned, good(2, rest)];
    const compared = compareCosts(runOf(plannedSupper, ...events));
    expect(compared?.actual).toBe(41.2);
    expect(compared?.parts.flatMap((p) => p.because)).toEqual([]);
    const byMeasure = compareCosts(runOf(plannedSupper, ...events, measured(60, 36)));
    expect(byMeasure?.actual).toBe(41.2);
  });
});
