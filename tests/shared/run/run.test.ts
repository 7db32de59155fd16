import { describe, expect, it } from 'vitest';
import type { RunEvent } from '../../../shared/run/events.ts';
import { addEntry, lastCount, NO_RUNS, standing } from '../../../shared/run/run.ts';
import { countSpoiled, saySpoiled } from '../../../shared/run/sheets.ts';
import {
  bookOf,
  delivered,
  entryOf,
  go,
  good,
  load,
  noGo,
  refusalOf,
  runIn,
  runOf,
  spoiled,
  supperRun,
  trimmed,
  turned,
  undo,
} from '../../kit/runs.ts';

const begun: RunEvent = { kind: 'begun', plan: supperRun };
const once = { ...supperRun, work: { style: 'simplex' as const }, passes: 1 as const, sides: 1 as const };

describe('a run through both passes', () => {
  it('leaves every loaded sheet blank, printed, turned, done or spoiled', () => {
    const run = runOf(
      supperRun,
      load(30),
      noGo('too dark'),
      go,
      good(1, 20),
      spoiled(1, 2, 'smudged'),
      turned,
    );
    expect(run.sheets).toMatchObject({ loaded: 30, blank: 6, side1: 0, turned: 20, done: 1, proof: 'go' });
    expect(run.sheets.spoiled).toEqual([
      { at: 'proof', reason: 'too dark', sheets: 1 },
      { at: 1, reason: 'smudged', sheets: 2 },
    ]);
    expect(saySpoiled(run.sheets)).toBe('1 proof sheet (too dark), 2 in pass 1 (smudged)');
    expect(saySpoiled(runOf(supperRun, load(3), noGo('dark'), noGo('dark')).sheets)).toBe(
      '2 proof sheets (dark)',
    );
    const after = runOf(supperRun, load(30), go, good(1, 20), turned, good(2, 17), spoiled(2, 1, 'askew'));
    expect(after.sheets).toMatchObject({ loaded: 30, blank: 9, side1: 0, turned: 2, done: 18 });
    expect(countSpoiled(after.sheets)).toBe(1);
  });

  it('counts what was spoiled in the same pass for the same reason together, and apart otherwise', () => {
    const { sheets } = runOf(
      supperRun,
      load(30),
      go,
      spoiled(1, 1, 'askew'),
      good(1, 20),
      spoiled(1, 2, 'askew'),
      turned,
      spoiled(2, 4, 'askew'),
    );
    expect(sheets.spoiled).toEqual([
      { at: 1, reason: 'askew', sheets: 3 },
      { at: 2, reason: 'askew', sheets: 4 },
    ]);
  });

  it('counts what was spoiled for two reasons apart, and remembers a proof sheet that was no-go', () => {
    const { sheets } = runOf(
      supperRun,
      ...[load(30), go, spoiled(1, 1, 'askew'), spoiled(1, 2, 'jam'), spoiled(1, 3, 'askew'), noGo('dark')],
    );
    expect(sheets.spoiled).toEqual([
      { at: 1, reason: 'askew', sheets: 4 },
      { at: 1, reason: 'jam', sheets: 2 },
      { at: 'proof', reason: 'dark', sheets: 1 },
    ]);
    expect(sheets.proof).toBe('no-go');
  });

  it('takes sheets that come later out of pass 1 to pass 2 only when they are turned too', () => {
    const book = bookOf(begun, load(30), go, good(1, 10), turned, good(1, 5), good(2, 10));
    expect(runIn(book).sheets).toMatchObject({ side1: 5, turned: 0, done: 11 });
    expect(refusalOf(book, good(2, 1))).toBe(
      'Pass 2 cannot have had 1 sheet: of those that came good out of pass 1, none is turned and waiting. 5 sheets more came out of it but were not turned yet. Count again, or set the count of pass 1 right first.',
    );
  });

  it('is finished after one pass where the printer prints both sides or only one is wanted', () => {
    const book = bookOf({ kind: 'begun', plan: once }, load(30), go, good(1, 27));
    expect(runIn(book).sheets).toMatchObject({ blank: 2, side1: 0, done: 28 });
    expect(refusalOf(book, good(2, 1))).toBe(
      'This job goes through the printer once; there is no pass 2. Count it in pass 1.',
    );
    expect(refusalOf(book, turned)).toBe(
      'This job goes through the printer once; nothing is turned. Go on without.',
    );
  });
});

