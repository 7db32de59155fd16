// What finished runs teach: how many overs are really needed, how long the hands take, and how much ink goes.
import type { InkReading, OversFrom, Printer } from '../library/library.ts';
import { impressionsOf, measuredOf } from './impressions.ts';
import { nextStep } from './nextStep.ts';
import type { PlannedRun } from './planned.ts';
import type { Run } from './run.ts';
import { countSpoiled } from './sheets.ts';

/** So many runs at least are asked for before a rule is changed. @source common practice, no source */
export const RUNS_FOR_OVERS = 5;
export const RUNS_FOR_TIMES = 3;

/** Of ten runs, nine are to have overs enough. @source common practice, no source */
const RUNS_COVERED = 0.9;

/** The percent of overs goes in halves. */
const STEP = 0.5;

/** What runs of one length teach of their overs. */
export interface LearnedOvers {
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
  /** How much longer than planned the hands take: 1 as planned. None as long as there are too few runs. */
  readonly factor: number | undefined;
}

export interface Learned {
  /** Runs that are finished. */
  readonly runs: number;
  readonly overs: readonly LearnedOvers[];
  readonly times: readonly LearnedTime[];
  readonly ink: readonly { readonly printer: string; readonly reading: InkReading }[];
}

/** What these runs teach against the rules as they stand, which are in order of their lengths. Unfinished runs teach nothing. */
export function learnFrom(runs: readonly Run[], rules: readonly OversFrom[]): Learned {
  const finished = runs.filter((run) => nextStep(run) === 'done');
  return {
    runs: finished.length,
    overs: rules.map((rule, i) => learnOvers(rule, rules[i + 1]?.from, finished)),
    times: learnTimes(finished),
    ink: finished.flatMap(inkReadingOf),
  };
}

function learnOvers(rule: OversFrom, next: number | undefined, runs: readonly Run[]): LearnedOvers {
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
        : Math.floor(((spoiled - 1) * 100) / run.plan.needed / STEP) * STEP + STEP;
    })
    .toSorted((a, b) => a - b);
  const covered = Math.ceil(RUNS_COVERED * like.length);
  return { before: rule, runs: like.length, percent: percents[covered - 1] };
}

/** Sheets for setting up are planned apart from the overs. */
function spoiledBeyondSettingUp(run: Run): number {
  return Math.max(0, countSpoiled(run.sheets) - (run.plan.planned?.makeReadySheets ?? 0));
}

/** A run whose minutes were measured. */
interface Timed {
  readonly run: Run;
  readonly planned: PlannedRun;
  readonly minutes: number;
}

function learnTimes(runs: readonly Run[]): readonly LearnedTime[] {
  const timed = runs.flatMap((run): readonly Timed[] => {
    const { planned } = run.plan;
    const { minutes } = measuredOf(run);
    return planned === undefined || minutes === undefined || planned.minutes.hands === 0
      ? []
      : [{ run, planned, minutes }];
  });
  const keys = [...new Set(timed.map(({ planned }) => JSON.stringify([planned.printer, planned.feed])))];
  return keys.map((key) => {
    const like = timed.filter(({ planned }) => JSON.stringify([planned.printer, planned.feed]) === key);
    const [printer, feed] = JSON.parse(key) as [string, string];
    const factor = like.length < RUNS_FOR_TIMES ? undefined : handsFactor(like);
    return { printer, feed, runs: like.length, factor };
  });
}

/** What the hands took in all these runs, against what they were planned to take for as many passes. */
function handsFactor(runs: readonly Timed[]): number {
  let [taken, reckoned] = [0, 0];
  for (const { run, planned, minutes } of runs) {
    const { makeReady, atPrinter, hands } = planned.minutes;
    const passes = impressionsOf(run) / (planned.sheets * planned.passes);
    taken += Math.max(0, minutes - makeReady - (atPrinter - hands) * passes);
    reckoned += hands * passes;
  }
  return taken / reckoned;
}

/** What the printer's counter said of a run, with what was really printed in it. */
function inkReadingOf(run: Run): readonly { readonly printer: string; readonly reading: InkReading }[] {
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

/** The printer with the times of its hands by one feed changed by a factor, to a tenth of a second. */
export function withHandsBy(printer: Printer, { feed: name, factor = 1 }: LearnedTime): Printer {
  const by = (seconds: number) => Math.round(seconds * factor * 10) / 10;
  const [first, ...rest] = printer.feeds.map((feed) =>
    feed.name === name
      ? { ...feed, hand: { load: by(feed.hand.load), align: by(feed.hand.align), turn: by(feed.hand.turn) } }
      : feed,
  );
  return first === undefined ? printer : { ...printer, feeds: [first, ...rest] };
}
