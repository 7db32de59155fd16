// The draft of a library: what stands in the fields of its editor, and what is taken of it.
import { describe, expect, it } from 'vitest';
import type { DraftPrinter, LibraryDraft } from '../../../renderer/library/draft/draft.ts';
import { libraryDraftOf } from '../../../renderer/library/draft/draftOf.ts';
import { inHundred, shareIn } from '../../../renderer/library/draft/hundredth.ts';
import { takeDraft } from '../../../renderer/library/draft/takeDraft.ts';
import { writtenLibraryOf } from '../../../renderer/library/draft/writtenOf.ts';
import { readLibraryFields } from '../../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';

const library = startingLibrary();
const draft = libraryDraftOf(library);
const before = { library, draft };

const withPrinter = (changed: Partial<DraftPrinter>, at = 0): LibraryDraft => ({
  ...draft,
  printers: draft.printers.map((printer, i) => (i === at ? { ...printer, ...changed } : printer)),
});
const withFeed = (changed: Partial<DraftPrinter['feeds'][number]>): LibraryDraft => {
  const [feed] = draft.printers[0]?.feeds ?? [];
  if (feed === undefined) throw new Error('The first printer has a feed');
  return withPrinter({ feeds: [{ ...feed, ...changed }] });
};

describe('a library that is made a draft and read again', () => {
  it('is the same library', () => {
    expect(readLibraryFields(writtenLibraryOf(draft))).toEqual({ ok: true, value: library });
  });

  it('keeps what rolls and parent sheets are cut to, each size with its unit', () => {
    const [paper] = draft.papers;
    const [form] = paper?.forms ?? [];
    if (paper === undefined || form === undefined) throw new Error('There is a paper');
    const forms = [
      { ...form, is: 'parent' as const, size: '26 x 40 in', cutTo: '13 x 19 in; 320 x 450 mm' },
      {
        ...form,
        key: 'roll',
        is: 'roll' as const,
        size: '17 in',
        per: 'metre' as const,
        cutTo: '12 in; 18 in',
      },
    ];
    const changed = { ...draft, papers: [{ ...paper, forms }] };
    const { kept, wrongs } = takeDraft(changed, before);
    expect(wrongs).toEqual({});
    expect(kept.draft.papers[0]?.forms.map(({ cutTo }) => cutTo)).toEqual([
      '13 x 19 in; 320 x 450 mm',
      '12 in; 18 in',
    ]);
    expect(kept.library.papers[0]?.forms[1]).toMatchObject({
      cutTo: [{ typed: '12 in' }, { typed: '18 in' }],
    });
  });

  it('gives a length that was typed without a unit the unit of the library, to be seen at once', () => {
    const { shown } = takeDraft(withFeed({ least: '4 x 6', thickest: '' }), before);
    expect(shown.printers[0]?.feeds[0]).toMatchObject({ least: '4 x 6 in', thickest: '' });
  });
});

describe('what is wrong in a draft', () => {
  it('is told field by field, and its printer is kept as it was while the others are taken', () => {
    const changed = withPrinter({ wearPerSide: '0.5' }, 1);
    const { kept, wrongs, shown } = takeDraft(
      {
        ...changed,
        printers: changed.printers.with(0, { ...changed.printers[0], wearPerSide: 'little' } as DraftPrinter),
      },
      before,
    );
    expect(wrongs).toEqual({ 'printers[0].wearPerSide': 'must be a number' });
    expect(kept.library.printers.map(({ wearPerSide }) => wearPerSide)).toEqual([0.02, 0.5, 0.05]);
    expect(shown.printers[0]?.wearPerSide).toBe('little');
  });

  it('is told of numbers, names and measures at once', () => {
    const [paper] = draft.papers;
    const papers = [
      { ...paper, name: ' ', weight: '100 lb', caliper: 'thick' } as (typeof draft.papers)[number],
    ];
    const { wrongs } = takeDraft(
      { ...withPrinter({ makeReady: { minutes: '-1', sheets: '2.5' } }), papers },
      before,
    );
    expect(wrongs).toMatchObject({
      'printers[0].makeReady.minutes': 'must not be negative',
      'printers[0].makeReady.sheets': 'must be a whole number of at least 0',
      'papers[0].name': 'must not be empty',
    });
    expect(wrongs['papers[0].weight']).toContain('pounds need the grade');
    expect(wrongs['papers[0].caliper']).toContain('"thick" is not a caliper.');
  });

  it('in the rates leaves the rates as they were', () => {
    const rates = { ...draft.rates, labourPerHour: '1,000' };
    const { kept, wrongs } = takeDraft({ ...withPrinter({ name: 'Press by the door' }), rates }, before);
    expect(Object.keys(wrongs)).toEqual(['rates.labourPerHour']);
    expect(kept.library.rates.labourPerHour).toBe(library.rates.labourPerHour);
    expect(kept.library.printers[0]?.name).toBe('Press by the door');
  });

  it('leaves out a new printer until it is in order', () => {
    const added = { ...draft.printers[0], key: 'new', name: '' } as DraftPrinter;
    const { kept } = takeDraft({ ...draft, printers: [...draft.printers, added] }, before);
    expect(kept.library.printers).toHaveLength(3);
  });

  it('may be a name that stands twice: only the later one stays as it was', () => {
    const twice = withPrinter({ name: 'Hand-fed sheet printer', wearPerSide: '0.3' }, 1);
    const { kept, wrongs } = takeDraft(twice, before);
    expect(wrongs).toEqual({
      'printers[1].name': '"Hand-fed sheet printer" is the name of another printer',
    });
    expect(kept.library).toEqual(library);
  });

  it('may be a name that was given to another meanwhile: neither is taken, nor anything lost', () => {
    const swapped = withPrinter({ name: 'Hand-fed sheet printer' }, 1);
    const both = {
      ...swapped,
      printers: swapped.printers.with(0, { ...draft.printers[0], name: '' } as DraftPrinter),
    };
    const { kept, shown } = takeDraft(both, before);
    expect(kept.library).toEqual(library);
    expect(shown.printers.map(({ name }) => name)).toEqual([
      '',
      'Hand-fed sheet printer',
      'Two-sided sheet printer',
    ]);
  });
});

it('shares are typed in a hundred and kept as parts of one', () => {
  expect([0.5, 0.07, 0.85, 2.1].map(inHundred)).toEqual(['50', '7', '85', '210']);
  expect(['50', '7', '8,5', 'half'].map(shareIn)).toEqual([0.5, 0.07, 0.085, 'half']);
});
