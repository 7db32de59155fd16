// A job or a brief that crosses from the window: checked by the very reader that checks files.
import { z } from 'zod';
import type { Result } from '../fault/result.ts';
import type { Brief } from '../job/brief.ts';
import { JOB_SCHEMA, type Job } from '../job/job.ts';
import { readJob, writeJob } from '../job/jobFile.ts';

export const crossedJob: z.ZodType<Job> = z.unknown().transform((value, context) => {
  const read = rewrite(value);
  if (read?.ok === true) return read.value;
  context.addIssue({ code: 'custom', message: read?.fault.message ?? 'is no job' });
  return z.NEVER;
});

export const crossedBrief: z.ZodType<Brief> = z.unknown().transform((value, context) => {
  const read = rewrite({ schema: JOB_SCHEMA, brief: value, art: [], arrangement: [] });
  if (read?.ok === true) return read.value.brief;
  context.addIssue({ code: 'custom', message: read?.fault.message ?? 'is no brief' });
  return z.NEVER;
});

/** The value written as a file and read again, so that it is what a file of it would be. */
function rewrite(value: unknown): Result<Job> | undefined {
  try {
    return readJob(JSON.parse(writeJob(value as Job)));
  } catch {
    return undefined;
  }
}