describe('what cannot have happened is refused', () => {
  it('before a run is begun', () => {
    expect(refusalOf(NO_RUNS, load(3))).toBe('No run has been begun. Begin the run first.');
  });

  it('when more sheets are counted than there were', () => {
    const book = bookOf(begun, load(30), go);
    expect(refusalOf(book, good(1, 29))).toBe('ok');
    expect(refusalOf(book, good(1, 30))).toBe(
      'Pass 1 cannot have had 30 sheets: of the 30 loaded, 29 are blank. Count again, or tell first that more sheets were loaded.',
    );
    expect(refusalOf(book, spoiled(1, 30, 'askew'))).toContain('of the 30 loaded, 29 are blank');
    const both = bookOf(begun, load(30), go, good(1, 20), turned);
    expect(refusalOf(both, good(2, 20))).toBe('ok');
    expect(refusalOf(both, good(2, 21))).toBe(
      'Pass 2 cannot have had 21 sheets: of those that came good out of pass 1, 20 are turned and waiting. Count again, or set the count of pass 1 right first.',
    );
  });

  it('with one of them in words that suit one', () => {
    const book = bookOf(begun, load(3), go, good(1, 1));
    expect(refusalOf(book, good(1, 2))).toContain('of the 3 loaded, 1 is blank.');
    expect(refusalOf(book, good(2, 1))).toContain(' 1 sheet more came out of it but was not turned yet.');
    const cut = bookOf(begun, load(3), go, trimmed('Supper', 3));
    expect(refusalOf(cut, trimmed('Supper', 2))).toContain('hold 4, and 1 of them is not counted yet.');
  });

  it('for the design that it is of, whatever there is of the others', () => {
    const designs = [
      { piece: 'Card', wanted: 8, perSheet: 4 },
      { piece: 'Tag', wanted: 4, perSheet: 2 },
    ];
    const both = { kind: 'begun' as const, plan: { ...supperRun, designs } };
    const book = bookOf(both, load(3), go, trimmed('Tag', 1));
    expect(runIn(book).pieces).toEqual([
      { piece: 'Card', good: 0, spoiled: 0, delivered: 0 },
      { piece: 'Tag', good: 1, spoiled: 0, delivered: 0 },
    ]);
    expect(refusalOf(book, trimmed('Card', 4))).toBe('ok');
    expect(refusalOf(book, trimmed('Tag', 2))).toContain('hold 2, and 1 of them is not counted yet.');
    expect(refusalOf(book, delivered('Card', 1))).toContain('0 good ones are counted');
  });

  it('as long as no proof sheet is right', () => {
    expect(refusalOf(bookOf(begun, load(30)), good(1, 1))).toBe(
      'No proof sheet has been looked at yet, so pass 1 cannot have begun. Print one sheet as all will be, look at it, and say go first.',
    );
    expect(refusalOf(bookOf(begun, load(30), go, noGo('banding')), good(1, 1))).toContain(
      'The last proof sheet was no-go, so pass 1 cannot go on.',
    );
    expect(refusalOf(bookOf(begun), go)).toBe('There is no blank sheet left to prove on. Load sheets first.');
  });

  it('when nothing came out of pass 1 that could be turned', () => {
    expect(refusalOf(bookOf(begun, load(30), go), turned)).toBe(
      'There is nothing to turn: no sheet has come good out of pass 1 since. Count pass 1 first.',
    );
  });

  it('when the knife or the customer would get more than was printed', () => {
    const book = bookOf(begun, load(30), go, good(1, 2), turned, good(2, 2), trimmed('Supper', 8, 1, 'torn'));
    expect(runIn(book).pieces).toEqual([{ piece: 'Supper', good: 8, spoiled: 1, delivered: 0 }]);
    expect(refusalOf(book, trimmed('Supper', 3))).toBe('ok');
    expect(refusalOf(book, trimmed('Supper', 3, 1, 'torn'))).toBe(
      'The knife cannot have made 4 Supper: the printed sheets hold 12, and 3 of them are not counted yet. Count again, or set the count of the last pass right first.',
    );
    expect(refusalOf(book, trimmed('Supper', 0))).toBe('No pieces were counted. Type how many there are.');
    expect(refusalOf(book, trimmed('Menu', 1))).toBe(
      'This run has no piece called Menu. Count it under the name that it has in the run.',
    );
    expect(refusalOf(book, delivered('Supper', 8))).toBe('ok');
    expect(refusalOf(book, delivered('Supper', 9))).toBe(
      '9 Supper cannot be delivered: 8 good ones are counted and not delivered yet. Count the trimmed pieces first.',
    );
    expect(refusalOf(book, delivered('Menu', 1))).toContain('This run has no piece called Menu.');
    const part = bookOf(begun, load(2), go, trimmed('Supper', 4), delivered('Supper', 3));
    expect(runIn(part).pieces).toEqual([{ piece: 'Supper', good: 4, spoiled: 0, delivered: 3 }]);
    expect(refusalOf(part, delivered('Supper', 2))).toContain('1 good one is counted');
  });

  it('under a number that was given already', () => {
    const book = bookOf(begun, load(30));
    const again = addEntry(book, entryOf(2, load(1)));
    expect(again.ok ? 'ok' : again.fault).toEqual({
      code: 'count-refused',
      message: 'Number 2 is in the log already.',
      remedy: 'Look at the counts, then count again.',
    });
  });
});

