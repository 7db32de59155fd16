// What finished runs teach: how many overs are really needed, how long the hands take, and how much ink goes.
import type { CounterReading, Feed, Library, OversFrom, Printer } from '../library/library.ts';
import { impressionsOf, measuredOf } from './impressions.ts';
import { nextStep } from './nextStep.ts';
import type { PlannedRun } from './planned.ts';
import type { PrintRun } from './run.ts';
import { countSpoiled } from './sheets.ts';

/** So many runs at least are asked for before a rule is changed. @source common practice, no source */
export const RUNS_FOR_OVERS = 5;
export const RUNS_FOR_TIMES = 3;

/** Of ten runs, nine are to have overs enough. @source common practice, no source */
const RUNS_COVERED = 0.9;

/** The percent of overs goes in halves. */
const OVERS_STEP_PERCENT = 0.5;

/** What runs of one length teach of their overs. */
interface LearnedOvers {
  /** The rule as it stands. */
  readonly before: OversFrom;
  readonly runs: number;
  /** The percent that nine of ten of those runs would have needed; none as long as there are too few of them. */
  readonly percent: number | undefined;
}

/** What runs by one feed of a printer teach of the time that hands take. */
export interface LearnedTime {
  readonly printer: string;
  readonly feed: string;
  readonly runs: number;
  /** How much longer the hands take than the library says: 1 for just as long. None as long as there are too few runs. */
  readonly factor: number | undefined;
}

export interface Learned {
  /** Runs that are finished. */
  readonly runs: number;
  readonly overs: readonly LearnedOvers[];
  readonly times: readonly LearnedTime[];
  readonly ink: readonly { readonly printer: string; readonly reading: CounterReading }[];
}

/** What these runs teach against the library as it is. Unfinished runs teach nothing. */
export function learnFrom(runs: readonly PrintRun[], { rates, printers }: Library): Learned {
  const finished = runs.filter((run) => nextStep(run) === 'done');
  return {
    runs: finished.length,
    overs: rates.overs.map((rule, i) => learnOvers(rule, rates.overs[i + 1]?.from, finished)),
    times: learnTimes(finished, printers),
    ink: finished.flatMap(inkReadingOf),
  };
}

function learnOvers(rule: OversFrom, next: number | undefined, runs: readonly PrintRun[]): LearnedOvers {
  const like = runs.filter(
    ({ plan }) => plan.needed >= rule.from && (next === undefined || plan.needed < next),
  );
  if (like.length < RUNS_FOR_OVERS) return { before: rule, runs: like.length, percent: undefined };
  // The least percent for each run that its least number of overs does not cover already.
  const percents = like
    .map((run) => {
      const spoiled = spoiledBeyondSettingUp(run);
      // Part of a sheet counts as a whole one, so a little less than all is enough.
      return spoiled <= rule.least
        ? 0
        : Math.floor(((spoiled - 1) * 100) / run.plan.needed / OVERS_STEP_PERCENT) * OVERS_STEP_PERCENT +
            OVERS_STEP_PERCENT;
    })
    .toSorted((a, b) => a - b);
  const covered = Math.ceil(RUNS_COVERED * like.length);
  return { before: rule, runs: like.length, percent: percents[covered - 1] };
}

/** Sheets for setting up are planned apart from the overs. */
function spoiledBeyondSettingUp(run: PrintRun): number {
  return Math.max(0, countSpoiled(run.sheets) - (run.plan.planned?.makeReadySheets ?? 0));
}

/** A run whose minutes were measured. */
interface Timed {
  readonly run: PrintRun;
  readonly planned: PlannedRun;
  readonly minutes: number;
}

function learnTimes(runs: readonly PrintRun[], printers: readonly Printer[]): readonly LearnedTime[] {
  const timed = runs.flatMap((run): readonly Timed[] => {
    const { planned } = run.plan;
    const { minutes } = measuredOf(run);
    return planned === undefined || minutes === undefined ? [] : [{ run, planned, minutes }];
  });
  return printers.flatMap(({ name: printer, feeds }) =>
    feeds.flatMap((feed) => {
      const like = timed.filter(({ planned }) => planned.printer === printer && planned.feed === feed.name);
      const reckoned = like.reduce((sum, { run, planned }) => sum + handMinutes(feed, run, planned), 0);
      // No run went this way, or a tray does it all and there are no hands to time.
      if (reckoned === 0) return [];
      const taken = like.reduce((sum, one) => sum + handsTook(one), 0);
      const factor = like.length < RUNS_FOR_TIMES ? undefined : taken / reckoned;
      return [{ printer, feed: feed.name, runs: like.length, factor }];
    }),
  );
}

/** What the hands are reckoned to take in a run by the library as it is now. */
function handMinutes({ hand }: Feed, run: PrintRun, { passes }: PlannedRun): number {
  const eachSheet = passes * (hand.load + hand.align) + (passes - 1) * hand.turn;
  return ((impressionsOf(run) / passes) * eachSheet) / 60;
}

/** What they took: all but the setting up, and the standing by that grows with the passes. */
function handsTook({ run, planned, minutes }: Timed): number {
  const { makeReady, atPrinter, hands } = planned.minutes;
  const standingBy = ((atPrinter - hands) * impressionsOf(run)) / (planned.sheets * planned.passes);
  return Math.max(0, minutes - makeReady - standingBy);
}

/** What the printer's counter said of a run, with what was really printed in it. */
function inkReadingOf(
  run: PrintRun,
): readonly { readonly printer: string; readonly reading: CounterReading }[] {
  const { planned, title } = run.plan;
  const { ink } = measuredOf(run);
  if (planned === undefined || ink === undefined) return [];
  const { area, coverage } = planned.inked;
  const reading = {
    date: run.begun.slice(0, 10),
    job: title,
    area: (area * impressionsOf(run)) / planned.passes,
    coverage,
    ml: ink,
  };
  return [{ printer: planned.printer, reading }];
}
