// The thread in which a gang run is planned: one order, every better plan, one answer.
import type { Result } from '../../shared/fault/result.ts';
import { doTask } from '../thread/doTask.ts';
import type { GangTask } from './gangTask.ts';
import { type GangAnswer, solveGang } from './solveGang.ts';

doTask<GangTask, Result<GangAnswer>, GangAnswer>(({ order, seconds }, { tell }) =>
  solveGang(order, { seconds, onBetter: tell }),
);
