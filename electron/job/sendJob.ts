// Sending a job: its sheets written, read back and proved under hidden names, and only then given to the RIP.
import type { SendProgress } from '../../shared/contract/sendProgress.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import type { SheetsProof } from '../proof/proveSheets.ts';
import { type FolderCheck, sendToFolder } from '../send/sendToFolder.ts';
import { changedArt, openJobArt } from './jobArt.ts';
import { writeJobSheets } from './jobSheets.ts';
import { proveWritten } from './proveWritten.ts';

export interface SendJobOptions {
  /** The RIP's folder. */
  readonly to: string;
  /** Whether files of the same names may be replaced. */
  readonly overwrite: boolean;
  /** Whether the sheets are sent though the proof finds faults in them. */
  readonly despiteFindings: boolean;
  /** Whether the proof takes pictures of every piece. */
  readonly pictures: boolean;
  readonly now: Date;
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: SendProgress) => void;
}

/** What came of a sending. Held: the proof found faults, so nothing was left in the folder. */
export type SentJob = {
  readonly sides: readonly SidePage[];
  readonly proof: SheetsProof;
  /** What the person should know, in words. */
  readonly notices: readonly string[];
} & ({ readonly is: 'held' } | { readonly is: 'sent'; readonly paths: readonly string[] });

/**
 * Sends both sides of a job to the RIP's folder, whole or not at all. The faces name whole paths.
 *
 * The proof is made from what the disk gives back, before the RIP can see the files: a hot folder may print at once.
 */
export async function sendJob(job: Job, options: SendJobOptions): Promise<Result<SentJob>> {
  const { onProgress: note = () => undefined } = options;
  note({ step: 'read-art', done: 0, of: 1 });
  const art = await openJobArt(job.brief);
  if (!art.ok) return art;
  const changed = changedArt(job, art.value);
  if (changed !== undefined) return refuse(changed);
  note({ step: 'write-sheets', done: 0, of: 1 });
  const sheets = await writeJobSheets(job, art.value, options.now);
  if (!sheets.ok) return sheets;

  const { files, sides, notices } = sheets.value;
  const check: FolderCheck<SheetsProof> = async (written) => {
    const proof = await proveWritten(job, art.value, sides, written, {
      pictures: options.pictures,
      onCompared: (done, of) => note({ step: 'prove', done, of }),
    });
    if (!proof.ok) return proof;
    const hasFaults = proof.value.findings.length > 0;
    return ok({ found: proof.value, holds: hasFaults && !options.despiteFindings });
  };
  note({ step: 'write-files', done: 0, of: files.length });
  const { to, overwrite, signal } = options;
  const sent = await sendToFolder(to, files, { check, overwrite, signal });
  if (!sent.ok) return sent;
  const { found: proof, ...outcome } = sent.value;
  return ok({ ...outcome, sides, proof, notices: [...notices, ...outcome.notices] });
}
