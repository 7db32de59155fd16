// Jobs whose run sheets and tickets are tried: every way of working, one design and many, inches and millimetres.
import type { Work } from '../../shared/geometry/work.ts';
import { JOB_SCHEMA, type Job } from '../../shared/job/job.ts';
import { layOutBrief } from '../../shared/job/layOutJob.ts';
import { withWork } from '../../shared/job/oneForm.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import { granted } from './hostRig.ts';

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
        trim: { x: 9, y: 9, w: 100, h: 100 },
        said: 'The trim is its TrimBox.',
      })),
  );
  return { schema: JOB_SCHEMA, brief: worked, art, arrangement: granted(layOutBrief(worked)).positions };
}

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
  pieces: [
    {
      name: 'Orchard',
      trim: [85, 55],
      bleed: 3,
      quantity: 250,
      front: { file: 'orchard.pdf' },
      back: { file: 'orchard.pdf', page: 2 },
    },
  ],
};
