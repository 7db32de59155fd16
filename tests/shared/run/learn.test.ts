import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oversFor } from '../../../shared/layout/count.ts';
import type { Feed, Library } from '../../../shared/library/library.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import type { RunEvent } from '../../../shared/run/events.ts';
import { learnFrom } from '../../../shared/run/learn.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { takeLearned } from '../../../shared/run/takeLearned.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { plannedSupper, roundPlan } from '../../kit/plannedRuns.ts';
import { delivered, go, good, load, runOf, spoiled, supperRun, trimmed, turned } from '../../kit/runs.ts';

const RULES = [
  { from: 0, percent: 5, least: 3 },
  { from: 100, percent: 4, least: 6 },
];

/** The library that a studio begins with, by these rules, and with hands of 6 + 8 s for loading and 4 s for turning. */
const library = libraryWith({ load: 6, align: 8, turn: 4 });

function libraryWith(hand: Feed['hand']): Library {
  const begun = startingLibrary();
  const [byHand, ...others] = begun.printers;
  if (byHand === undefined) throw new Error('The library begins with printers');
  const [feed, ...feeds] = byHand.feeds;
  return {
    ...begun,
    rates: { ...begun.rates, overs: RULES },
    printers: [{ ...byHand, feeds: [{ ...feed, hand }, ...feeds] }, ...others],
  };
}

