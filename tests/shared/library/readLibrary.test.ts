// A library of printers and papers is read whole or refused with the field that is wrong.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LIBRARY_SCHEMA } from '../../../shared/library/library.ts';
import { readLibrary, readLibraryFields, writeLibrary } from '../../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import { points } from '../../../shared/units/length.ts';
import { card, libraryWith, rates, trayPrinter, writtenLibrary } from '../../kit/libraries.ts';

const complaints = (json: unknown) => {
  const read = readLibraryFields(json);
  return read.ok ? [] : read.fault.map(({ field, says }) => `${field}: ${says}`);
};
const [tray] = trayPrinter.feeds;
const [sheet] = card.forms;
const withPrinter = (changes: object) => writtenLibrary({ printers: [{ ...trayPrinter, ...changes }] });
const withFeed = (changes: object) => withPrinter({ feeds: [{ ...tray, ...changes }] });
const withPaper = (changes: object) => writtenLibrary({ papers: [{ ...card, ...changes }] });
const withForm = (form: object) => withPaper({ forms: [form] });

describe('a library', () => {
  it('comes back as it was written, with lengths, weights and calipers as they were typed', () => {
    for (const library of [libraryWith(), startingLibrary()]) {
      const text = writeLibrary(library);
      expect(readLibrary(JSON.parse(text))).toEqual({ ok: true, value: library });
      expect(text.endsWith('}\n')).toBe(true);
    }
    const written = JSON.parse(writeLibrary(libraryWith()));
    expect(written.papers[0]).toMatchObject({ weight: '100 lb cover', caliper: '10 pt' });
    expect(written.papers[0].forms[0].size).toEqual(['11 in', '17 in']);
    expect(written.printers[0].feeds[0].unprintable.lead).toBe('0.2 in');
    expect(written.rates.cutting.tallestPile).toBe('2 in');
  });

  it('takes lengths without a unit in its own unit', () => {
    const library = libraryWith({ units: 'mm' });
    expect(points(library.printers[0]?.feeds[0].unprintable.lead as never)).toBeCloseTo((0.2 * 72) / 25.4, 9);
  });

  it('begins with printers that feed by hand, from a tray and turn sheets themselves, and papers of every form', () => {
    const { printers, papers } = startingLibrary();
    const feeds = printers.flatMap((printer) => printer.feeds);
    expect(new Set(feeds.map((feed) => feed.attended))).toEqual(new Set([true, false]));
    expect(new Set(feeds.map((feed) => feed.turnsItself))).toEqual(new Set([true, false]));
    const forms = papers.flatMap((paper) => paper.forms);
    expect(new Set(forms.map((form) => form.is))).toEqual(new Set(['sheet', 'parent', 'roll']));
    expect(new Set(forms.map((form) => form.price.per))).toEqual(new Set(['sheet', 'ream', 'kg', 'metre']));
  });

  it('is what its page of the documents shows', () => {
    const page = readFileSync(new URL('../../../build/docs/library.md', import.meta.url), 'utf8');
    const shown = /# The library[\s\S]*?```json\n([\s\S]*?)```/.exec(page)?.[1] ?? '';
    expect(complaints(JSON.parse(shown))).toEqual([]);
  });

  it('may hold nothing yet', () => {
    expect(complaints(writtenLibrary({ printers: [], papers: [] }))).toEqual([]);
  });

  it('takes the sides of a paper for alike, unless one of them is coated or it says otherwise', () => {
    const alike = (changes: object) => {
      const read = readLibrary(withPaper(changes));
      return read.ok && read.value.papers[0]?.sidesAlike;
    };
    expect(alike({})).toBe(true);
    expect(alike({ coated: 'both-sides' })).toBe(true);
    expect(alike({ coated: 'both-sides', sidesAlike: false })).toBe(false);
    expect(alike({ coated: 'one-side' })).toBe(false);
  });
});

