// The cutting order of a job: its sheet, its places and how it was printed, as the planning of cuts wants them.
import { ANY_CUTTER } from '../cutting/cutter.ts';
import type { CuttingOrder } from '../cutting/order.ts';
import { planCuts } from '../cutting/planCuts.ts';
import type { Result } from '../fault/result.ts';
import { countJob } from '../job/counts.ts';
import { designsOf, type Job, sheetOf } from '../job/job.ts';
import type { Stock } from './stock.ts';

/** The order in which the sheets of a job are cut. Refuses what `planCuts` refuses. */
export function cuttingOf(job: Job, stock: Stock | undefined): Result<CuttingOrder> {
  const { brief, arrangement } = job;
  const { sheets } = countJob(job);
  const { cutter = ANY_CUTTER, caliper } = stock ?? {};
  return planCuts({
    sheet: sheetOf(brief).size,
    arrangement,
    designs: designsOf(brief),
    work: brief.work,
    hold: brief.sheet.hold,
    cutter,
    ...(caliper === undefined ? {} : { run: { sheets, caliper } }),
    unit: brief.units,
  });
}
