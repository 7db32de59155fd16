// Sending or proving a job in a thread of its own, which leaves the folder in order when it is cancelled.
import type { SendProgress } from '../../shared/contract/sendProgress.ts';
import { MAX_JOB_MEGABYTES } from '../thread/limits.ts';
import { Thread } from '../thread/thread.ts';
import { threadFault } from '../thread/threadFailure.ts';
import type { SendOutcome, SendTask } from './sendTask.ts';

const START = new URL('./startSendWorker.mjs', import.meta.url);

/** How long a cancelled sending may take to put the folder in order: a share may answer slowly. */
const TIDY_SECONDS = 120;

/** Comes to how the task ended, also where its thread broke down. It has no limit of time: a slow share is no fault. */
export async function startSending(
  task: SendTask,
  signal: AbortSignal,
  onProgress: (progress: SendProgress) => void,
  thread = new Thread(START, MAX_JOB_MEGABYTES),
  tidySeconds = TIDY_SECONDS,
): Promise<SendOutcome> {
  const came = await thread.run<SendOutcome, SendProgress>(task, {
    signal,
    tidySeconds,
    onTheWay: onProgress,
  });
  if (came.ok) return came.value;
  const { what, folder: where } = task;
  const work = what === 'send' ? 'Sending' : 'Proving';
  return {
    at: 'failed',
    fault: threadFault(came.fault, { code: 'write-failed', work, remedy: REMEDY, where }),
  };
}

const REMEDY =
  'Look into the folder for files that begin with .turnlay and remove them, then try again. If it happens once more, look through the art.';
