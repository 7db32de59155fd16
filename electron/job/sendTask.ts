// Sending or proving a job as one task: what it is told, what it reports on the way, and how it ends.
import type { SentSheets } from '../../shared/contract/sending.ts';
import type { SendProgress } from '../../shared/contract/sendProgress.ts';
import type { Fault } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import type { ProofReport } from '../../shared/proof/finding.ts';
import type { ProofPicture } from '../proof/pictures.ts';
import type { SheetsProof } from '../proof/proveSheets.ts';
import { proveJob } from './proveJob.ts';
import { sendJob } from './sendJob.ts';

/** Plain values, sent between threads. The faces of the job name whole paths. */
export interface SendTask {
  readonly what: 'send' | 'prove';
  readonly job: Job;
  readonly folder: string;
  readonly replace: boolean;
  readonly despiteFindings: boolean;
}

export type SendOutcome =
  | {
      readonly at: 'done';
      readonly is: SentSheets['is'];
      readonly sides: readonly SidePage[];
      readonly proof: ProofReport;
      readonly pictures: readonly ProofPicture[];
      readonly notices: readonly string[];
    }
  | { readonly at: 'failed'; readonly fault: Fault }
  | { readonly at: 'cancelled' };

/** Does the task. Cancelled before the files have their names, it leaves the folder as it was. */
export async function doSendTask(
  task: SendTask,
  signal: AbortSignal,
  onProgress: (progress: SendProgress) => void,
): Promise<SendOutcome> {
  const note: Note = (progress) => {
    signal.throwIfAborted();
    onProgress(progress);
  };
  try {
    return task.what === 'send' ? await send(task, signal, note) : await prove(task, note);
  } catch (error) {
    if (signal.aborted && error instanceof Error && error.name === 'AbortError') return { at: 'cancelled' };
    throw error;
  }
}

type Note = (progress: SendProgress) => void;

async function send(task: SendTask, signal: AbortSignal, onProgress: Note): Promise<SendOutcome> {
  const sent = await sendJob(task.job, {
    to: task.folder,
    overwrite: task.replace,
    despiteFindings: task.despiteFindings,
    pictures: true,
    now: new Date(),
    signal,
    onProgress,
  });
  if (!sent.ok) return failed(sent.fault);
  const { is, sides, proof, notices } = sent.value;
  return { at: 'done', is, sides, ...apart(proof), notices };
}

async function prove({ job, folder }: SendTask, note: Note): Promise<SendOutcome> {
  note({ step: 'find-files', done: 0, of: 1 });
  const proved = await proveJob(job, folder, {
    pictures: true,
    onCompared: (done, of) => note({ step: 'prove', done, of }),
  });
  if (!proved.ok) return failed(proved.fault);
  const { sides, proof } = proved.value;
  return { at: 'done', is: 'proved', sides, ...apart(proof), notices: [] };
}

function failed(fault: Fault): SendOutcome {
  return fault.code === 'send-cancelled' ? { at: 'cancelled' } : { at: 'failed', fault };
}

/** The report and its pictures, each for itself. */
function apart({ pictures, ...proof }: SheetsProof) {
  return { proof, pictures };
}
