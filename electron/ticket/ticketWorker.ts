// The thread in which the papers of a job are made and written: planning the cuts of a large sheet takes its time.
import { parentPort, workerData } from 'node:worker_threads';
import { type WriteTicketAsk, writeTicket } from './writeTicket.ts';

const port = parentPort;
if (port === null) throw new Error('Papers are made in a thread of their own');
port.postMessage(await writeTicket(workerData as WriteTicketAsk));
port.close();
