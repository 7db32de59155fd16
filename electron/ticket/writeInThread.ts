// Writing the papers of a job in a thread of its own, so that the window stays lively meanwhile.
import { Worker } from 'node:worker_threads';
import { type Result, refuse } from '../../shared/fault/result.ts';
import type { WriteTicketAsk, WrittenTicket } from './writeTicket.ts';

const START = new URL('./startTicketWorker.mjs', import.meta.url);

/** As `writeTicket`; a thread that breaks down is a refusal (`write-failed`). */
export function writeInThread(ask: WriteTicketAsk): Promise<Result<WrittenTicket>> {
  return new Promise((resolve) => {
    const worker = new Worker(START, { workerData: ask, execArgv: [] });
    worker.once('message', (written: Result<WrittenTicket>) => resolve(written));
    worker.once('error', (error) => resolve(refuse(broken(error.message, ask.to))));
    worker.once('exit', () => resolve(refuse(broken('it ended early', ask.to))));
  });
}

function broken(why: string, to: string) {
  return {
    code: 'write-failed' as const,
    message: `Writing the papers broke down (${why}).`,
    remedy: 'Look into the folder, then write them again. If it happens once more, look through the job.',
    where: to,
  };
}
