// A thread for one task: started, perhaps long before it is needed, then told what to do and heard until it has ended.
import { type Transferable, Worker } from 'node:worker_threads';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Asked, Said } from './messages.ts';
import { failureOf, type ThreadFailure } from './threadFailure.ts';

const BYTES_PER_MEGABYTE = 1024 * 1024;

/** How often the size of the program is looked at. Streams unpack at about 100 MB a second. */
const MEMORY_LOOK_MS = 50;

/** How a task is looked after while it is done. */
export interface TaskCare<W> {
  /** How long it may take; as long as it needs where left out. */
  readonly seconds?: number | undefined;
  /** Cancels it. */
  readonly signal?: AbortSignal | undefined;
  /**
   * How long a thread that is to stop may take to leave all in order, and then say how it ended. Left out where nothing
   * can be left in disorder: the thread is then ended at once.
   */
  readonly tidySeconds?: number;
  /** Hears what the thread says on the way, until it is to stop. */
  readonly onTheWay?: (said: W) => void;
  /** Buffers of the task that are handed over instead of copied. */
  readonly moved?: readonly Transferable[];
}

/** One thread, for one task. */
export class Thread {
  readonly #worker: Worker;
  readonly #megabytes: number;

  /**
   * Starts it. `start` is where its starter lies; `megabytes` is what its own heap may come to, and what the program may
   * grow by while the task is done: what libraries and files take is on no thread's heap.
   */
  constructor(start: URL, megabytes: number) {
    this.#megabytes = megabytes;
    this.#worker = new Worker(start, {
      execArgv: [],
      stdout: true,
      stderr: true,
      resourceLimits: { maxOldGenerationSizeMb: megabytes },
    });
    this.#worker.stdout.resume();
    this.#worker.stderr.resume();
  }

  /** Lets it wait for its task without keeping the program alive. `onGone` hears that it broke down meanwhile. */
  wait(onGone: () => void): void {
    this.#worker.on('error', onGone).on('exit', onGone).unref();
  }

  /** Ends a thread that has no task. */
  async end(): Promise<void> {
    await this.#worker.terminate();
  }

  /**
   * Gives the thread its task, a plain value, and waits until the thread has ended. A thread that was cancelled and tidies
   * up comes to what it says then.
   */
  run<T, W = never>(task: unknown, care: TaskCare<W> = {}): Promise<Result<T, ThreadFailure>> {
    const { seconds, signal, tidySeconds, onTheWay, moved = [] } = care;
    const worker = this.#worker.removeAllListeners();
    worker.ref();
    const ask = (asked: Asked<unknown>) => worker.postMessage(asked, 'task' in asked ? [...moved] : []);
    return new Promise((resolve) => {
      /** Why it was told to stop. */
      let stopped: ThreadFailure | undefined;
      let tidying: NodeJS.Timeout | undefined;
      const end = (came: Result<T, ThreadFailure>) => {
        watch.stop();
        clearTimeout(tidying);
        signal?.removeEventListener('abort', cancel);
        worker.removeAllListeners();
        // A late error of a thread that is being ended has nobody to go to.
        worker.on('error', () => {});
        void worker.terminate().then(() => resolve(came));
      };
      const stop = (why: ThreadFailure) => {
        if (stopped !== undefined) return;
        stopped = why;
        watch.stop();
        if (tidySeconds === undefined) return end(refuse(why));
        ask({ cancel: true });
        tidying = setTimeout(() => end(refuse(why)), tidySeconds * 1000);
      };
      const cancel = () => stop({ why: 'cancelled', tidySeconds });
      const watch = watchLimits(seconds, this.#megabytes, stop);
      worker.on('message', (said: Said<T, W>) => {
        if ('outcome' in said) {
          end(stopped === undefined || stopped.why === 'cancelled' ? ok(said.outcome) : refuse(stopped));
        } else if (stopped === undefined) onTheWay?.(said.onTheWay);
      });
      worker.on('error', (error) => end(refuse(failureOf(error, this.#megabytes))));
      worker.on('exit', () => end(refuse(stopped ?? { why: 'broke-down' })));
      ask({ task });
      signal?.addEventListener('abort', cancel);
      if (signal?.aborted) cancel();
    });
  }
}

/** Says once when the time is over or the program has grown too much, unless it is stopped before. */
function watchLimits(
  seconds: number | undefined,
  megabytes: number,
  stop: (why: ThreadFailure) => void,
): { stop(): void } {
  const before = process.memoryUsage.rss();
  const look = setInterval(() => {
    const grown = process.memoryUsage.rss() - before;
    if (grown > megabytes * BYTES_PER_MEGABYTE) stop({ why: 'too-large', megabytes });
  }, MEMORY_LOOK_MS);
  const clock = seconds && setTimeout(() => stop({ why: 'too-slow', seconds }), seconds * 1000);
  return {
    stop: () => {
      clearInterval(look);
      if (clock) clearTimeout(clock);
    },
  };
}
