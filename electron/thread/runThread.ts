// Work that takes long, done in a thread of its own: told what to do, heard of on the way, given up when its time is over.
import { Worker } from 'node:worker_threads';

/** A thread at work. */
interface Running<T> {
  /** What it came to; `undefined` where it was stopped, took too long, or broke down. */
  readonly outcome: Promise<T | undefined>;
  stop(): void;
}

/** What a thread says: something on the way, or how it ended. */
export type Said<T, W> = { readonly onTheWay: W } | { readonly outcome: T };

/** How long a thread may take, and who hears what it says on the way. */
interface ThreadCare<W> {
  readonly seconds: number;
  readonly onTheWay?: (said: W) => void;
}

/** Starts a thread. `start` is where its starter lies, `task` a plain value that it is given. */
export function runThread<T, W = never>(
  start: URL,
  task: unknown,
  { seconds, onTheWay }: ThreadCare<W>,
): Running<T> {
  const worker = new Worker(start, { workerData: task, execArgv: [], stdout: true, stderr: true });
  worker.stdout.resume();
  worker.stderr.resume();
  let end: (outcome: T | undefined) => void = () => {};
  const outcome = new Promise<T | undefined>((resolve) => {
    end = (value) => {
      clearTimeout(clock);
      worker.removeAllListeners();
      // A late error of a thread that is being ended has nobody to go to.
      worker.on('error', () => {});
      void worker.terminate().then(() => resolve(value));
    };
  });
  const clock = setTimeout(() => end(undefined), seconds * 1000);
  worker.on('message', (said: Said<T, W>) => {
    if ('outcome' in said) end(said.outcome);
    else onTheWay?.(said.onTheWay);
  });
  worker.on('error', () => end(undefined));
  worker.on('exit', () => end(undefined));
  return { outcome, stop: () => end(undefined) };
}
