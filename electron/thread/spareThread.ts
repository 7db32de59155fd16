// One thread kept waiting for its task: a thread takes longer to start than most files to be read.
import type { Thread } from './thread.ts';

export class SpareThread {
  readonly #start: () => Thread;
  #waiting: Thread | undefined;
  #hasEnded = false;

  /** `start` starts one. */
  constructor(start: () => Thread) {
    this.#start = start;
  }

  /** Has a thread waiting from now on. */
  prepare(): void {
    if (this.#waiting !== undefined || this.#hasEnded) return;
    const thread = this.#start();
    this.#waiting = thread;
    // A thread that breaks down while it waits is not missed: another is started when one is needed.
    thread.wait(() => {
      if (this.#waiting === thread) this.#waiting = undefined;
    });
  }

  /** The thread that waits, or one that is only started now. It is the caller's. */
  take(): Thread {
    const thread = this.#waiting ?? this.#start();
    this.#waiting = undefined;
    return thread;
  }

  async end(): Promise<void> {
    this.#hasEnded = true;
    await this.#waiting?.end();
  }
}
