// `lay`: a brief and its art become a job, laid out as many up as the guillotine allows.
import { resolve } from 'node:path';
import { around } from '../../shared/geometry/rect.ts';
import { paperError } from '../../shared/geometry/register.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { CAUTIONS } from '../../shared/job/cautions.ts';
import { countJob } from '../../shared/job/counts.ts';
import { type Job, sheetOf } from '../../shared/job/job.ts';
import { showLength, showSize } from '../../shared/units/show.ts';
import { openBriefFile } from '../disk/briefFiles.ts';
import { JobFiles } from '../disk/jobFiles.ts';
import { layJob } from '../job/layJob.ts';
import { answer, answerFault, progress } from './answer.ts';

export interface LayOptions {
  readonly job: string;
  readonly json: boolean;
}

export async function lay(briefPath: string, options: LayOptions): Promise<void> {
  const brief = await openBriefFile(briefPath);
  if (!brief.ok) return answerFault(options.json, brief.fault);
  progress('Looking through the art and laying out');
  const laid = await layJob(brief.value);
  if (!laid.ok) return answerFault(options.json, laid.fault);
  const { job, notices } = laid.value;
  const saved = await new JobFiles().save(resolve(options.job), job, true);
  if (!saved.ok) return answerFault(options.json, saved.fault);
  answer(options.json, describeLayout(job, notices), sayLayout(job, notices));
}

/** The layout as other programs read it: lengths in pt, side 1, lead edge up. */
function describeLayout(job: Job, notices: readonly string[]): object {
  const { size } = sheetOf(job.brief);
  const count = countJob(job);
  return {
    sheet: { width: size.w, height: size.h },
    work: job.brief.work.style,
    turn: turnOf(job.brief.work) ?? null,
    up: job.arrangement.length,
    needed: count.needed,
    overs: count.overs,
    sheets: count.sheets,
    yields: count.yields,
    positions: job.arrangement.map(({ piece, face, trim, head }) => ({
      piece,
      face,
      trim: [trim.x, trim.y, trim.w, trim.h],
      head,
    })),
    notices,
  };
}

function sayLayout(job: Job, notices: readonly string[]): readonly string[] {
  const { brief, arrangement } = job;
  const { size } = sheetOf(brief);
  const count = countJob(job);
  const turn = turnOf(brief.work);
  const block = around(arrangement.map((p) => p.trim));
  const show = (pt: number) => showLength(pt, brief.units);
  return [
    `${brief.title}: ${arrangement.length} up on ${showSize(size, brief.units)}, ${brief.work.style}${turn === undefined ? '' : `, turned ${turn}`}.`,
    `Load ${count.sheets} sheets: ${count.needed} needed and ${count.overs} overs.`,
    ...count.yields.map(
      (y) =>
        `${y.piece}: ${y.perSheet} a sheet, ${y.fromNeeded} for the ${y.wanted} wanted, ${y.leftOver} left over.`,
    ),
    ...(block === undefined
      ? []
      : [
          `Margins from trim to edge: lead ${show(size.h - block.y - block.h)}, tail ${show(block.y)}, left ${show(block.x)}, right ${show(size.w - block.x - block.w)}.`,
        ]),
    ...(turn === undefined ? [] : [paperError(turn, brief.sheet.hold).words]),
    ...notices,
    CAUTIONS.feed,
    CAUTIONS.trim,
  ];
}
