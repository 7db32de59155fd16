// How often sheets went through the printer in a run, good or spoiled, and how many did not come back blank.
import { type PrintRun, standing } from './run.ts';

/** Once for each sheet in each pass; a proof sheet goes through all passes. */
export function impressionsOf(run: PrintRun): number {
  return standing(run).reduce((sum, { event }) => {
    if (event.kind === 'good' || event.kind === 'spoiled') return sum + event.sheets;
    return event.kind === 'proofed' ? sum + run.plan.passes : sum;
  }, 0);
}

/** Sheets that were printed on; blank ones go back to the shelf. */
export function sheetsUsed({ sheets }: PrintRun): number {
  return sheets.loaded - sheets.blank;
}

/** What was measured of the run: the last measure of each kind counts. */
export function measuredOf(run: PrintRun): { readonly ink?: number; readonly minutes?: number } {
  const last = { ink: undefined as number | undefined, minutes: undefined as number | undefined };
  for (const { event } of standing(run)) {
    if (event.kind !== 'measured') continue;
    last.ink = event.ink ?? last.ink;
    last.minutes = event.minutes ?? last.minutes;
  }
  return {
    ...(last.ink === undefined ? {} : { ink: last.ink }),
    ...(last.minutes === undefined ? {} : { minutes: last.minutes }),
  };
}
