// The thread's own side: it waits for its one task, does it, and says what came of it.
import { parentPort, type Transferable } from 'node:worker_threads';
import type { Asked, Said } from './messages.ts';

/** What a task has at hand. */
export interface TaskHands<W> {
  /** Tells the starter something on the way. */
  readonly tell: (said: W) => void;
  /** Aborted when the task is to stop; whoever started it then waits until all is in order. */
  readonly signal: AbortSignal;
}

/** Does this thread's task. What it throws ends the thread, and its starter hears of it. `moved`: buffers of the outcome that are handed over. */
export function doTask<A, T, W = never>(
  work: (task: A, hands: TaskHands<W>) => Promise<T>,
  moved: (outcome: T) => readonly Transferable[] = () => [],
): void {
  const port = parentPort;
  if (port === null) throw new Error('A task is done in a thread of its own');
  const cancel = new AbortController();
  const say = (said: Said<T, W>, handed: readonly Transferable[] = []) => port.postMessage(said, [...handed]);
  // It may have been started long before there is anything to do.
  port.on('message', async (asked: Asked<A>) => {
    if ('cancel' in asked) return cancel.abort();
    const hands = { tell: (onTheWay: W) => say({ onTheWay }), signal: cancel.signal };
    const outcome = await work(asked.task, hands);
    say({ outcome }, moved(outcome));
    port.close();
  });
}
