import { describe, expect, it } from 'vitest';
import { nextStep, stepsOfRun } from '../../../shared/run/nextStep.ts';
import { prospectOf, sayProspect } from '../../../shared/run/prospect.ts';
import {
  delivered,
  go,
  good,
  load,
  noGo,
  runOf,
  spoiled,
  supperRun,
  trimmed,
  turned,
} from '../../kit/runs.ts';

describe('whether the quantity can still be met', () => {
  it('counts what is finished, what is in hand, and what may yet be spoiled', () => {
    const run = runOf(supperRun, load(30), go, good(1, 20), spoiled(1, 2, 'askew'), turned, good(2, 10));
    // 108 wanted four up: 27 sheets. 11 are finished; 10 turned and 7 blank are in hand.
    expect(prospectOf(run)).toEqual({
      designs: [{ piece: 'Supper', wanted: 108, there: 44, canCome: 112 }],
      toFinish: 16,
      toPrint: 6,
      inHand: 17,
      spare: 1,
      toLoad: 0,
      toLoadWithOvers: 0,
    });
    expect(sayProspect(run)).toEqual({
      stands: 'can-be-met',
      says: 'The quantity can still be met: 16 sheets still needed, 17 in hand; 1 may be spoiled.',
    });
  });

  it('counts sheets that wait to be turned as in hand, and as through pass 1', () => {
    // 1 finished, 10 printed on side 1, 19 blank: 26 to come, of which 16 have not been through pass 1.
    const run = runOf(supperRun, load(30), go, good(1, 10));
    expect(prospectOf(run)).toMatchObject({ toFinish: 26, toPrint: 16, inHand: 29, spare: 3, toLoad: 0 });
  });

  it('says so at the very last sheet that may be spoiled, and at the one after it', () => {
    const last = runOf(supperRun, load(30), go, spoiled(1, 3, 'jam'));
    expect(sayProspect(last)).toEqual({
      stands: 'just',
      says: 'The quantity can still be met: 26 sheets still needed, 26 in hand; none may be spoiled.',
    });
    const beyond = runOf(supperRun, load(30), go, spoiled(1, 4, 'jam'));
    expect(sayProspect(beyond)).toEqual({
      stands: 'short',
      says: '1 short: load 4 sheets more, 1 needed and 3 overs. 26 sheets still needed.',
    });
    expect(prospectOf(beyond)).toMatchObject({ toLoad: 1, toLoadWithOvers: 4, spare: 0, toPrint: 26 });
  });

  it('needs another sheet when the knife spoils more pieces than are left over', () => {
    const printed = [load(30), go, good(1, 26), turned, good(2, 26)];
    expect(sayProspect(runOf(supperRun, ...printed))).toEqual({
      stands: 'met',
      says: 'The quantity is met; 3 are over.',
    });
    const run = runOf(supperRun, ...printed, trimmed('Supper', 107, 1, 'torn'));
    expect(prospectOf(run)).toMatchObject({ toFinish: 1, toPrint: 1, inHand: 3, spare: 2 });
    expect(sayProspect(run).says).toBe(
      'The quantity can still be met: 1 sheet still needed, 3 in hand; 2 may be spoiled.',
    );
  });

  it('goes by the design that lacks most, and says when one lies on no sheet', () => {
    const designs = [
      { piece: 'Card', wanted: 40, perSheet: 4 },
      { piece: 'Tag', wanted: 13, perSheet: 1 },
    ];
    expect(prospectOf(runOf({ ...supperRun, designs }, load(10)))).toMatchObject({ toFinish: 13, toLoad: 3 });
    const none = { ...supperRun, designs: [...designs, { piece: 'Menu', wanted: 5, perSheet: 0 }] };
    expect(sayProspect(runOf(none, load(20)))).toEqual({
      stands: 'short',
      says: 'Menu cannot be met: no sheet of this run holds any.',
    });
    // It is left out of the sheets, so that the others can be counted.
    expect(prospectOf(runOf(none, load(20)))).toMatchObject({ toFinish: 13, toLoad: 0, spare: 7 });
    const two = { ...none, designs: [...none.designs, { piece: 'Label', wanted: 5, perSheet: 0 }] };
    expect(sayProspect(runOf(two)).says).toBe('Menu, Label cannot be met: no sheet of this run holds any.');
  });

  it('takes the pieces that the knife spoiled off the design that they were of', () => {
    const designs = [
      { piece: 'Card', wanted: 8, perSheet: 4 },
      { piece: 'Tag', wanted: 4, perSheet: 2 },
    ];
    const printed = [load(4), go, good(1, 1), turned, good(2, 1)];
    const run = runOf({ ...supperRun, designs }, ...printed, trimmed('Tag', 2, 1, 'torn'));
    // Two sheets hold 8 cards and 4 tags, of which one is torn: a third sheet is needed.
    expect(prospectOf(run)).toMatchObject({
      designs: [{ there: 8 }, { there: 3 }],
      toFinish: 1,
    });
  });

  it('is met with nothing, with one sheet and with several over', () => {
    const after = (loaded: number) =>
      sayProspect(runOf(supperRun, load(loaded), go, good(1, 26), turned, good(2, 26))).says;
    expect([27, 28, 29].map(after)).toEqual([
      'The quantity is met.',
      'The quantity is met; 1 is over.',
      'The quantity is met; 2 are over.',
    ]);
  });
});

