// The plan that was chosen for a job: where it runs, and what that makes of its sheet.
import type { Work } from '../geometry/work.ts';
import type { Overs } from '../layout/count.ts';
import type { Lies } from '../layout/lies.ts';
import type { SheetBrief } from './brief.ts';

/** What a job keeps of its plan: the names by which it was chosen, and how its pieces lie. */
export interface JobPlan {
  readonly printer: string;
  readonly feed: string;
  readonly paper: string;
  /** What the sheets are cut from, in words, where they are cut from something. */
  readonly cutFrom?: string | undefined;
  /** How pieces lie that may lie either way as far as the customer is concerned. */
  readonly lies: Lies;
}

/** A plan on its way into a job. */
export interface TakenPlan extends JobPlan {
  readonly sheet: SheetBrief;
  readonly work: Work;
  readonly overs: Overs;
}
