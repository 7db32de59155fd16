// The history of a job: every state it has been in, and the names of the edits between them.
import type { Job } from '../../shared/job/job.ts';

/** One step: the job at its far end, and the name of the edit that lies between. */
export interface Step {
  readonly job: Job;
  readonly edit: string;
}

/** The past, nearest last; the future, nearest first. */
export interface History {
  readonly past: readonly Step[];
  readonly present: Job;
  readonly future: readonly Step[];
}

/** A history that begins with this job. */
export function beginHistory(job: Job): History {
  return { past: [], present: job, future: [] };
}

/** The history after an edit; what had been undone is given up. An edit that changed nothing is no step. */
export function addStep(history: History, job: Job, edit: string): History {
  if (job === history.present) return history;
  return { past: [...history.past, { job: history.present, edit }], present: job, future: [] };
}

/** The history one edit back, or as it is where nothing was done. */
export function stepBack(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: last.job,
    future: [{ job: history.present, edit: last.edit }, ...history.future],
  };
}

/** The history one edit on, or as it is where nothing was undone. */
export function stepOn(history: History): History {
  const [next, ...rest] = history.future;
  if (next === undefined) return history;
  return {
    past: [...history.past, { job: history.present, edit: next.edit }],
    present: next.job,
    future: rest,
  };
}

/** The history with its present state written otherwise, which is no edit. */
export function replacePresent(history: History, present: Job): History {
  return { ...history, present };
}

/** The name of the edit that would be undone, if there is one. */
export function undoName(history: History | undefined): string | undefined {
  return history?.past.at(-1)?.edit;
}

/** The name of the edit that would be done again, if there is one. */
export function redoName(history: History | undefined): string | undefined {
  return history?.future[0]?.edit;
}