describe('a miscount', () => {
  it('is taken back alone, and all else stays', () => {
    const book = bookOf(begun, load(30), go, good(1, 20), spoiled(1, 3, 'askew'), good(1, 2), undo(5));
    expect(runIn(book).sheets).toMatchObject({ blank: 7, side1: 22, spoiled: [] });
    expect(standing(runIn(book)).map(({ id }) => id)).toEqual([1, 2, 3, 4, 6]);
    expect(lastCount(runIn(book))?.id).toBe(6);
  });

  it('stays where a later count needs it, and the sentence names that count', () => {
    const book = bookOf(begun, load(30), go, good(1, 20), turned, good(2, 18));
    expect(refusalOf(book, undo(4))).toBe(
      '“Pass 1: 20 good” cannot be taken back, because “Dried and turned” needs it: there is nothing to turn: no sheet has come good out of pass 1 since. Take back “Dried and turned” first.',
    );
    expect(refusalOf(book, undo(3))).toContain('because “Pass 1: 20 good” needs it: no proof sheet');
    expect(refusalOf(book, undo(6))).toBe('ok');
    const cut = bookOf(
      begun,
      load(30),
      go,
      good(1, 20),
      turned,
      good(2, 18),
      trimmed('Supper', 70, 2, 'torn'),
    );
    expect(refusalOf(cut, undo(6))).toContain('because “Supper trimmed: 70 good, 2 spoiled (torn)” needs it');
  });

  it('is taken back only once, and a taking back is not itself taken back', () => {
    const book = bookOf(begun, load(30), go, undo(3));
    expect(refusalOf(book, undo(3))).toBe(
      'That count is not there any more: it was taken back. Count again.',
    );
    expect(refusalOf(book, undo(4))).toContain('is not there any more');
    expect(refusalOf(book, undo(77))).toContain('is not there any more');
  });

  it('leads back to the run before when another was begun by mistake', () => {
    const book = bookOf(begun, load(30), begun, load(5));
    expect(refusalOf(book, undo(3))).toBe(
      'The run cannot be taken back, because something has been counted in it. Take back the counts first, or begin another run.',
    );
    const back = bookOf(begun, load(30), begun, load(5), undo(4), undo(3));
    expect(back.runs).toHaveLength(1);
    expect(runIn(back).sheets.loaded).toBe(30);
    expect(back.last).toBe(6);
  });
});
