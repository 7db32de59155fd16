// Proving a job from the files that lie in a folder already.
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { nameJobFiles, type SidePage } from '../../shared/job/nameJobFiles.ts';
import type { ProofOptions, SheetsProof } from '../proof/proveSheets.ts';
import { changedArt, openJobArt } from './jobArt.ts';
import { proveWritten } from './proveWritten.ts';

export interface ProvedJob {
  readonly sides: readonly SidePage[];
  readonly proof: SheetsProof;
}

/** Proves the files of a job that lie in `from`. The faces name whole paths. */
export async function proveJob(job: Job, from: string, options: ProofOptions): Promise<Result<ProvedJob>> {
  const art = await openJobArt(job.brief);
  if (!art.ok) return art;
  const changed = changedArt(job, art.value);
  if (changed !== undefined) return refuse(changed);
  const named = await findNames(job, from);
  if (!named.ok) return named;
  const files = new Map<string, Uint8Array>();
  for (const name of named.value.names) {
    try {
      files.set(name, await readFile(join(from, name)));
    } catch {
      return refuse(sheetMissing(name, from));
    }
  }
  const proof = await proveWritten(job, art.value, named.value.sides, files, options);
  return proof.ok ? ok({ sides: named.value.sides, proof: proof.value }) : proof;
}

/** A day that no file is named by; it holds the place of the real one. */
const ANY_DAY = '9999-99-99';

/** The names that the job's files have, of the latest day for which the first of them is there. */
async function findNames(job: Job, from: string): Promise<ReturnType<typeof nameJobFiles>> {
  const pattern = nameJobFiles(job, ANY_DAY);
  if (!pattern.ok) return pattern;
  const [before, ...after] = (pattern.value.names[0] ?? '').split(ANY_DAY);
  if (before === undefined || after.length === 0) return pattern;
  let there: string[];
  try {
    there = await readdir(from);
  } catch {
    return refuse(sheetMissing(pattern.value.names[0] ?? '', from));
  }
  const days = there
    .filter((name) => name.startsWith(before))
    .map((name) => name.slice(before.length, before.length + ANY_DAY.length))
    .filter((day) => /^\d{4}-\d\d-\d\d$/.test(day))
    .sort();
  return nameJobFiles(job, days.at(-1) ?? ANY_DAY);
}

function sheetMissing(name: string, from: string): Fault {
  return {
    code: 'sheet-missing',
    message: `${name} is not in ${from}, or cannot be read there.`,
    remedy:
      'Send the job to this folder first, or name the folder that it was sent to. A RIP may have taken it already.',
    where: name,
  };
}
