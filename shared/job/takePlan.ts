// Taking a plan: what a printer, a paper and a way of working make of the sheet of a job.
import { type Result, refuse } from '../fault/result.ts';
import type { Work } from '../geometry/work.ts';
import type { Overs } from '../layout/count.ts';
import type { Brief, SheetBrief } from './brief.ts';
import { unfitFor } from './compareWorks.ts';
import type { Job } from './job.ts';
import type { JobPlan } from './jobPlan.ts';
import { layOutJob } from './layOutJob.ts';
import { withWork } from './oneForm.ts';

/** A plan on its way into a job. */
export interface TakenPlan {
  readonly plan: JobPlan;
  readonly sheet: SheetBrief;
  readonly work: Work;
  readonly overs: Overs;
}

/** The brief as it is printed by this plan. What the customer wants stays as it was. */
export function withPlan(brief: Brief, { plan, sheet, work, overs }: TakenPlan): Brief {
  return withWork({ ...brief, plan, sheet, overs }, work);
}

/** The job with the sheet of the plan, laid out afresh. */
export function takePlan(job: Job, taken: TakenPlan): Result<Job> {
  const brief = withPlan(job.brief, taken);
  const unfit = unfitFor(brief);
  return unfit === undefined ? layOutJob({ ...job, brief }) : refuse(unfit);
}
