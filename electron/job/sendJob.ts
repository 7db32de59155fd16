// Sending a job: its sheets written, read back and proved under hidden names, and only then given to the RIP.
import type { SendProgress } from '../../shared/contract/sendProgress.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import type { SheetsProof } from '../proof/proveSheets.ts';
import { sendToFolder } from '../send/sendToFolder.ts';
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

/** What came of a sending. `held`: the proof found faults, so nothing was left in the folder. */
export interface SentJob {
  readonly held: boolean;
  /** The paths of the files in the folder; none when held. */
  readonly paths: readonly string[];
  readonly sides: readonly SidePage[];
  readonly proof: SheetsProof;
  readonly notices: readonly string[];
}

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

  const readBack = new Map<string, Uint8Array>();
  let proof: SheetsProof | undefined;
  const proveLast = async (name: string, bytes: Uint8Array): Promise<Result<void>> => {
    readBack.set(name, bytes);
    if (readBack.size < sheets.value.files.length) return ok(undefined);
    const proved = await proveWritten(job, art.value, sheets.value.sides, readBack, {
      pictures: options.pictures,
      onCompared: (done, of) => note({ step: 'prove', done, of }),
    });
    if (!proved.ok) return proved;
    proof = proved.value;
    return proof.findings.length > 0 && !options.despiteFindings ? refuse(HELD) : ok(undefined);
  };
  note({ step: 'write-files', done: 0, of: sheets.value.files.length });
  const sent = await sendToFolder(
    options.to,
    sheets.value.files.map(({ name, bytes }) => ({ name, bytes, verify: (read) => proveLast(name, read) })),
    { overwrite: options.overwrite, ...(options.signal === undefined ? {} : { signal: options.signal }) },
  );
  const { sides, notices } = sheets.value;
  if (!sent.ok) {
    if (sent.fault.code !== 'proof-failed' || proof === undefined) return sent;
    return ok({ held: true, paths: [], sides, proof, notices });
  }
  if (proof === undefined) throw new Error('Files were sent without a proof');
  return ok({
    held: false,
    paths: sent.value.paths,
    sides,
    proof,
    notices: [...notices, ...sent.value.notices],
  });
}

const HELD = {
  code: 'proof-failed',
  message: 'The proof found faults in the written sheets.',
  remedy: 'Mend what the findings name, then send again.',
} as const;
