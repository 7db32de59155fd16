// Writing the papers of a job in a thread of its own, so that the window stays lively meanwhile.
import { type Result, refuse } from '../../shared/fault/result.ts';
import { MAX_JOB_MEGABYTES } from '../thread/limits.ts';
import { Thread } from '../thread/thread.ts';
import { threadFault } from '../thread/threadFailure.ts';
import type { WriteTicketAsk, WrittenTicket } from './writeTicket.ts';

const START = new URL('./startTicketWorker.mjs', import.meta.url);

/** The most that planning the cuts and opening turned art were seen to take is some seconds. */
const MAX_SECONDS = 600;

/** As `writeTicket`; a thread that breaks down or takes too much is a refusal (`write-failed`). */
export async function writeInThread(
  ask: WriteTicketAsk,
  thread = new Thread(START, MAX_JOB_MEGABYTES),
  seconds = MAX_SECONDS,
): Promise<Result<WrittenTicket>> {
  const came = await thread.run<Result<WrittenTicket>>(ask, { seconds });
  return came.ok ? came.value : refuse(threadFault(came.fault, { ...WRITING, where: ask.to }));
}

const WRITING = {
  code: 'write-failed',
  work: 'Writing the papers',
  remedy: 'Look into the folder, then write them again. If it happens once more, look through the job.',
} as const;
