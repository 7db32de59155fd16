// Looking through a stranger's file in a thread that may hang, crash or swell without taking the program with it.
import { basename } from 'node:path';
import type { Worker } from 'node:worker_threads';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { ArtWord } from './artWorker.ts';
import type { ArtReport, Question } from './examine.ts';
import { startArtThread, WORKER_LIMITS, type WorkerLimits } from './spareThread.ts';

export type { ArtReport } from './examine.ts';

export interface InspectOptions extends Omit<Question, 'path'> {
  readonly limits?: Partial<WorkerLimits>;
}

const MEGABYTE = 1024 * 1024;

/** How often the size of the program is looked at, in milliseconds. Streams unpack at about 100 MB a second. */
const WATCH = 50;

/** A file that is being looked through: what its pages are is known before all that is on them was tried out. */
export interface Inspection {
  /** What the pages are, with what is known of the file by then; the refusal of a file that gives none. */
  readonly pages: Promise<Result<ArtReport>>;
  /** The same once each page was tried out. */
  readonly whole: Promise<Result<ArtReport>>;
}

/**
 * Opens the file in a thread of its own, reads the size and boxes of its pages, and tries out whether they can be
 * placed. Refusals: those of the file (`art-missing`, `file-unreadable`, `art-not-pdf`, `art-locked`, `art-damaged`,
 * `art-empty`, `art-page-missing`, `art-too-large`), and `art-took-too-long`. Nothing that the file holds makes it
 * throw.
 */
export function inspectArt(path: string, options: InspectOptions = {}): Promise<Result<ArtReport>> {
  return beginInspection(path, options).whole;
}

/** The same, told in its two parts. `thread`: one that was started before and waits for its question. */
export function beginInspection(
  path: string,
  options: InspectOptions = {},
  thread: Worker = startArtThread({ ...WORKER_LIMITS, ...options.limits }),
): Inspection {
  const { limits, ...asked } = options;
  const { seconds, megabytes } = { ...WORKER_LIMITS, ...limits };
  const name = basename(path);
  const question: Question = { path, ...asked };
  const before = process.memoryUsage.rss();
  let tellPages: (report: Result<ArtReport>) => void = () => {};
  const pages = new Promise<Result<ArtReport>>((resolve) => {
    tellPages = resolve;
  });
  const whole = new Promise<Result<ArtReport>>((resolve) => {
    const end = (answer: Result<ArtReport>) => {
      clearTimeout(clock);
      clearInterval(watch);
      thread.removeAllListeners();
      // A late error of a thread that is being ended has nobody to go to.
      thread.on('error', () => {});
      void thread.terminate().then(() => {
        tellPages(answer);
        resolve(answer);
      });
    };
    const clock = setTimeout(() => end(refuse(tooSlow(name, path, seconds))), seconds * 1000);
    const watch = setInterval(() => {
      if (process.memoryUsage.rss() - before > megabytes * MEGABYTE) end(refuse(tooLarge(name, path)));
    }, WATCH);
    thread.on('message', (word: ArtWord) => {
      if (word.is === 'pages') tellPages(ok(word.report));
      else end(word.answer);
    });
    thread.on('error', (error) => end(refuse(failed(name, path, error))));
    thread.on('exit', () => end(refuse(crashed(name, path))));
    thread.postMessage(question);
  });
  return { pages, whole };
}

function failed(name: string, path: string, error: unknown): Fault {
  const outOfMemory = error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY';
  return outOfMemory || error instanceof RangeError ? tooLarge(name, path) : crashed(name, path);
}

function tooSlow(name: string, path: string, seconds: number): Fault {
  return {
    code: 'art-took-too-long',
    message: `${name} could not be read within ${seconds} seconds and was given up.`,
    remedy:
      'Simplify the file or export it again; if its disk or share is slow, copy it to this machine first.',
    where: path,
  };
}

function tooLarge(name: string, path: string): Fault {
  return {
    code: 'art-too-large',
    message: `${name} unpacks to more than this program dares to hold, and was given up.`,
    remedy: 'Export only the pages that this job prints, and turn very detailed drawings into pictures.',
    where: path,
  };
}

function crashed(name: string, path: string): Fault {
  return {
    code: 'art-damaged',
    message: `${name} is damaged in a way that stopped it from being read.`,
    remedy: 'Ask for the file again, or open it in a PDF viewer and print it into a new PDF.',
    where: path,
  };
}
