// What a run sheet is set from.
import type { Job } from '../job/job.ts';
import type { SidePage } from '../job/nameJobFiles.ts';
import type { Measures } from '../pdf/document/setWords.ts';
import type { JobName } from './jobCode.ts';
import type { Stock } from './stock.ts';

export interface RunSheetInput {
  readonly job: Job;
  /** Which page of which file prints each side. */
  readonly sides: readonly SidePage[];
  /** The day, as it is to be read. */
  readonly day: string;
  readonly name: JobName;
  /** The paper, where it is known. */
  readonly stock?: Stock | undefined;
  readonly measures: Measures;
}