it('before anything is loaded it says how many sheets to load, and nothing of lacking', () => {
  expect(sayProspect(runOf(supperRun))).toEqual({
    stands: 'to-load',
    says: 'Load 30 sheets: 27 needed and 3 overs.',
  });
});

describe('what comes next', () => {
  it('follows the sheets from loading to delivery', () => {
    const events = [
      load(30),
      noGo('banding'),
      go,
      good(1, 27),
      turned,
      spoiled(2, 1, 'askew'),
      good(2, 26),
      trimmed('Supper', 108),
      delivered('Supper', 108),
    ];
    const steps = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) =>
      nextStep(runOf(supperRun, ...events.slice(0, n))),
    );
    expect(steps).toEqual([
      'load',
      'proof',
      'proof',
      'pass-1',
      'pass-1',
      'pass-2',
      'pass-2',
      'trim',
      'deliver',
      'done',
    ]);
  });

  it('is the turn once no blank sheet is left, and loading when all are used up and some are lacking', () => {
    expect(nextStep(runOf(supperRun, load(20), go, good(1, 19)))).toBe('turn');
    expect(nextStep(runOf(supperRun, load(20), go, good(1, 19), turned, good(2, 19)))).toBe('load');
    expect(nextStep(runOf(supperRun, load(20), go, good(1, 9), turned, noGo('shifted')))).toBe('proof');
  });

  it('knows no turn where the sheet goes through once', () => {
    const once = {
      ...supperRun,
      work: { style: 'perfecting', turn: 'side-to-side' } as const,
      passes: 1 as const,
    };
    expect(stepsOfRun(runOf(once))).toEqual(['load', 'proof', 'pass-1', 'trim', 'deliver']);
    expect(nextStep(runOf(once, load(30), go, good(1, 26)))).toBe('trim');
    expect(stepsOfRun(runOf(supperRun))).toEqual([
      'load',
      'proof',
      'pass-1',
      'turn',
      'pass-2',
      'trim',
      'deliver',
    ]);
  });

  it('is trimming and delivering on until that is done for every design', () => {
    const designs = [
      { piece: 'Card', wanted: 4, perSheet: 4 },
      { piece: 'Tag', wanted: 1, perSheet: 2 },
    ];
    const printed = [load(1), go];
    const next = (...events: Parameters<typeof runOf>[1][]) =>
      nextStep(runOf({ ...supperRun, designs }, ...printed, ...events));
    expect(next(trimmed('Card', 4))).toBe('trim');
    expect(next(trimmed('Tag', 1))).toBe('trim');
    const both = [trimmed('Card', 4), trimmed('Tag', 1)];
    expect(next(...both)).toBe('deliver');
    expect(next(...both, delivered('Tag', 1))).toBe('deliver');
    // One card is wanting though as many are given out as of the tag.
    expect(next(...both, delivered('Tag', 1), delivered('Card', 3))).toBe('deliver');
    expect(next(...both, delivered('Tag', 1), delivered('Card', 4))).toBe('done');
  });

  it('is trimming on as long as fewer pieces are counted than the sheets will give', () => {
    const run = runOf(
      supperRun,
      load(30),
      go,
      good(1, 27),
      turned,
      good(2, 27),
      trimmed('Supper', 100, 3, 'torn'),
    );
    expect(nextStep(run)).toBe('trim');
  });
});
