// Starting the thread in which a job is sent or proved.
import { Worker } from 'node:worker_threads';
import type { SendTask } from './sendTask.ts';

const START = new URL('./startSendWorker.mjs', import.meta.url);

export function startSending(task: SendTask): Worker {
  return new Worker(START, { workerData: task, execArgv: [] });
}
