// The thread in which a gang run is planned: one order, every better plan, one answer.
import { parentPort, workerData } from 'node:worker_threads';
import type { GangSaid, GangTask } from './gangTask.ts';
import { solveGang } from './solveGang.ts';

const port = parentPort;
if (port === null) throw new Error('Gang runs are planned in a thread of their own');
const say = (said: GangSaid) => port.postMessage(said);
const { order, seconds } = workerData as GangTask;
say({ outcome: await solveGang(order, { seconds, onBetter: (onTheWay) => say({ onTheWay }) }) });
