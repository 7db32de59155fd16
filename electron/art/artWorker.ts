// The thread in which strangers' files are opened: one file, one answer.
import { parentPort, workerData } from 'node:worker_threads';
import { examine, type Question } from './examine.ts';

if (parentPort === null) throw new Error('The art worker runs in a thread of its own');
const answer = await examine(workerData as Question);
const mended = answer.ok ? answer.value.mended : undefined;
parentPort.postMessage(answer, mended === undefined ? [] : [mended.buffer as ArrayBuffer]);
