// Taking what finished runs teach into the library: its overs, the times of its hands, the ink of its printers.
import { learnFromReadings } from '../library/learnFromReadings.ts';
import type { CounterReading, Feed, Library, Printer } from '../library/library.ts';
import { type Learned, type LearnedTime, RUNS_FOR_OVERS, RUNS_FOR_TIMES } from './learn.ts';

interface TakenUp {
  readonly library: Library;
  /** What is changed by it, in words; empty where nothing is. */
  readonly changes: readonly string[];
  /** What there are too few runs for, in words. */
  readonly waiting: readonly string[];
}

/** The library with all that was learned. Taking the same runs up again changes nothing more. */
export function takeLearned(library: Library, learned: Learned): TakenUp {
  const overs = takeOvers(library, learned);
  const printers = library.printers.map((printer) => takePrinter(printer, learned));
  return {
    library: {
      ...library,
      rates: { ...library.rates, overs: overs.rules },
      printers: printers.map((p) => p.printer),
    },
    changes: [...overs.changes, ...printers.flatMap((p) => p.changes)],
    waiting: [...overs.waiting, ...waitingTimes(learned)],
  };
}

function takeOvers({ rates }: Library, { overs }: Learned) {
  const changed = overs.filter(({ percent, before }) => percent !== undefined && percent !== before.percent);
  return {
    rules: rates.overs.map((rule, i) => ({ ...rule, percent: overs[i]?.percent ?? rule.percent })),
    changes: changed.map(
      ({ before, percent, runs }) =>
        `Overs of ${runsFrom(before.from)}: ${percent} in a hundred instead of ${before.percent}, at least ${before.least} as before. ${runs} runs show it.`,
    ),
    waiting: overs
      .filter(({ percent, runs }) => percent === undefined && runs > 0)
      .map(
        ({ before, runs }) =>
          `Overs of ${runsFrom(before.from)}: ${runs} of the ${RUNS_FOR_OVERS} runs that are needed.`,
      ),
  };
}

function runsFrom(sheets: number): string {
  return sheets === 0 ? 'the shortest runs' : `runs of ${sheets} good sheets and more`;
}

function waitingTimes({ times }: Learned): readonly string[] {
  return times
    .filter(({ factor }) => factor === undefined)
    .map(
      ({ printer, feed, runs }) =>
        `Hands at ${feed} of ${printer}: ${runs} of the ${RUNS_FOR_TIMES} timed runs that are needed.`,
    );
}

interface TakenPrinter {
  readonly printer: Printer;
  readonly changes: readonly string[];
}

function takePrinter(printer: Printer, learned: Learned): TakenPrinter {
  const times = learned.times.filter((t) => t.printer === printer.name);
  const feeds = printer.feeds.map((feed) => takeHands(feed, times, printer.name));
  const [first, ...rest] = feeds.map((f) => f.feed);
  const byHand = first === undefined ? printer : { ...printer, feeds: [first, ...rest] as const };
  const read = takeReadings(byHand, learned);
  return { printer: read.printer, changes: [...feeds.flatMap((f) => f.changes), ...read.changes] };
}

/** To a tenth of a second. */
function takeHands(feed: Feed, times: readonly LearnedTime[], printer: string) {
  const time = times.find((t) => t.feed === feed.name);
  if (time?.factor === undefined) return { feed, changes: [] };
  const { factor, runs } = time;
  const by = (seconds: number) => Math.round(seconds * factor * 10) / 10;
  const hand = { load: by(feed.hand.load), align: by(feed.hand.align), turn: by(feed.hand.turn) };
  if (JSON.stringify(hand) === JSON.stringify(feed.hand)) return { feed, changes: [] };
  const said = `loading ${hand.load} s instead of ${feed.hand.load}, laying straight ${hand.align} s instead of ${feed.hand.align}, turning ${hand.turn} s instead of ${feed.hand.turn}`;
  return {
    feed: { ...feed, hand },
    changes: [`Hands at ${feed.name} of ${printer}: ${said}. ${runs} timed runs show it.`],
  };
}

function takeReadings(printer: Printer, { ink }: Learned): TakenPrinter {
  const known = new Set(printer.ink.readings.map(keyOf));
  const added = ink
    .filter((read) => read.printer === printer.name && !known.has(keyOf(read.reading)))
    .map((read) => read.reading);
  if (added.length === 0) return { printer, changes: [] };
  const readings = [...printer.ink.readings, ...added];
  const learnt = learnFromReadings({ ...printer.ink, readings });
  const more = added.length === 1 ? 'one reading more' : `${added.length} readings more`;
  return {
    printer: { ...printer, ink: learnt.ink },
    changes: [`Ink of ${printer.name}: ${more}. ${learnt.says ?? ''}`.trim()],
  };
}

/** Two readings of one run are one reading. */
function keyOf({ date, job, area, ml }: CounterReading): string {
  return JSON.stringify([date, job, Math.round(area * 1e6), ml]);
}
