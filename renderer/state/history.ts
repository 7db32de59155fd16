// The history of what is edited, a job or the library: every state it has been in, and the names of the edits between.
import type { Job } from '../../shared/job/job.ts';

/** One step: the state at its far end, and the name of the edit that lies between. */
interface Step<T> {
  readonly state: T;
  readonly edit: string;
}

/** The past, nearest last; the future, nearest first. */
export interface History<T = Job> {
  readonly past: readonly Step<T>[];
  readonly present: T;
  readonly future: readonly Step<T>[];
}

/** A history that begins with this state. */
export function beginHistory<T>(present: T): History<T> {
  return { past: [], present, future: [] };
}

/** The history after an edit; what had been undone is given up. An edit that changed nothing is no step. */
export function addStep<T>(history: History<T>, present: T, edit: string): History<T> {
  if (present === history.present) return history;
  return { past: [...history.past, { state: history.present, edit }], present, future: [] };
}

/** The history one edit back, or as it is where nothing was done. */
export function stepBack<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: last.state,
    future: [{ state: history.present, edit: last.edit }, ...history.future],
  };
}

/** The history one edit on, or as it is where nothing was undone. */
export function stepOn<T>(history: History<T>): History<T> {
  const [next, ...rest] = history.future;
  if (next === undefined) return history;
  return {
    past: [...history.past, { state: history.present, edit: next.edit }],
    present: next.state,
    future: rest,
  };
}

/** The history with its present state written otherwise, which is no edit. */
export function replacePresent<T>(history: History<T>, present: T): History<T> {
  return { ...history, present };
}

/** The name of the edit that would be undone, if there is one. */
export function undoName<T>(history: History<T> | undefined): string | undefined {
  return history?.past.at(-1)?.edit;
}

/** The name of the edit that would be done again, if there is one. */
export function redoName<T>(history: History<T> | undefined): string | undefined {
  return history?.future[0]?.edit;
}
