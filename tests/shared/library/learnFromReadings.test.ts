// A printer in the library learns its ink from the readings of its counter.
import { describe, expect, it } from 'vitest';
import type { RuleOfThumb } from '../../../shared/ink/inkModel.ts';
import { learnFromReadings } from '../../../shared/library/learnFromReadings.ts';
import type { CounterReading, Printer } from '../../../shared/library/library.ts';
import { readLibrary, writeLibrary } from '../../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';

const rule: RuleOfThumb = { source: 'rule-of-thumb', base: 1, perCoverage: 9, spread: 0.4 };
const reading = (coverage: number): CounterReading => ({
  date: '2026-03-01',
  job: `Job covered ${coverage}`,
  area: 2,
  coverage,
  ml: 2 * (0.5 + 8 * coverage),
});
const readings = [0.25, 0.5, 1, 2].map(reading);
const ink: Printer['ink'] = { pricePerMl: 0.1, model: rule, readings };

describe('the ink of a printer', () => {
  it('stays as it is without readings', () => {
    expect(learnFromReadings({ ...ink, readings: [] })).toEqual({
      ink: { ...ink, readings: [] },
      says: undefined,
    });
  });

  it('keeps its rule of thumb until there are readings enough, and says how many are missing', () => {
    const learnt = learnFromReadings({ ...ink, readings: readings.slice(0, 3) });
    expect(learnt.ink.model).toEqual(rule);
    expect(learnt.ink.rule).toBeUndefined();
    expect(learnt.says).toContain('1 more than there are');
  });

  it('is fitted to readings that are enough, the rule of thumb kept beside', () => {
    const { model, rule: kept } = learnFromReadings(ink).ink;
    expect(model.source).toBe('fitted');
    expect(model.base).toBeCloseTo(0.5, 9);
    expect(model.perCoverage).toBeCloseTo(8, 9);
    expect(kept).toEqual(rule);
  });

  it('goes back to that rule of thumb once too few readings are left', () => {
    const fitted = learnFromReadings(ink).ink;
    const back = learnFromReadings({ ...fitted, readings: readings.slice(0, 2) }).ink;
    expect(back).toEqual({ ...ink, readings: readings.slice(0, 2) });
  });

  it('stays as it is, and it is said why, where a reading cannot be', () => {
    const wrong = { ...ink, readings: [{ ...reading(1), area: 0 }] };
    expect(learnFromReadings(wrong).ink).toBe(wrong);
    expect(learnFromReadings(wrong).says).toContain('Reading 1');
  });
});

it('a library that is read with readings in it has the ink fitted to them, and comes back as it was written', () => {
  const library = startingLibrary();
  const written = JSON.parse(writeLibrary(library));
  written.printers[0].ink.readings = readings;
  const read = readLibrary(written);
  if (!read.ok) throw new Error(read.fault.message);
  expect(read.value.printers[0]?.ink.model).toMatchObject({ source: 'fitted', readings: 4, degrees: 2 });
  expect(read.value.printers[0]?.ink.rule).toEqual(library.printers[0]?.ink.model);
  expect(readLibrary(JSON.parse(writeLibrary(read.value)))).toEqual(read);
});

it('readings that cannot be are refused, each with its field', () => {
  const written = JSON.parse(writeLibrary(startingLibrary()));
  written.printers[1].ink.readings = [
    { date: '2026-02-30', job: 'Tags', area: 0, coverage: 4.5, ml: -1 },
    { date: '1 March', job: ' ', area: 1, coverage: 1, ml: 'much' },
  ];
  const read = readLibrary(written);
  if (read.ok) throw new Error('These are no readings');
  expect(read.fault.message).toContain('printers[1].ink.readings[0].date: must be a date such as 2026-03-01');
  expect(read.fault.message).toContain('printers[1].ink.readings[0].area: must be more than nothing');
  expect(read.fault.message).toContain('not be more than four inks that each cover everything');
  expect(read.fault.message).toContain('and 4 more');
});
