// A job on its way between the window, which names art by handles, and everything behind it, which knows the paths.
import type { ArtHandle } from '../../shared/contract/handles.ts';
import { ok, type Result } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { rebaseArt } from '../../shared/job/rebase.ts';
import { rebaseJob } from '../disk/faceFiles.ts';
import type { Entries } from './entries.ts';

/** The files of art that a brief names, each once. */
export function artFilesOf(brief: Brief): readonly string[] {
  return [...new Set(facesOf(brief).map(({ face }) => face.file))];
}

export function briefFromWindow(entries: Entries, brief: Brief): Result<Brief> {
  const paths = new Map<string, string>();
  for (const file of artFilesOf(brief)) {
    const path = entries.art.resolve(file as ArtHandle);
    if (!path.ok) return path;
    paths.set(file, path.value);
  }
  return ok(rebaseArt(brief, (file) => paths.get(file) ?? file));
}

export function jobFromWindow(entries: Entries, job: Job): Result<Job> {
  const brief = briefFromWindow(entries, job.brief);
  return brief.ok ? ok({ ...job, brief: brief.value }) : brief;
}

export function jobForWindow(entries: Entries, job: Job): Job {
  return rebaseJob(job, (path) => entries.art.issue(path));
}
