// Bringing a job file of any earlier version up to the present one, a step at a time.
import { ok, type Result, refuse } from '../fault/result.ts';
import { JOB_SCHEMA } from './job.ts';

/** A job file between versions: nothing is known of it but that it is an object. */
export type JobFile = Readonly<Record<string, unknown>>;

/** `STEPS[n]` turns a file of version n + 1 into one of version n + 2. Numbered without gaps. */
const STEPS: readonly ((file: JobFile) => JobFile)[] = [];

/** The file as one of the present version. Refuses what is no job file, and files of a later version. */
export function migrate(json: unknown, steps = STEPS, present: number = JOB_SCHEMA): Result<JobFile> {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return refuse(notAJob('It is not a JSON object.'));
  const file = json as JobFile;
  const version = file.schema;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse(notAJob('It does not say which version of the job file it is ("schema").'));
  }
  if (version > present) {
    return refuse({
      code: 'job-too-new',
      message: `This job was saved by a later version of the program (job file ${version}; this program reads up to ${present}).`,
      remedy:
        'Open it with the program that saved it, or bring this one up to date. The file has not been changed.',
      where: 'schema',
    });
  }
  return ok(steps.slice(version - 1).reduce((older, step) => step(older), file));
}

function notAJob(says: string) {
  return {
    code: 'job-invalid' as const,
    message: `This is not a job file. ${says}`,
    remedy: 'Choose a job that was saved by this program, or lay the job out from its brief.',
    where: 'schema',
  };
}
