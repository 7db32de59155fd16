// The thread in which a job is sent or proved, so that the window stays lively meanwhile: one task, one outcome.
import { parentPort, workerData } from 'node:worker_threads';
import type { SendOutcome, SendReport, SendTask } from './sendTask.ts';
import { doSendTask } from './sendTask.ts';

const port = parentPort;
if (port === null) throw new Error('Sending runs in a thread of its own');
const cancel = new AbortController();
port.once('message', () => cancel.abort());
const report = (what: SendReport) => port.postMessage(what);
const outcome: SendOutcome = await doSendTask(workerData as SendTask, cancel.signal, report);
port.postMessage(
  outcome,
  outcome.at === 'done' ? outcome.pictures.map(({ png }) => png.buffer as ArrayBuffer) : [],
);
port.close();
