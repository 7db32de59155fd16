// A watchdog over something that may hang: unless it is told to wait anew in time, it gives the signal to stop.

export class Watchdog {
  readonly #stopping = new AbortController();
  #timer: NodeJS.Timeout | undefined;
  #why = 'it was stopped';

  /** `stop` ends the watched work too. */
  constructor(stop?: AbortSignal) {
    if (stop?.aborted) this.#stopping.abort();
    stop?.addEventListener('abort', () => this.#stopping.abort(), { once: true });
  }

  /** Stops the watched work. */
  get signal(): AbortSignal {
    return this.#stopping.signal;
  }

  get isOver(): boolean {
    return this.#stopping.signal.aborted;
  }

  /** Why the work was stopped, in half a sentence. */
  get why(): string {
    return this.#why;
  }

  /** Waits so long from now, in ms, and stops the work unless told anew before. */
  wait(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#why = `nothing came for ${Number((ms / 1000).toFixed(1))} s`;
      this.#stopping.abort();
    }, ms);
  }

  /** Nothing is to be watched any more. */
  rest(): void {
    clearTimeout(this.#timer);
  }
}
