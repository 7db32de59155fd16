// Edits that change what is ordered or how it is worked, and with it what lies on the sheet.
import { ok, type Result, refuse } from '../fault/result.ts';
import type { Work } from '../geometry/work.ts';
import type { Brief, Piece } from './brief.ts';
import type { OrderCommand, TakenArt } from './commands.ts';
import { unfitFor } from './compareWorks.ts';
import { type FoundArt, facesOf, type Job } from './job.ts';
import { layOutJob } from './layOutJob.ts';
import { withWork } from './oneForm.ts';
import { refused } from './refused.ts';
import { takePlan } from './takePlan.ts';

export function editOrder(job: Job, command: OrderCommand): Result<Job> {
  switch (command.do) {
    case 'set-work':
      return setWork(job, command.work);
    case 'take-plan':
      return takePlan(job, command.taken);
    case 'set-marks':
      return ok(withBrief(job, { ...job.brief, marks: command.marks }));
    case 'set-file-names':
      return setFileNames(job, command.pattern.trim());
    case 'take-art':
      return takeArt(job, command.faces);
    case 'change-brief':
      return ok(command.laid);
  }
}

/** Another way of working lays the sheet out afresh. */
function setWork(job: Job, work: Work): Result<Job> {
  const brief = withWork(job.brief, work);
  const unfit = unfitFor(brief);
  return unfit === undefined ? layOutJob(withBrief(job, brief)) : refuse(unfit);
}

function setFileNames(job: Job, pattern: string): Result<Job> {
  if (pattern === '') return refuse(refused('The files need a pattern for their names.'));
  return ok(withBrief(job, { ...job.brief, fileNames: pattern }));
}

/** Each face is printed from what was taken for it; what its art was before is forgotten. */
function takeArt(job: Job, taken: readonly TakenArt[]): Result<Job> {
  const known = facesOf(job.brief);
  const stranger = taken.find(
    ({ found }) => !known.some((k) => k.piece.name === found.piece && k.name === found.face),
  );
  if (stranger !== undefined) {
    return refuse(refused(`The job has no ${stranger.found.face} of "${stranger.found.piece}".`));
  }
  const pieces = taken.reduce(
    (all, { file, page, found }) =>
      all.map((piece) => (piece.name === found.piece ? withFace(piece, found, file, page) : piece)),
    job.brief.pieces,
  );
  const isTaken = (a: FoundArt) => taken.some((t) => t.found.piece === a.piece && t.found.face === a.face);
  return ok({
    ...withBrief(job, { ...job.brief, pieces }),
    art: [...job.art.filter((a) => !isTaken(a)), ...taken.map((t) => t.found)],
  });
}

function withFace(piece: Piece, { face }: FoundArt, file: string, page: number): Piece {
  const before = piece[face];
  return before === undefined ? piece : { ...piece, [face]: { ...before, file, page } };
}

function withBrief(job: Job, brief: Brief): Job {
  return { ...job, brief };
}