describe('a library that is wrong', () => {
  it.each([
    [
      withFeed({ most: '13 by 19' }),
      /^printers\[0\]\.feeds\[0\]\.most: "13 by 19" is not a width and a height/,
    ],
    [withFeed({ thickest: 'thin' }), /^printers\[0\]\.feeds\[0\]\.thickest: "thin" is not a caliper/],
    [
      withFeed({ unprintable: { lead: -1, tail: 0, left: 0, right: 0 } }),
      /^printers\[0\]\.feeds\[0\]\.unprintable\.lead: must not be negative/,
    ],
    [
      withFeed({ unprintable: { lead: 1, tail: 0, left: 0 } }),
      /^printers\[0\]\.feeds\[0\]\.unprintable\.right: is missing/,
    ],
    [
      withFeed({ hold: { across: 'middle', along: 'lead' } }),
      /hold\.across: must be one of "left", "right", "centre"/,
    ],
    [withFeed({ hand: { load: -1, align: 0, turn: 0 } }), /hand\.load: must not be negative/],
    [withPrinter({ feeds: [] }), /^printers\[0\]\.feeds: must be a list of feeds with at least one in it/],
    [
      withPrinter({ qualities: [] }),
      /^printers\[0\]\.qualities: must be a list of qualities with at least one in it/,
    ],
    [
      withPrinter({ makeReady: { minutes: 5, sheets: 1.5 } }),
      /makeReady\.sheets: must be a whole number of at least 0/,
    ],
    [withPrinter({ wearPerSide: 'little' }), /wearPerSide: must be a number/],
    [
      withPrinter({ ink: { pricePerMl: 1, model: { source: 'guess' } } }),
      /ink\.model\.source: must be a "rule-of-thumb" or "fitted"/,
    ],
    [withPrinter({ colours: 6 }), /^printers\[0\]: has no field "colours"/],
    [withPaper({ weight: 'heavy' }), /^papers\[0\]\.weight: "heavy" is not the weight of a paper/],
    [withPaper({ caliper: '10' }), /^papers\[0\]\.caliper: "10" is not a caliper/],
    [withPaper({ forms: [] }), /^papers\[0\]\.forms: must be a list of forms with at least one in it/],
    [
      withForm({ ...sheet, is: 'leaf' }),
      /^papers\[0\]\.forms\[0\]\.is: must be a "sheet", a "parent" or a "roll"/,
    ],
    [
      withForm({ ...sheet, size: '0 x 17 in' }),
      /^papers\[0\]\.forms\[0\]\.size: must be longer than nothing/,
    ],
    [
      withForm({ ...sheet, price: { amount: 1, per: 'metre' } }),
      /price\.per: must be one of "sheet", "ream", "kg"/,
    ],
    [
      withForm({ is: 'roll', width: 17, price: { amount: 1, per: 'ream' } }),
      /price\.per: must be one of "metre", "kg"/,
    ],
    [
      withForm({ ...sheet, is: 'parent', cutTo: ['1 x 2 in', '3'] }),
      /^papers\[0\]\.forms\[0\]\.cutTo\[1\]: "3" is not a width and a height/,
    ],
    [
      writtenLibrary({ rates: { ...rates, labourPerHour: 1e7 } }),
      /^rates\.labourPerHour: must be at most a million/,
    ],
    [
      writtenLibrary({ rates: { ...rates, overs: [{ from: 0, percent: 2000, least: 0 }] } }),
      /^rates\.overs\[0\]\.percent: must be at most 1000/,
    ],
    [writtenLibrary({ rates: undefined }), /^rates: is missing/],
    [writtenLibrary({ rates: 3 }), /^rates: must be a group of fields/],
    [writtenLibrary({ currency: '' }), /^currency: must not be empty/],
    [writtenLibrary({ units: 'cubit' }), /^units: must be one of "in", "mm", "pt"/],
  ])('says in which field (%#)', (json, says) => {
    expect(complaints(json)).toHaveLength(1);
    expect(complaints(json)[0]).toMatch(says);
    const read = readLibrary(json);
    expect(read.ok ? '' : read.fault.code).toBe('library-invalid');
    expect(read.ok ? '' : read.fault.message).toContain('The library cannot be used.');
  });

  it('names nothing twice', () => {
    const twice = { ...writtenLibrary({ printers: [trayPrinter, trayPrinter], papers: [card, card] }) };
    expect(complaints(twice)).toEqual([
      'printers[1].name: "Tray printer" is the name of another printer',
      'papers[1].name: "Card" is the name of another paper',
    ]);
    expect(complaints(withPrinter({ feeds: [tray, tray] }))).toEqual([
      'printers[0].feeds[1].name: "Tray" is the name of another feed',
    ]);
    const [usual] = trayPrinter.qualities;
    expect(complaints(withPrinter({ qualities: [usual, usual] }))).toEqual([
      'printers[0].qualities[1].name: "Usual" is the name of another quality',
    ]);
  });

  it('has no smallest sheet that is larger than the largest, neither way', () => {
    const says =
      'printers[0].feeds[0].least: the smallest sheet (14 × 6 in) must not be larger than the largest (13 × 19 in), neither across the feed nor along it';
    expect(complaints(withFeed({ least: '14 x 6 in' }))).toEqual([says]);
    expect(complaints(withFeed({ least: '4 x 20 in' }))).toEqual([says.replace('14 × 6', '4 × 20')]);
    expect(complaints(withFeed({ least: '13 x 19 in' }))).toEqual([]);
  });

  it('has no paper that is coated on one side and alike on both', () => {
    expect(complaints(withPaper({ coated: 'one-side', sidesAlike: true }))).toEqual([
      'papers[0].sidesAlike: a paper that is coated on one side has sides that are not alike',
    ]);
  });

  it('has overs that begin at more and more sheets', () => {
    const overs = (...from: number[]) =>
      writtenLibrary({ rates: { ...rates, overs: from.map((f) => ({ from: f, percent: 1, least: 1 })) } });
    expect(complaints(overs(0, 10, 20))).toEqual([]);
    expect(complaints(overs(0, 10, 10))).toEqual([
      'rates.overs[2].from: must be more than in the entry before',
    ]);
  });

  it('is no library without a version, and none of a later one', () => {
    const without = readLibrary({ ...writtenLibrary(), schema: undefined });
    expect(without.ok ? '' : without.fault.message).toBe(
      'This is not a library file. It does not say which version of the library file it is ("schema").',
    );
    const later = readLibrary({ schema: LIBRARY_SCHEMA + 1 });
    expect(later.ok ? '' : later.fault).toMatchObject({
      code: 'library-too-new',
      message: expect.stringContaining(
        `library file ${LIBRARY_SCHEMA + 1}; this program reads up to ${LIBRARY_SCHEMA}`,
      ),
    });
  });
});
