// Planning a gang run as a task for a thread.
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { GangOrder } from '../../shared/gang/gang.ts';
import { runThread, type Said } from '../thread/runThread.ts';
import type { GangAnswer } from './solveGang.ts';

/** What the thread is told. */
export interface GangTask {
  readonly order: GangOrder;
  readonly seconds: number;
}

export type GangSaid = Said<Result<GangAnswer>, GangAnswer>;

/** Planning under way. Stopped, it comes to its best plan so far. */
export interface Planning {
  readonly outcome: Promise<Result<GangAnswer>>;
  stop(): void;
}

/** Loading the solver and ending the last step take longer than the planning was given. */
const GRACE = 15;

const START = new URL('./startGangWorker.mjs', import.meta.url);

/** Plans in a thread of its own, which may break down: then too the best plan so far is the answer. */
export function startPlanning(task: GangTask, onBetter?: (answer: GangAnswer) => void): Planning {
  let best: GangAnswer | undefined;
  const { outcome, stop } = runThread<Result<GangAnswer>, GangAnswer>(START, task, {
    seconds: task.seconds + GRACE,
    onTheWay: (better) => {
      best = better;
      onBetter?.(better);
    },
  });
  return {
    outcome: outcome.then((came) => {
      if (came !== undefined) return came;
      return best === undefined ? refuse(BROKE_DOWN) : ok(best);
    }),
    stop,
  };
}

const BROKE_DOWN: Fault = {
  code: 'gang-impossible',
  message: 'Planning was ended before there was a plan.',
  remedy: 'Plan again and give it more time.',
};
