import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oversFor } from '../../../shared/layout/count.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import type { RunEvent } from '../../../shared/run/events.ts';
import { learnFrom, withHandsBy } from '../../../shared/run/learn.ts';
import type { Run } from '../../../shared/run/run.ts';
import { plannedSupper, roundPlan } from '../../kit/plannedRuns.ts';
import { delivered, go, good, load, runOf, spoiled, supperRun, trimmed, turned } from '../../kit/runs.ts';

const RULES = [
  { from: 0, percent: 5, least: 3 },
  { from: 100, percent: 4, least: 6 },
];

/** A finished run of so many good sheets, one up, with so many spoiled in pass 1. */
function finished(needed: number, spoiledOnes: number, plan: Partial<typeof plannedSupper> = {}): Run {
  const designs = [{ piece: 'Supper', wanted: needed, perSheet: 1 }];
  const spoil = spoiledOnes === 0 ? [] : [spoiled(1, spoiledOnes, 'jam')];
  return runOf(
    { ...supperRun, needed, designs, ...plan },
    ...[load(needed + spoiledOnes), go, ...spoil, good(1, needed - 1), turned, good(2, needed - 1)],
    ...[trimmed('Supper', needed), delivered('Supper', needed)],
  );
}

const runs = (count: number, needed: number, spoiledOnes: number) =>
  Array.from({ length: count }, () => finished(needed, spoiledOnes));

describe('the overs', () => {
  it('are learned from five finished runs of a length, not from four', () => {
    const four = learnFrom(runs(4, 50, 5), RULES);
    expect(four.overs).toEqual([
      { before: RULES[0], runs: 4, percent: undefined },
      { before: RULES[1], runs: 0, percent: undefined },
    ]);
    // 5 of 50 spoiled: 8.5 % are 4.25 sheets, rounded up 5. 8 % are 4.
    expect(learnFrom(runs(5, 50, 5), RULES).overs[0]).toEqual({ before: RULES[0], runs: 5, percent: 8.5 });
  });

  it('take each run to the rule for its length', () => {
    const { overs } = learnFrom([...runs(5, 99, 1), ...runs(5, 100, 10)], RULES);
    expect(overs.map(({ runs: n, percent }) => [n, percent])).toEqual([
      [5, 0],
      [5, 9.5],
    ]);
  });

  it('may be too few for one run in ten, not for two', () => {
    const ten = (bad: number) => [...runs(10 - bad, 60, 2), ...runs(bad, 60, 20)];
    expect(learnFrom(ten(1), RULES).overs[0]?.percent).toBe(0);
    expect(learnFrom(ten(2), RULES).overs[0]?.percent).toBe(32);
  });

  it('leave out unfinished runs, and sheets that were planned for setting up', () => {
    const begun = runOf(supperRun, load(30), go, spoiled(1, 9, 'jam'));
    expect(learnFrom([begun], RULES).runs).toBe(0);
    const planned = { ...roundPlan, makeReadySheets: 2 };
    const five = Array.from({ length: 5 }, () => finished(50, 7, { planned }));
    expect(learnFrom(five, RULES).overs[0]?.percent).toBe(8.5);
  });

  it('are the least that would have been enough: half a percent less is not', () => {
    const run = fc.record({ needed: fc.integer({ min: 2, max: 99 }), lost: fc.nat(30) });
    fc.assert(
      fc.property(fc.array(run, { minLength: 5, maxLength: 14 }), (all) => {
        const [{ percent = Number.NaN } = {}] = learnFrom(
          all.map(({ needed, lost }) => finished(needed, lost)),
          RULES,
        ).overs;
        const covers = (p: number) =>
          all.filter(({ needed, lost }) => lost <= oversFor(needed, { percent: p, least: 3 })).length;
        expect(covers(percent)).toBeGreaterThanOrEqual(0.9 * all.length);
        if (percent > 0) expect(covers(percent - 0.5)).toBeLessThan(0.9 * all.length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the time of the hands', () => {
  const minutes = (taken: number): RunEvent => ({ kind: 'measured', minutes: taken });
  /** 27 sheets and 3 spoiled in pass 2, so 60 passes as planned. */
  const timed = (taken: number, plan = plannedSupper) =>
    runOf(
      plan,
      ...[load(30), go, good(1, 29), turned, good(2, 26), spoiled(2, 3, 'jam')],
      ...[trimmed('Supper', 108), delivered('Supper', 108), minutes(taken)],
    );

  it('is learned from three runs: what they took beyond setting up and waiting, against what was planned', () => {
    // 6 minutes of setting up and 10 of standing by: 20 are left for the hands as planned, 30 in a run of 46.
    expect(learnFrom([timed(46), timed(46)], []).times).toEqual([
      { printer: 'Hand-fed sheet printer', feed: 'Hand feed', runs: 2, factor: undefined },
    ]);
    expect(learnFrom([timed(36), timed(36), timed(36)], []).times[0]?.factor).toBeCloseTo(1, 9);
    expect(learnFrom([timed(46), timed(46), timed(46)], []).times[0]?.factor).toBeCloseTo(1.5, 9);
    expect(learnFrom([timed(36), timed(46), timed(56)], []).times[0]?.factor).toBeCloseTo(1.5, 9);
    expect(learnFrom([timed(1), timed(1), timed(1)], []).times[0]?.factor).toBe(0);
  });

  it('is kept apart by printer and feed, and not learned where a tray does it all', () => {
    const tray = { ...plannedSupper, planned: { ...roundPlan, feed: 'Tray' } };
    const noHands = { ...roundPlan, minutes: { ...roundPlan.minutes, hands: 0 } };
    const { times } = learnFrom(
      [timed(40), timed(40, tray), timed(40, { ...plannedSupper, planned: noHands })],
      [],
    );
    expect(times.map((t) => [t.feed, t.runs])).toEqual([
      ['Hand feed', 1],
      ['Tray', 1],
    ]);
  });

  it('changes the hands of that feed and of no other', () => {
    const [printer] = startingLibrary().printers;
    if (printer === undefined) throw new Error('The library begins with printers');
    const time = { printer: printer.name, feed: 'Hand feed', runs: 3 };
    expect(withHandsBy(printer, { ...time, factor: 1.5 }).feeds[0].hand).toEqual({
      load: 9,
      align: 12,
      turn: 4.5,
    });
    expect(withHandsBy(printer, { ...time, feed: 'Tray', factor: 1.5 })).toEqual(printer);
    expect(withHandsBy(printer, { ...time, factor: undefined })).toEqual(printer);
  });
});

describe('the ink', () => {
  it('is read by what was really printed', () => {
    const ink: RunEvent = { kind: 'measured', ink: 80 };
    const run = runOf(
      plannedSupper,
      ...[load(33), go, good(1, 32), turned, good(2, 27)],
      ...[trimmed('Supper', 108), delivered('Supper', 108), ink],
    );
    // 61 passes of 0.1 m2 each.
    expect(learnFrom([run, finished(50, 0)], []).ink).toEqual([
      {
        printer: 'Hand-fed sheet printer',
        reading: {
          date: '2026-03-02',
          job: 'Harvest supper',
          area: expect.closeTo(6.1, 9),
          coverage: 1.5,
          ml: 80,
        },
      },
    ]);
  });
});
