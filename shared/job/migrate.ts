// Bringing a job file of any earlier version up to the present one.
import type { Result } from '../fault/result.ts';
import { JOB_SCHEMA } from './job.ts';
import { bringUpToDate, type OldFile, type Versions } from './upToDate.ts';

const STEPS: Versions['steps'] = [
  // Version 2: a brief may say for which printer and paper it was planned.
  (file) => ({ ...file, schema: 2 }),
];

/** The file as one of the present version. Refuses what is no job file, and files of a later version. */
export function migrate(json: unknown, steps = STEPS, present: number = JOB_SCHEMA): Result<OldFile> {
  return bringUpToDate(json, {
    called: 'job',
    present,
    steps,
    invalid: 'job-invalid',
    tooNew: 'job-too-new',
    remedy: 'Choose a job that was saved by this program, or lay the job out from its brief.',
  });
}
