// Choosing a candidate lays the bench out: its sheet, its way of working, its count of sheets.
import { describe, expect, it } from 'vitest';
import { nameOfEdit } from '../../../shared/job/commands.ts';
import { countJob } from '../../../shared/job/counts.ts';
import { edit } from '../../../shared/job/edit.ts';
import { JOB_SCHEMA, type Job } from '../../../shared/job/job.ts';
import { readJob, writeJob } from '../../../shared/job/jobFile.ts';
import { layOutJob } from '../../../shared/job/layOutJob.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import { costCandidates } from '../../../shared/plan/costCandidates.ts';
import { layOutCandidates } from '../../../shared/plan/layOutCandidates.ts';
import { takeCandidate, takenPlanOf } from '../../../shared/plan/takeCandidate.ts';
import { supperBrief, supperWith } from '../../kit/briefs.ts';
import { granted } from '../../kit/granted.ts';
import { briefOf, coverage } from '../../kit/plans.ts';

const library = startingLibrary();
const brief = briefOf(supperBrief);
const job: Job = granted(layOutJob({ schema: JOB_SCHEMA, brief, art: [], arrangement: [] }));
const plan = layOutCandidates(brief, library);
const candidates = costCandidates(plan, library, coverage);

describe('choosing a candidate', () => {
  it('lays out the very sheet that was planned, and loads as many sheets, whichever is chosen', () => {
    const odd = candidates.filter((one) => {
      const taken = granted(takeCandidate(job, one));
      const { sheets, needed } = countJob(taken);
      return !(
        sheets === one.count.sheets &&
        needed === one.count.needed &&
        JSON.stringify(taken.arrangement) === JSON.stringify(one.arrangement) &&
        taken.brief.sheet.size === one.sheet &&
        taken.brief.work === one.work
      );
    });
    expect(odd.map(({ id }) => id)).toEqual([]);
  });

  it('takes over what the printer cannot print, how it holds the sheet, and whether the paper’s sides are alike', () => {
    const one = candidates.find(({ paper }) => paper.coated === 'one-side');
    if (one === undefined) throw new Error('There is a paper that is coated on one side');
    const taken = granted(takeCandidate(job, one)).brief;
    expect(taken.sheet).toEqual({
      size: one.sheet,
      unprintable: one.feed.unprintable,
      hold: one.feed.hold,
      sidesAlike: false,
    });
    expect(taken.plan).toEqual({
      printer: one.printer.name,
      feed: one.feed.name,
      paper: one.paper.name,
      ...(one.source.is === 'sheet' ? {} : { cutFrom: expect.any(String) }),
      lies: one.lies,
    });
  });

  it('leaves the customer’s order as it was, so that the job can be planned again and again', () => {
    const one = candidates.find(({ lies }) => lies === 'upright');
    if (one === undefined) throw new Error('There is a candidate whose pieces stand upright');
    const taken = granted(takeCandidate(job, one));
    expect(taken.brief.pieces).toEqual(brief.pieces);
    expect(taken.arrangement.every(({ head }) => head === 0 || head === 180)).toBe(true);
    const again = layOutCandidates(taken.brief, library).candidates.map(({ id }) => id);
    expect(again).toContain(one.id);
    expect(again).toContain(one.id.replace(/upright$/, 'either'));
  });

  it('is an edit with a name, whose job is saved and opened as it is', () => {
    const [best] = candidates;
    if (best === undefined) throw new Error('There is a candidate');
    const command = { do: 'take-plan', taken: takenPlanOf(best) } as const;
    expect(nameOfEdit(command)).toBe(`Plan for ${best.printer.name}`);
    const taken = granted(edit(job, command));
    expect(taken).toEqual(granted(takeCandidate(job, best)));
    const opened = granted(readJob(JSON.parse(writeJob(taken))));
    expect(opened).toEqual(taken);
  });

  it('keeps its share of overs when more is ordered later', () => {
    const [best] = candidates;
    if (best === undefined) throw new Error('There is a candidate');
    const taken = granted(takeCandidate(job, best));
    expect(taken.brief.overs.least).toBe(best.count.overs + best.count.makeReady);
    expect(taken.brief.overs.percent).toBe(best.count.oversBy.percent);
    const more = granted(edit(taken, { do: 'set-quantity', piece: 'Supper', quantity: 12_000 }));
    expect(countJob(more).overs).toBe(Math.ceil((countJob(more).needed * taken.brief.overs.percent) / 100));
  });

  it('is refused once the job has changed so that it no longer fits', () => {
    const two = candidates.find(({ work }) => work.style === 'work-and-turn');
    if (two === undefined) throw new Error('There is a candidate of one form');
    const larger = { ...job, brief: briefOf(supperWith({}, { trim: '10 x 15 in' })) };
    const refused = takeCandidate(larger, two);
    expect(refused.ok ? '' : refused.fault.code).toBe('no-room-after-turning');
    const plain = { ...job, brief: briefOf(supperWith({ work: 'simplex' }, { back: undefined })) };
    const oneSided = takeCandidate(plain, two);
    expect(oneSided.ok ? '' : oneSided.fault.message).toContain('nothing to print on side 2');
  });
});
