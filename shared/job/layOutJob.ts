// Laying a job out: the pieces of its brief arranged on its sheet as many up as the guillotine allows.
import { ok, type Result } from '../fault/result.ts';
import { type Arranged, arrange } from '../layout/arrange.ts';
import type { Lies } from '../layout/lies.ts';
import { points } from '../units/length.ts';
import type { Brief, Piece } from './brief.ts';
import { designsOf, type Job, sheetOf, trimOf } from './job.ts';

/** Where the pieces of a brief lie, and what there is to say about it. */
export function layOutBrief(brief: Brief): Result<Arranged> {
  const { size, unprintable } = sheetOf(brief);
  return arrange({
    sheet: size,
    unprintable,
    work: brief.work,
    gutter: points(brief.gutter),
    centring: brief.centring,
    unit: brief.units,
    designs: designsOf(brief).map((design, i) => {
      const piece = brief.pieces[i];
      if (piece === undefined) throw new Error('Every design is a piece of the brief');
      return { ...design, trim: trimOf(piece), lies: liesOf(brief, piece), quantity: piece.quantity };
    }),
  });
}

/** The job with a fresh arrangement; its old one is replaced whole. */
export function layOutJob(job: Job): Result<Job> {
  const arranged = layOutBrief(job.brief);
  return arranged.ok ? ok({ ...job, arrangement: arranged.value.positions }) : arranged;
}

/** How a piece may lie: as the customer said, and where that is either way, as the plan says. */
function liesOf(brief: Brief, { lies }: Piece): Lies {
  return lies === 'either' ? (brief.plan?.lies ?? lies) : lies;
}
