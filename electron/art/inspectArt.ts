// Looking through a stranger's file in a thread that may hang, crash or swell without taking the program with it.
import { basename } from 'node:path';
import { Worker } from 'node:worker_threads';
import { type Fault, type Result, refuse } from '../../shared/fault/result.ts';
import type { ArtReport, Question } from './examine.ts';

export type { ArtReport } from './examine.ts';

/** How long and how large the thread may get. */
export interface WorkerLimits {
  readonly seconds: number;
  /** What the program may grow by while the thread runs. */
  readonly megabytes: number;
}

/** @source common practice, no source: a hundred times what a large poster file was seen to need. */
export const WORKER_LIMITS: WorkerLimits = { seconds: 60, megabytes: 2048 };

export interface InspectOptions extends Omit<Question, 'path'> {
  readonly limits?: Partial<WorkerLimits>;
}

const MEGABYTE = 1024 * 1024;

/** How often the size of the program is looked at, in milliseconds. Streams unpack at about 100 MB a second. */
const WATCH = 50;

const START = new URL('./startArtWorker.mjs', import.meta.url);

/**
 * Opens the file in a thread of its own, reads the size and boxes of its pages, and tries out whether they can be
 * placed. Refusals: those of the file (`art-missing`, `file-unreadable`, `art-not-pdf`, `art-locked`, `art-damaged`,
 * `art-empty`, `art-page-missing`, `art-too-large`), and `art-took-too-long`. Nothing that the file holds makes it
 * throw.
 */
export function inspectArt(path: string, options: InspectOptions = {}): Promise<Result<ArtReport>> {
  const { limits, ...asked } = options;
  const { seconds, megabytes } = { ...WORKER_LIMITS, ...limits };
  const name = basename(path);
  const question: Question = { path, ...asked };
  const worker = new Worker(START, {
    workerData: question,
    execArgv: [],
    stdout: true,
    stderr: true,
    resourceLimits: { maxOldGenerationSizeMb: megabytes },
  });
  worker.stdout.resume();
  worker.stderr.resume();
  const before = process.memoryUsage.rss();
  return new Promise((resolve) => {
    const end = (answer: Result<ArtReport>) => {
      clearTimeout(clock);
      clearInterval(watch);
      worker.removeAllListeners();
      // A late error of a thread that is being ended has nobody to go to.
      worker.on('error', () => {});
      void worker.terminate().then(() => resolve(answer));
    };
    const clock = setTimeout(() => end(refuse(tooSlow(name, path, seconds))), seconds * 1000);
    const watch = setInterval(() => {
      if (process.memoryUsage.rss() - before > megabytes * MEGABYTE) end(refuse(tooLarge(name, path)));
    }, WATCH);
    worker.on('message', end);
    worker.on('error', (error) => end(refuse(failed(name, path, error))));
    worker.on('exit', () => end(refuse(crashed(name, path))));
  });
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