/** A finished run of so many good sheets, one up, with so many spoiled in pass 1. */
function finished(needed: number, spoiledOnes: number, plan: Partial<typeof plannedSupper> = {}): PrintRun {
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
    const four = learnFrom(runs(4, 50, 5), library);
    expect(four.overs).toEqual([
      { before: RULES[0], runs: 4, percent: undefined },
      { before: RULES[1], runs: 0, percent: undefined },
    ]);
    // 5 of 50 spoiled: 8.5 % are 4.25 sheets, rounded up 5. 8 % are 4.
    expect(learnFrom(runs(5, 50, 5), library).overs[0]).toEqual({ before: RULES[0], runs: 5, percent: 8.5 });
  });

  it('need no share of the run where their least number was enough', () => {
    expect(learnFrom(runs(5, 50, 3), library).overs[0]?.percent).toBe(0);
    expect(learnFrom(runs(5, 50, 4), library).overs[0]?.percent).toBe(6.5);
  });

  it('take each run to the rule for its length', () => {
    const { overs } = learnFrom([...runs(5, 99, 1), ...runs(5, 100, 10)], library);
    expect(overs.map(({ runs: n, percent }) => [n, percent])).toEqual([
      [5, 0],
      [5, 9.5],
    ]);
  });

  it('may be too few for one run in ten, not for two', () => {
    const ten = (bad: number) => [...runs(10 - bad, 60, 2), ...runs(bad, 60, 20)];
    expect(learnFrom(ten(1), library).overs[0]?.percent).toBe(0);
    expect(learnFrom(ten(2), library).overs[0]?.percent).toBe(32);
  });

  it('leave out unfinished runs, and sheets that were planned for setting up', () => {
    const begun = runOf(supperRun, load(30), go, spoiled(1, 9, 'jam'));
    expect(learnFrom([begun], library).runs).toBe(0);
    const planned = { ...roundPlan, makeReadySheets: 2 };
    const five = Array.from({ length: 5 }, () => finished(50, 7, { planned }));
    expect(learnFrom(five, library).overs[0]?.percent).toBe(8.5);
  });

  it('are the least that would have been enough: half a percent less is not', () => {
    const run = fc.record({ needed: fc.integer({ min: 2, max: 99 }), lost: fc.nat(30) });
    fc.assert(
      fc.property(fc.array(run, { minLength: 5, maxLength: 14 }), (all) => {
        const [{ percent = Number.NaN } = {}] = learnFrom(
          all.map(({ needed, lost }) => finished(needed, lost)),
          library,
        ).overs;
        const covers = (p: number) =>
          all.filter(({ needed, lost }) => lost <= oversFor(needed, { percent: p, least: 3 })).length;
        expect(covers(percent)).toBeGreaterThanOrEqual(0.9 * all.length);
        if (percent > 0) expect(covers(percent - 0.5)).toBeLessThan(0.9 * all.length);
      }),
      drawnCases(60),
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

  it('is learned from three runs: what they took beyond setting up and waiting, against what the library says', () => {
    // 60 passes: 30 sheets of 2 x (6 + 8) + 4 s are 16 minutes. 6 minutes of setting up and 10 of standing by go off.
    expect(learnFrom([timed(46), timed(46)], library).times).toEqual([
      { printer: 'Hand-fed sheet printer', feed: 'Hand feed', runs: 2, factor: undefined },
    ]);
    const factorOf = (...taken: readonly number[]) =>
      learnFrom(
        taken.map((t) => timed(t)),
        library,
      ).times[0]?.factor;
    expect(factorOf(32, 32, 32)).toBeCloseTo(1, 9);
    expect(factorOf(40, 40, 40)).toBeCloseTo(1.5, 9);
    expect(factorOf(32, 40, 48)).toBeCloseTo(1.5, 9);
    expect(factorOf(1, 1, 1)).toBe(0);
  });

  it('is kept apart by printer and feed, and not learned where a tray does it all or the printer is gone', () => {
    const at = (feed: string, printer = roundPlan.printer) => ({
      ...plannedSupper,
      planned: { ...roundPlan, feed, printer },
    });
    const all = [timed(40), timed(40, at('Tray', 'Tray-fed sheet printer')), timed(40, at('Gone'))];
    expect(learnFrom(all, library).times.map((t) => [t.printer, t.feed, t.runs])).toEqual([
      ['Hand-fed sheet printer', 'Hand feed', 1],
      ['Tray-fed sheet printer', 'Tray', 1],
    ]);
    expect(learnFrom(all, libraryWith({ load: 0, align: 0, turn: 0 })).times).toHaveLength(1);
  });
});

it('nothing is learned of hands or ink from runs that were not planned, or not measured', () => {
  const ink: RunEvent = { kind: 'measured', ink: 80, minutes: 40 };
  const events = [
    ...[load(30), go, good(1, 29), turned, good(2, 29)],
    ...[trimmed('Supper', 108), delivered('Supper', 108)],
  ];
  const [unplanned, unmeasured] = [runOf(supperRun, ...events, ink), runOf(plannedSupper, ...events)];
  const learned = learnFrom([unplanned, unmeasured], library);
  expect(learned).toMatchObject({ runs: 2, times: [], ink: [] });
  const one = runOf(plannedSupper, ...events, ink);
  expect(learnFrom([unplanned, unmeasured, one], library)).toMatchObject({
    times: [{ runs: 1 }],
    ink: [{ reading: { ml: 80 } }],
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
    expect(learnFrom([run, finished(50, 0)], library).ink).toEqual([
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

describe('what was learned', () => {
  const hands = (taken: number) =>
    runOf(
      plannedSupper,
      ...[load(30), go, good(1, 29), turned, good(2, 26), spoiled(2, 3, 'jam')],
      ...[trimmed('Supper', 108), delivered('Supper', 108)],
      { kind: 'measured', minutes: taken, ink: 60 + taken },
    );

  it('goes into the library, each change said, and only once', () => {
    const all = [...runs(5, 120, 12), hands(40), hands(40), hands(41)];
    const first = takeLearned(library, learnFrom(all, library));
    expect(first.changes[0]).toBe(
      'Overs of runs of 100 good sheets and more: 9.5 in a hundred instead of 4, at least 6 as before. 5 runs show it.',
    );
    expect(first.changes[1]).toBe(
      'Hands at Hand feed of Hand-fed sheet printer: loading 9.1 s instead of 6, laying straight 12.2 s instead of 8, turning 6.1 s instead of 4. 3 timed runs show it.',
    );
    expect(first.changes[2]).toMatch(/^Ink of Hand-fed sheet printer: 3 readings more\. ./);
    expect(first.changes).toHaveLength(3);
    expect(first.waiting).toEqual(['Overs of the shortest runs: 3 of the 5 runs that are needed.']);
    const { rates, printers } = first.library;
    expect(rates.overs).toEqual([RULES[0], { from: 100, percent: 9.5, least: 6 }]);
    expect(printers[0]?.feeds[0].hand).toEqual({ load: 9.1, align: 12.2, turn: 6.1 });
    expect(printers[0]?.ink.readings).toHaveLength(3);
    expect(printers.slice(1)).toEqual(library.printers.slice(1));

    const again = takeLearned(first.library, learnFrom(all, first.library));
    expect(again.changes).toEqual([]);
    expect(again.library).toEqual(first.library);
  });

  it('waits for more runs where there are too few, and leaves the library as it is', () => {
    const { changes, waiting, library: after } = takeLearned(library, learnFrom(runs(2, 50, 9), library));
    expect([changes, after]).toEqual([[], library]);
    expect(waiting).toEqual(['Overs of the shortest runs: 2 of the 5 runs that are needed.']);
  });

  it('of a printer that is there as long as it is called so', () => {
    const run = hands(40);
    const { waiting } = takeLearned(library, learnFrom([run], library));
    expect(waiting).toContain(
      'Hands at Hand feed of Hand-fed sheet printer: 1 of the 3 timed runs that are needed.',
    );
  });

  it('goes to the feed of its own printer, though another feed or printer is timed too', () => {
    const at = (printer: string, feed: string) => ({ printer, feed, runs: 3 });
    const [byHand, byTray] = library.printers;
    // Both printers have a feed of one name.
    const feeds = [{ ...byTray!.feeds[0], name: 'Hand feed' }, byTray!.feeds[0]] as const;
    const both = { ...library, printers: [byHand!, { ...byTray!, feeds }] };
    const times = [
      { ...at(byTray!.name, byTray!.feeds[0].name), factor: 3 },
      { ...at(byTray!.name, 'Hand feed'), factor: undefined },
      { ...at(byHand!.name, 'Hand feed'), factor: 2 },
    ];
    const { library: after } = takeLearned(both, { runs: 3, overs: [], times, ink: [] });
    expect(after.printers[0]!.feeds[0].hand).toEqual({ load: 12, align: 16, turn: 8 });
    expect(after.printers[1]!.feeds[0].hand).toEqual(byTray!.feeds[0].hand);
    expect(after.printers[1]!.feeds[1]!.hand.load).toBeCloseTo(3 * byTray!.feeds[0].hand.load, 9);
  });

  it('adds each reading once: another job, day, area or amount is another reading', () => {
    const reading = { date: '2026-03-02', job: 'Harvest supper', area: 6, coverage: 1.5, ml: 80 };
    const { name } = library.printers[0]!;
    const take = (into: Library, ...readings: readonly (typeof reading)[]) =>
      takeLearned(into, {
        runs: 1,
        overs: [],
        times: [],
        ink: readings.map((one) => ({ printer: name, reading: one })),
      });
    const first = take(library, reading);
    expect(first.changes).toEqual([expect.stringMatching(/^Ink of .*: one reading more\./)]);
    expect(first.changes[0]).toBe(first.changes[0]!.trim());
    // The area as float64 may have it from another sum.
    expect(take(first.library, { ...reading, area: 6.0000000001 }).changes).toEqual([]);
    for (const other of [{ job: 'Menu' }, { date: '2026-03-03' }, { area: 6.1 }, { ml: 81 }]) {
      const { library: after, changes } = take(first.library, { ...reading, ...other });
      expect(changes).toHaveLength(1);
      expect(after.printers[0]!.ink.readings).toHaveLength(2);
    }
  });
});
