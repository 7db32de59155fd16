// A printer's ink in the editor: readings are added once they are in order, and the model is told in words.
import { describe, expect, it } from 'vitest';
import { addReading } from '../../../renderer/library/draft/addReading.ts';
import type { DraftReading } from '../../../renderer/library/draft/draft.ts';
import { libraryDraftOf } from '../../../renderer/library/draft/draftOf.ts';
import { takeDraft } from '../../../renderer/library/draft/takeDraft.ts';
import { otherCaliper, otherWeight } from '../../../renderer/library/paper/otherMeasure.ts';
import { sizesOffered } from '../../../renderer/library/paper/sizesOffered.ts';
import { inkExamples, inkInWords, ml } from '../../../renderer/library/printer/inkInWords.ts';
import type { FittedInk } from '../../../shared/ink/inkModel.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';

const library = startingLibrary();
const draft = libraryDraftOf(library);
const HAND_FED = 'printer Hand-fed sheet printer';
const reading: DraftReading = {
  key: 'r',
  date: '2026-03-01',
  job: 'Tags',
  area: '2.5',
  coverage: '120',
  ml: '25',
};

/** As it is read: a space that keeps figure and unit together is a space. */
const read = <T>(said: T): T => JSON.parse(JSON.stringify(said).replaceAll('\u00a0', ' '));

describe('a reading', () => {
  it('is added to its printer in the order of the dates', () => {
    const later = addReading(draft, HAND_FED, { ...reading, key: 'later', date: '2026-04-01' }).draft;
    const { draft: both, wrongs } = addReading(later, HAND_FED, reading);
    expect(wrongs).toEqual({});
    expect(both.printers[0]?.ink.readings.map(({ date }) => date)).toEqual(['2026-03-01', '2026-04-01']);
    const { kept } = takeDraft(both, { library, draft });
    expect(kept.library.printers[0]?.ink.readings[0]).toEqual({
      date: '2026-03-01',
      job: 'Tags',
      area: 2.5,
      coverage: 1.2,
      ml: 25,
    });
    expect(kept.library.printers[1]?.ink.readings).toEqual([]);
  });

  it('that is not in order is told by its own fields, whatever else is wrong in the library', () => {
    const wrong = { ...draft, currency: '' };
    const { wrongs } = addReading(wrong, HAND_FED, { ...reading, date: 'May', area: '', coverage: '401' });
    expect(wrongs).toEqual({
      date: 'must be a date such as 2026-03-01',
      area: 'must be a number',
      coverage: 'must not be more than four inks that each cover everything',
    });
    expect(addReading(wrong, HAND_FED, reading).wrongs).toEqual({});
  });

  it('makes a fit once there are four, and taking one away brings the rule of thumb back', () => {
    const four = ['30', '80', '150', '300'].reduce(
      (all, coverage, i) =>
        addReading(all, HAND_FED, { ...reading, key: String(i), coverage, ml: '30' }).draft,
      draft,
    );
    const covered = four.printers.map((printer) => ({
      ...printer,
      ink: {
        ...printer.ink,
        readings: printer.ink.readings.map((r) => ({
          ...r,
          ml: String(2.5 * (1 + Number(r.coverage) / 10)),
        })),
      },
    }));
    const { kept } = takeDraft({ ...four, printers: covered }, { library, draft });
    const { model } = kept.library.printers[0]?.ink ?? {};
    expect(model).toMatchObject({ source: 'fitted', readings: 4 });
    expect(model?.base).toBeCloseTo(1, 9);
    expect(model?.perCoverage).toBeCloseTo(10, 9);
    const [first] = kept.draft.printers;
    if (first === undefined) throw new Error('There is a printer');
    const fewer = { ...first, ink: { ...first.ink, readings: first.ink.readings.slice(1) } };
    const less = takeDraft({ ...kept.draft, printers: [fewer, ...kept.draft.printers.slice(1)] }, kept).kept;
    expect(less.library.printers[0]?.ink.model).toEqual(library.printers[0]?.ink.model);
  });
});

describe('the model in words', () => {
  it('says of a rule of thumb that it is one, and how far off it may be', () => {
    const words = read(inkInWords({ source: 'rule-of-thumb', base: 0.4, perCoverage: 8, spread: 0.5 }));
    expect(words).toEqual([
      'A rule of thumb: 0.4 ml for every m² printed, and 8 ml more for every m² that one ink covers whole.',
      'The truth may lie 50 % off, either way. Readings of the printer’s own counter make it surer.',
    ]);
  });

  it('says of a fit between what its coefficients lie, which is never less than nothing', () => {
    // Two degrees of freedom: t is 4.303 (NIST/SEMATECH e-Handbook, 1.3.6.7.2). 4.303 x 0.2 = 0.861; 4.303 x 0.1 = 0.430.
    const fitted: FittedInk = {
      source: 'fitted',
      base: 0.5,
      perCoverage: 8,
      readings: 4,
      degrees: 2,
      covariance: { base: 0.04, both: 0, perCoverage: 0.01 },
      residual: 0,
    };
    expect(read(inkInWords(fitted))[0]).toBe(
      'Fitted: 0.5 ml (0 ml to 1.36 ml) for every m² printed, and 8 ml (7.57 ml to 8.43 ml) more for every m² that one ink covers whole.',
    );
    // At a coverage of 1: sqrt(0.04 + 0.01) x 4.303 = 0.962 around 8.5.
    expect(read(inkExamples(fitted))[1]).toEqual({
      coverage: '100',
      takes: '8.5 ml',
      between: '7.54 ml to 9.46 ml',
    });
  });

  it('shows no more figures than a counter has', () => {
    expect(read([0, 0.123456, 12.345, 99.96, 1234.5].map(ml))).toEqual([
      '0 ml',
      '0.123 ml',
      '12.3 ml',
      '100 ml',
      '1235 ml',
    ]);
  });
});

describe('a paper', () => {
  it('shows its weight and caliper in the measures that they were not typed in', () => {
    // JDF specification (CIP4), Appendix F: basic size of cover 20 x 26 in, of text 25 x 38 in; 100 lb cover is 270 g/m2.
    expect(otherWeight('100 lb cover')).toBe('= 270 g/m²');
    expect(otherWeight('300 gsm')).toBe('= 111 lb cover, 203 lb text');
    expect(otherWeight('100 lb')).toBeUndefined();
    expect(otherCaliper('12 pt')).toBe('= 0.305 mm');
    expect(otherCaliper('10 mil')).toBe('= 0.254 mm');
    expect(otherCaliper('300 um')).toBe('= 11.8 pt');
    expect(otherCaliper('0.3 mm')).toBe('= 11.8 pt');
    expect(otherCaliper('thick')).toBeUndefined();
  });

  it('is offered in the sizes that sheets are sold in, those of the own unit first', () => {
    expect(sizesOffered('in')[0]).toEqual({ value: '8.5 x 11 in', label: '8.5 × 11 in' });
    expect(sizesOffered('mm')[0]).toEqual({ value: '210 x 297 mm', label: 'A4, 210 x 297 mm' });
    expect(sizesOffered('in')).toHaveLength(sizesOffered('mm').length);
  });
});
