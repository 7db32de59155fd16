// The thread of the plan as the window sees it: one question at a time, and of each kind only the newest.
import type { PlanAnswer, PlanAsked } from './planWorker.ts';

/** In the order in which they are asked when several wait. */
const KINDS = ['layouts', 'prices', 'curves'] as const;

export class PlanThread {
  readonly #worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' });
  readonly #waiting = new Map<PlanAsked['ask'], PlanAsked>();
  #busy = false;

  /** An answer is not heard when a newer question of its kind waits already. */
  constructor(hear: (answer: PlanAnswer) => void) {
    this.#worker.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      this.#busy = false;
      if (!this.#waiting.has(data.ask)) hear(data);
      this.#askNext();
    };
  }

  ask(question: PlanAsked): void {
    this.#waiting.set(question.ask, question);
    this.#askNext();
  }

  end(): void {
    this.#worker.terminate();
  }

  #askNext(): void {
    const kind = KINDS.find((k) => this.#waiting.has(k));
    if (this.#busy || kind === undefined) return;
    this.#busy = true;
    this.#worker.postMessage(this.#waiting.get(kind));
    this.#waiting.delete(kind);
  }
}
