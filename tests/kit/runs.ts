// Runs for the tests: 30 sheets of the invitation, four up, and the events of a person who counts them.
import type { RunEvent, RunLogEntry } from '../../shared/run/events.ts';
import { RUN_SCHEMA, type RunPlan } from '../../shared/run/plan.ts';
import { addEntry, NO_RUNS, type PrintRun, type RunBook } from '../../shared/run/run.ts';

/** 108 invitations four up: 27 sheets and 3 overs, one form for both sides. */
export const supperRun: RunPlan = {
  schema: RUN_SCHEMA,
  title: 'Harvest supper',
  work: { style: 'work-and-turn' },
  passes: 2,
  sides: 2,
  needed: 27,
  overs: { percent: 5, least: 3 },
  sheets: 30,
  designs: [{ piece: 'Supper', wanted: 108, perSheet: 4 }],
};

/** The event as the host would enter it: numbered in order, one minute after the one before. */
export function entryOf(id: number, event: RunEvent): RunLogEntry {
  const minute = String(id % 60).padStart(2, '0');
  const hour = String(9 + Math.floor(id / 60)).padStart(2, '0');
  return { id, at: `2026-03-02T${hour}:${minute}:00.000Z`, event };
}

/** The book after these events, each of which must be possible. */
export function bookOf(...events: readonly RunEvent[]): RunBook {
  return events.reduce((book, event) => {
    const after = addEntry(book, entryOf(book.last + 1, event));
    if (!after.ok) throw new Error(after.fault.message);
    return after.value;
  }, NO_RUNS);
}

/** The run after these events, begun by this plan. */
export function runOf(plan: RunPlan, ...events: readonly RunEvent[]): PrintRun {
  return runIn(bookOf({ kind: 'begun', plan }, ...events));
}

export function runIn(book: RunBook): PrintRun {
  const run = book.runs.at(-1);
  if (run === undefined) throw new Error('No run has begun');
  return run;
}

/** What the next event is refused with; the text `ok` where it is not. */
export function refusalOf(run: RunBook, event: RunEvent): string {
  const after = addEntry(run, entryOf(run.last + 1, event));
  return after.ok ? 'ok' : `${after.fault.message} ${after.fault.remedy}`;
}

export const load = (sheets: number): RunEvent => ({ kind: 'loaded', sheets });
export const go: RunEvent = { kind: 'proofed', go: true };
export const noGo = (reason: string): RunEvent => ({ kind: 'proofed', go: false, reason });
export const good = (pass: 1 | 2, sheets: number): RunEvent => ({ kind: 'good', pass, sheets });
export const spoiled = (pass: 1 | 2, sheets: number, reason: string): RunEvent => ({
  kind: 'spoiled',
  pass,
  sheets,
  reason,
});
export const turned: RunEvent = { kind: 'turned' };
export const trimmed = (piece: string, ofGood: number, ofSpoiled = 0, reason = ''): RunEvent => ({
  kind: 'trimmed',
  piece,
  good: ofGood,
  spoiled: ofSpoiled,
  reason,
});
export const delivered = (piece: string, pieces: number): RunEvent => ({
  kind: 'delivered',
  pieces: [{ piece, pieces }],
});
export const undo = (of: number): RunEvent => ({ kind: 'undone', of });
