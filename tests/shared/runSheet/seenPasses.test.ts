// What the run sheet shows of both passes agrees with paper that is printed, turned and cut in space.
import { describe, expect, it } from 'vitest';
import { turnOf, type Work } from '../../../shared/geometry/work.ts';
import { WORKS } from '../../../shared/job/compareWorks.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import { formsOfJob } from '../../../shared/job/nameJobFiles.ts';
import { type SeenPass, seenPasses } from '../../../shared/runSheet/seenPasses.ts';
import { cutOut, type Ink, print } from '../../kit/paper.ts';
import { edgeAt, onPaper, poseAfter } from '../../kit/paperInPasses.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

/** Prints both sides of a sheet of the job, the second one on the turned paper. */
function printSheet(job: Job): readonly Ink[] {
  const { size } = sheetOf(job.brief);
  const turn = turnOf(job.brief.work);
  return formsOfJob(job).flatMap((form) =>
    form.sides.flatMap((side) => {
      const pose = poseAfter(side === 1 ? undefined : turn, size);
      const faces = form.placements.map(({ piece, face, trim, head }) => ({
        art: `${piece} ${face} on side ${side}`,
        trim,
        head,
      }));
      return print(faces, pose);
    }),
  );
}

/** How the paper of a job lies in this pass. */
const turnIn = (job: Job, pass: SeenPass) => (pass.side === 1 ? undefined : turnOf(job.brief.work));

const twoSided = WORKS.filter((work) => turnOf(work) !== undefined);
const heldAt = (across: string, work: Work) =>
  jobOf({ ...CARDS, sheet: { ...CARDS.sheet, hold: { across, along: 'lead' } } }, work);

describe('what is seen of a sheet', () => {
  it.each(KINDS)('shows under every number the very piece that is cut out there: %s', (_name, job) => {
    const ink = printSheet(job);
    for (const pass of seenPasses(job)) {
      expect(pass.pieces).toHaveLength(job.arrangement.length);
      for (const seen of pass.pieces) {
        const position = job.arrangement[seen.number! - 1]!;
        const marks = cutOut(ink, position.trim).map(({ mark }) => mark);
        const art = `${seen.piece} ${seen.face} on side ${pass.side}`;
        expect(marks.includes(`${art} head`)).toBe(seen.printed);
        expect(seen.piece).toBe(position.piece);
      }
    }
  });

  it.each(twoSided)('says truly which edge of the paper leads and which meets the guide: %j', (work) => {
    for (const across of ['left', 'right'] as const) {
      const job = heldAt(across, work);
      const { size } = sheetOf(job.brief);
      for (const pass of seenPasses(job)) {
        expect(pass.leads).toBe(edgeAt(turnIn(job, pass), size, 'lead'));
        expect(pass.guide).toBe(across);
        expect(pass.meets).toBe(edgeAt(turnIn(job, pass), size, across));
      }
    }
  });

  it.each(twoSided)('shows the pencil line where the turn takes it: %j', (work) => {
    for (const across of ['left', 'right', 'centre']) {
      const job = heldAt(across, work);
      const { size } = sheetOf(job.brief);
      const { w, h } = size;
      const [first, second] = seenPasses(job);
      const [one, two] = [first!, second!].map((pass) => {
        const { side, at } = pass.pencil;
        return onPaper(turnIn(job, pass), size, side === 'left' ? 0 : w, at === 'lead' ? h : 0);
      });
      expect(one).toEqual({ x: across === 'right' ? w : 0, y: h });
      expect(two!.x).toBeCloseTo(one!.x);
      expect(two!.y).toBeCloseTo(one!.y);
    }
  });

  it('meets no edge where the printer centres the sheet', () => {
    const job = heldAt('centre', { style: 'work-and-turn' });
    expect(seenPasses(job).map(({ guide, meets }) => [guide, meets])).toEqual([
      [undefined, undefined],
      [undefined, undefined],
    ]);
  });
});
