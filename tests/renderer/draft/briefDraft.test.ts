import { expect, it } from 'vitest';
import { readDraft } from '../../../renderer/brief/readDraft.ts';
import { briefDraftOf, emptyDraft, sizeTyped, writtenBriefOf } from '../../../renderer/draft/briefDraft.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { lengthOf } from '../../../shared/units/length.ts';
import { supperJob } from '../kit/supperJob.ts';

it('a brief that is made a draft and read again is the same brief', () => {
  const read = readBrief(writtenBriefOf(briefDraftOf(supperJob.brief)));
  expect(read).toEqual({ ok: true, value: supperJob.brief });
});

it('a plan that was taken is kept as long as its sheet stays what it made it', () => {
  const plan = { printer: 'Printer', feed: 'Tray', paper: 'Card', lies: 'upright' } as const;
  const brief = { ...supperJob.brief, plan };
  const draft = briefDraftOf(brief);
  expect(readDraft(draft)).toEqual({ ok: true, value: brief });
  const renamed = readDraft({ ...draft, title: 'Lunch' });
  expect(renamed.ok && renamed.value.plan).toEqual(plan);
  for (const change of [
    { sheet: '12 x 18 in' },
    { sidesAlike: false },
    { hold: { across: 'right', along: 'lead' } },
  ] as const) {
    const changed = readDraft({ ...draft, style: 'work-and-back', ...change });
    expect(changed.ok && changed.value.plan).toBeUndefined();
  }
});

it('a fraction stays as it was typed', () => {
  const draft = briefDraftOf(supperJob.brief);
  const [piece] = draft.pieces;
  if (piece === undefined) throw new Error('The job has a piece');
  const read = readDraft({ ...draft, pieces: [{ ...piece, bleed: '1/8' }] });
  expect(read.ok && read.value.pieces[0]?.bleed.typed).toBe('1/8 in');
});

it('a size says its unit once where one serves both', () => {
  expect(sizeTyped([lengthOf(5, 'in'), lengthOf(7, 'in')])).toBe('5 x 7 in');
  expect(sizeTyped([lengthOf(5, 'in'), lengthOf(178, 'mm')])).toBe('5 in x 178 mm');
});

it('every field that is wrong is told where it stands', () => {
  const draft = emptyDraft({ units: 'mm', theme: 'light', fileNames: '{job}', marks: true });
  const piece = { ...briefDraftOf(supperJob.brief).pieces[0], quantity: '', trim: 'large' };
  const empty = readDraft(draft);
  expect(empty.ok ? {} : Object.keys(empty.fault)).toEqual(expect.arrayContaining(['title', 'pieces']));
  const read = readDraft({ ...draft, title: 'Tags', pieces: [piece as (typeof draft.pieces)[number]] });
  expect(read.ok ? {} : read.fault).toEqual({ 'pieces[0].quantity': 'must be a whole number of at least 1' });
});

it('a new draft begins as the person has set it', () => {
  const draft = emptyDraft({ units: 'mm', theme: 'light', fileNames: '{job} {side}', marks: false });
  expect(draft).toMatchObject({
    units: 'mm',
    sheet: '320 x 450 mm',
    fileNames: '{job} {side}',
    marks: false,
  });
});
