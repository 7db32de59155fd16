// A run: what it sets out to do, everything that happened, and how it stands. How it stands follows from the events alone.
import { ok, type Result, refuse } from '../fault/result.ts';
import { nameOfEvent, type RunLogEntry } from './events.ts';
import { type CutPieces, countPieces, noPieces } from './pieces.ts';
import type { RunPlan } from './plan.ts';
import { refusedCount } from './refusedCount.ts';
import { moveSheets, NO_SHEETS, type SheetCounts } from './sheets.ts';

/** One run of a job, from its beginning on. */
export interface PrintRun {
  readonly plan: RunPlan;
  /** When it was begun, in UTC. */
  readonly begun: string;
  /** Everything that happened, the beginning first; what was taken back stands here too. */
  readonly entries: readonly RunLogEntry[];
  readonly sheets: SheetCounts;
  readonly pieces: readonly CutPieces[];
}

/** All that is known of the runs of a job. */
export interface RunBook {
  /** Each begun after the one before. The last one is the one that is worked on. */
  readonly runs: readonly PrintRun[];
  /** The highest number that an entry has had; 0 before the first. */
  readonly last: number;
}

export const NO_RUNS: RunBook = { runs: [], last: 0 };

/**
 * The book after one more entry, or in a sentence why it cannot have happened: more sheets than there were, a count
 * before the proof sheet, a number that was given already.
 */
export function addEntry({ runs, last }: RunBook, entry: RunLogEntry): Result<RunBook> {
  const { id, event } = entry;
  if (id <= last) {
    return refuse(
      refusedCount(`Number ${id} is in the log already.`, 'Look at the counts, then count again.'),
    );
  }
  if (event.kind === 'begun') {
    const { plan } = event;
    const run = { plan, begun: entry.at, entries: [entry], sheets: NO_SHEETS, pieces: noPieces(plan) };
    return ok({ runs: [...runs, run], last: id });
  }
  const run = runs.at(-1);
  if (run === undefined) return refuse(NOT_BEGUN);
  const earlier = runs.slice(0, -1);
  if (event.kind === 'undone' && event.of === run.entries[0]?.id) {
    return lastCount(run) === undefined ? ok({ runs: earlier, last: id }) : refuse(RUN_COUNTED);
  }
  const after = event.kind === 'undone' ? takeBack(run, entry, event.of) : goOn(run, entry);
  return after.ok ? ok({ runs: [...earlier, after.value], last: id }) : after;
}

/** What happened and was not taken back, without the takings back themselves. */
export function standing({ entries }: Pick<PrintRun, 'entries'>): readonly RunLogEntry[] {
  const undone = new Set(entries.flatMap(({ event }) => (event.kind === 'undone' ? [event.of] : [])));
  return entries.filter(({ id, event }) => event.kind !== 'undone' && !undone.has(id));
}

/** Counts last and can be taken back; none where only the beginning stands. */
export function lastCount(run: PrintRun): RunLogEntry | undefined {
  return standing(run).slice(1).at(-1);
}

/** The run after one more event that takes nothing back. */
function goOn(run: PrintRun, entry: RunLogEntry): Result<PrintRun> {
  const entries = [...run.entries, entry];
  const { event } = entry;
  switch (event.kind) {
    case 'begun':
    case 'undone':
      throw new Error('A beginning and a taking back have ways of their own');
    case 'measured':
      return ok({ ...run, entries });
    case 'trimmed':
    case 'delivered': {
      const pieces = countPieces(run.pieces, event, run.plan, run.sheets.done);
      return pieces.ok ? ok({ ...run, entries, pieces: pieces.value }) : pieces;
    }
    default: {
      const sheets = moveSheets(run.sheets, event, run.plan);
      return sheets.ok ? ok({ ...run, entries, sheets: sheets.value }) : sheets;
    }
  }
}

/** The run as if the event had not happened, where all that came after it can stand without it. */
function takeBack(run: PrintRun, entry: RunLogEntry, of: number): Result<PrintRun> {
  // The beginning of a run is taken back in a way of its own.
  const counts = standing(run).slice(1);
  const taken = counts.find(({ id }) => id === of);
  if (taken === undefined) {
    return refuse(refusedCount('That count is not there any more: it was taken back.', 'Count again.'));
  }
  let again: PrintRun = { ...run, sheets: NO_SHEETS, pieces: noPieces(run.plan) };
  for (const next of counts.filter((e) => e !== taken)) {
    const after = goOn(again, next);
    if (!after.ok) {
      const [lost, needing] = [nameOfEvent(taken.event), nameOfEvent(next.event)];
      return refuse(
        refusedCount(
          `“${lost}” cannot be taken back, because “${needing}” needs it: ${lowerFirst(after.fault.message)}`,
          `Take back “${needing}” first.`,
        ),
      );
    }
    again = after.value;
  }
  return ok({ ...again, entries: [...run.entries, entry] });
}

const RUN_COUNTED = refusedCount(
  'The run cannot be taken back, because something has been counted in it.',
  'Take back the counts first, or begin another run.',
);

/** What is refused as long as there is no run. */
export const NOT_BEGUN = refusedCount('No run has been begun.', 'Begin the run first.');

const lowerFirst = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1);
