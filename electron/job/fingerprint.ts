// What identifies a job wherever it and its art lie.
import { basename } from 'node:path';
import type { Job } from '../../shared/job/job.ts';
import { writeJob } from '../../shared/job/jobFile.ts';
import { rebaseJob } from '../disk/faceFiles.ts';
import { sha256Of } from '../disk/hashes.ts';

/** The SHA-256 of what the job says, in hex: the same for the job in a window and the one read back from its file. */
export function fingerprintOf(job: Job): string {
  const written = writeJob(rebaseJob(job, (file) => basename(file)));
  return sha256Of(JSON.stringify(JSON.parse(written), inOrderOfNames));
}

function inOrderOfNames(_key: string, value: unknown): unknown {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
    : value;
}
