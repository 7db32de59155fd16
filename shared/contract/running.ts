// Running a job: what is told of its sheets, and the log that keeps it beside the job's file.
import type { Job } from '../job/job.ts';
import type { RunEvent } from '../run/events.ts';
import type { RunLog } from '../run/logText.ts';
import type { FileHandle } from './handles.ts';

export interface RecordAsk {
  /** The job's file; a job that was never saved has no runs. */
  readonly file: FileHandle;
  readonly event: RunEvent;
}

export interface SlipAsk {
  readonly file: FileHandle;
  readonly job: Job;
  /** The number of the delivery's entry in the log. */
  readonly delivery: number;
}

/** What the window hears when somebody else has added to the log. */
export interface RunNews {
  readonly file: FileHandle;
  readonly log: RunLog;
}
