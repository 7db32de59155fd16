// Jobs whose run sheets and tickets are tried: every way of working, one design and many, inches and millimetres.
import { SUPPER_BRIEF, TABLE_BRIEF } from '../../electron/demo/briefs.ts';
import type { Work } from '../../shared/geometry/work.ts';
import { JOB_SCHEMA, type Job } from '../../shared/job/job.ts';
import { layOutBrief } from '../../shared/job/layOutJob.ts';
import { withWork } from '../../shared/job/oneForm.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import { granted } from './granted.ts';

/** A job laid out from a brief as a person would write it, worked in another way if one is given. */
export function jobOf(brief: object, work?: Work): Job {
  const read = granted(readBrief(brief));
  const worked = work === undefined ? read : withWork(read, work);
  const art = worked.pieces.flatMap((piece) =>
    (['front', 'back'] as const)
      .filter((face) => piece[face] !== undefined)
      .map((face) => ({
        piece: piece.name,
        face,
        sha256: 'a'.repeat(64),
        trim: { x: 9, y: 12, w: 100, h: 100 },
        said: 'The trim is its TrimBox.',
      })),
  );
  return { schema: JOB_SCHEMA, brief: worked, art, arrangement: granted(layOutBrief(worked)).positions };
}

const CARD = {
  name: 'Orchard',
  trim: [85, 55],
  bleed: 3,
  quantity: 250,
  front: { file: 'orchard.pdf' },
  back: { file: 'orchard.pdf', page: 2 },
};

/** Cards of 85 x 55 mm with two sides on SRA3 paper. */
export const CARDS = {
  units: 'mm',
  title: 'Cards of the orchard',
  sheet: {
    size: [320, 450],
    unprintable: { lead: 5, tail: 5, left: 4, right: 4 },
    hold: { across: 'left', along: 'lead' },
  },
  work: 'work-and-turn',
  gutter: 6,
  pieces: [CARD],
};

/** A hundred and more tags on a sheet. */
const TAGS = {
  ...CARDS,
  title: 'Tags for a hundred jars',
  gutter: 4,
  pieces: [{ ...CARD, name: 'Tag', trim: [25, 35], bleed: 2, quantity: 5000 }],
};

/** Names as long as people make them, with and without spaces. */
const LONG_NAMES = {
  ...CARDS,
  title:
    'A gathering of everybody who ever sang in the choir of the village by the lake, second printing with corrections',
  fileNames: '{job}_form-{form}_{side}_{sheets}-sheets_{date}.pdf',
  pieces: [
    { ...CARD, name: 'Invitation to the gathering of everybody who ever sang in the choir', quantity: 100 },
    {
      ...CARD,
      name: 'Reply_card_with_a_name_without_any_space_in_it_at_all',
      trim: [105, 74],
      quantity: 100,
    },
  ],
};

/** Eight designs on one sheet. */
const MANY_DESIGNS = {
  ...CARDS,
  title: 'Eight months',
  work: 'work-and-back',
  pieces: Array.from({ length: 8 }, (_, i) => ({ ...CARD, name: `Month ${i + 1}`, quantity: 40 + i })),
};

/** Cards with a printed back beside cards without one, on paper whose sides differ. */
const ONE_BLANK = {
  ...CARDS,
  work: 'work-and-back',
  sheet: { ...CARDS.sheet, sidesAlike: false, hold: { across: 'right', along: 'lead' } },
  pieces: [CARD, { ...CARD, name: 'Blank behind', back: undefined }],
};

/** A sheet that lies across the feed, held in the middle. */
const WIDE = {
  ...CARDS,
  sheet: { ...CARDS.sheet, size: [450, 320], hold: { across: 'centre', along: 'centre' } },
};

/** A job of every kind. */
export const KINDS: readonly (readonly [string, Job])[] = [
  ['invitations turned side to side, in inches', jobOf(SUPPER_BRIEF)],
  ['menus and tags turned end to end, in inches', jobOf(TABLE_BRIEF)],
  ['more than a hundred tags tumbled', jobOf(TAGS, { style: 'work-and-tumble' })],
  ['long names', jobOf(LONG_NAMES, { style: 'work-and-back', turn: 'side-to-side' })],
  ['eight designs', jobOf(MANY_DESIGNS)],
  ['pieces that are blank behind', jobOf(ONE_BLANK)],
  ['a wide sheet held in the middle', jobOf(WIDE)],
  ['cards turned by the printer, end to end', jobOf(CARDS, { style: 'perfecting', turn: 'end-to-end' })],
  ['cards turned by the printer, side to side', jobOf(CARDS, { style: 'perfecting', turn: 'side-to-side' })],
  ['cards on one side', jobOf({ ...CARDS, work: 'simplex', pieces: [{ ...CARD, back: undefined }] })],
];
