// Planning a gang run as a task for a thread.
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { GangOrder } from '../../shared/gang/gang.ts';
import { Thread } from '../thread/thread.ts';
import { threadFault } from '../thread/threadFailure.ts';
import type { GangAnswer } from './solveGang.ts';

/** What the thread is told. */
export interface GangTask {
  readonly order: GangOrder;
  readonly seconds: number;
}

/** Who hears of better plans, and how planning is ended, which then comes to its best plan so far. */
interface PlanningCare {
  readonly signal?: AbortSignal;
  readonly onBetter?: (answer: GangAnswer) => void;
}

/** Loading the solver and ending the last step take longer than the planning was given. */
const GRACE_SECONDS = 15;
/** @source common practice, no source: many times what the largest published order was seen to need. */
const MAX_MEGABYTES = 2048;

const START = new URL('./startGangWorker.mjs', import.meta.url);

/** Plans in a thread of its own, which may break down: then too the best plan so far is the answer. */
export async function planGang(
  task: GangTask,
  { signal, onBetter }: PlanningCare = {},
): Promise<Result<GangAnswer>> {
  let best: GangAnswer | undefined;
  const came = await new Thread(START, MAX_MEGABYTES).run<Result<GangAnswer>, GangAnswer>(task, {
    signal,
    seconds: task.seconds + GRACE_SECONDS,
    onTheWay: (better) => {
      best = better;
      onBetter?.(better);
    },
  });
  if (came.ok) return came.value;
  return best === undefined ? refuse(threadFault(came.fault, PLANNING)) : ok(best);
}

const PLANNING = {
  code: 'gang-impossible',
  work: 'Planning the forms',
  remedy: 'Plan again and give it more time.',
} as const;
