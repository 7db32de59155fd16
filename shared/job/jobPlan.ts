// The plan that a job keeps: the names by which it was chosen, and how its pieces lie.
import type { Lies } from '../layout/lies.ts';

export interface JobPlan {
  readonly printer: string;
  readonly feed: string;
  readonly paper: string;
  /** What the sheets are cut from, in words, where they are cut from something. */
  readonly cutFrom?: string | undefined;
  /** How those pieces lie that the customer lets lie either way. */
  readonly lies: Lies;
}
