// The art files that a job names: in its file relative to it, in the host whole paths, in the window handles.
import { dirname, isAbsolute, relative, resolve, sep } from 'node:path';
import type { Job } from '../../shared/job/job.ts';
import { rebaseArt } from '../../shared/job/rebase.ts';

/** The job with every art file named otherwise. */
export function rebaseJob(job: Job, rename: (file: string) => string): Job {
  return { ...job, brief: rebaseArt(job.brief, rename) };
}

/** How a job file names an art file: relative to itself, with forward slashes on every system. */
export function writtenBeside(jobFile: string): (art: string) => string {
  return (art) => {
    const way = relative(dirname(jobFile), art);
    return isAbsolute(way) ? way : way.split(sep).join('/');
  };
}

/** Where the art file is that a job file names. */
export function foundFrom(jobFile: string): (written: string) => string {
  return (written) => resolve(dirname(jobFile), written);
}
