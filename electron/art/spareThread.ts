// Threads for strangers' files, and one of them kept waiting: a thread takes longer to start than most files to be read.
import { Worker } from 'node:worker_threads';

/** How long and how large the thread may get. */
export interface WorkerLimits {
  readonly seconds: number;
  /** What the program may grow by while the thread runs. */
  readonly megabytes: number;
}

/** @source common practice, no source: a hundred times what a large poster file was seen to need. */
export const WORKER_LIMITS: WorkerLimits = { seconds: 60, megabytes: 2048 };

const START = new URL('./startArtWorker.mjs', import.meta.url);

/** Starts a thread that waits for the one question it will be asked. */
export function startArtThread({ megabytes }: Pick<WorkerLimits, 'megabytes'>): Worker {
  const thread = new Worker(START, {
    execArgv: [],
    stdout: true,
    stderr: true,
    resourceLimits: { maxOldGenerationSizeMb: megabytes },
  });
  thread.stdout.resume();
  thread.stderr.resume();
  return thread;
}

/** One thread that is started before it is needed. */
export class SpareThread {
  #waiting: Worker | undefined;
  #hasEnded = false;

  /** Has a thread waiting from now on. */
  prepare(): void {
    if (this.#waiting !== undefined || this.#hasEnded) return;
    const thread = startArtThread(WORKER_LIMITS);
    this.#waiting = thread;
    // A thread that breaks down while it waits is not missed: another is started when one is needed.
    const forget = () => {
      if (this.#waiting === thread) this.#waiting = undefined;
    };
    thread.on('error', forget);
    thread.on('exit', forget);
    thread.unref();
  }

  /** The thread that waits, or one that is only started now. It is the caller's. */
  take(): Worker {
    const thread = this.#waiting ?? startArtThread(WORKER_LIMITS);
    this.#waiting = undefined;
    thread.removeAllListeners();
    thread.ref();
    return thread;
  }

  async end(): Promise<void> {
    this.#hasEnded = true;
    await this.#waiting?.terminate();
  }
}
