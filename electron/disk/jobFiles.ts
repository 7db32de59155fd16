// Job files on the disk: read and checked, and saved whole.
import { readFile, stat } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { readJob, writeJob } from '../../shared/job/jobFile.ts';
import { foundFrom, rebaseJob, writtenBeside } from './faceFiles.ts';
import { readingFault, writingFault } from './fileFaults.ts';
import { sha256Of } from './hashes.ts';
import { parseJson } from './readJson.ts';
import { saveWhole } from './saveWhole.ts';
import { clearUnfinished } from './unfinished.ts';

/** Far more than a job of ten thousand positions needs. */
const MAX_JOB_BYTES = 64 * 1024 * 1024;

/** The job files that this host has read or written, so that it notices when somebody else changes one. */
export class JobFiles {
  /** The hash of what was last read or written there, by path. */
  readonly #seen = new Map<string, string>();

  /** The job of a file, its art named by whole paths. */
  async open(path: string): Promise<Result<Job>> {
    const bytes = await readBytes(path);
    if (!bytes.ok) return bytes;
    const job = readJobText(bytes.value.toString('utf8'), path);
    if (job.ok) this.#seen.set(path, sha256Of(bytes.value));
    return job;
  }

  /** The hash of what was last read or written at this path. */
  seenAt(path: string): string | undefined {
    return this.#seen.get(path);
  }

  /** Takes a hash that an earlier host saw at this path as seen. */
  recall(path: string, sha256: string): void {
    this.#seen.set(path, sha256);
  }

  /**
   * Saves a job whose art is named by whole paths. Unless it may replace, it overwrites nothing but what this host
   * itself last read or wrote there.
   */
  async save(path: string, job: Job, mayReplace: boolean): Promise<Result<void>> {
    const now = await readFile(path).catch(() => undefined);
    const seen = this.#seen.get(path);
    if (now !== undefined && !mayReplace && sha256Of(now) !== seen) {
      return refuse(seen === undefined ? exists(path) : changedElsewhere(path));
    }
    const text = writeJob(rebaseJob(job, writtenBeside(path)));
    try {
      await saveWhole(path, Buffer.from(text), now !== undefined);
    } catch (error) {
      return refuse(writingFault(error, path));
    }
    this.#seen.set(path, sha256Of(text));
    await clearUnfinished(dirname(path));
    return ok(undefined);
  }
}

/** The job in a text; `path` is what its art is named from. */
export function readJobText(text: string, path: string): Result<Job> {
  const json = parseJson(text, () => notJson(path));
  if (!json.ok) return json;
  const job = readJob(json.value);
  return job.ok ? ok(rebaseJob(job.value, foundFrom(path))) : job;
}

function notJson(path: string): Fault {
  return {
    code: 'job-invalid',
    message: `${basename(path)} is not a job file: it is not JSON.`,
    remedy: 'Choose a job that was saved by this program, or an earlier copy of this one.',
    where: path,
  };
}

async function readBytes(path: string): Promise<Result<Buffer>> {
  try {
    const { size } = await stat(path);
    if (size > MAX_JOB_BYTES) return refuse(tooLarge(path));
    return ok(await readFile(path));
  } catch (error) {
    return refuse(readingFault(error, path));
  }
}

function tooLarge(path: string): Fault {
  return {
    code: 'job-invalid',
    message: `${basename(path)} is far too large for a job file.`,
    remedy: 'Choose a job that was saved by this program.',
    where: path,
  };
}

function exists(path: string): Fault {
  return {
    code: 'file-exists',
    message: `${basename(path)} is there already.`,
    remedy: 'Choose another name, or allow it to be replaced.',
    where: path,
  };
}

function changedElsewhere(path: string): Fault {
  return {
    code: 'file-changed',
    message: `${basename(path)} has been changed by somebody else since it was opened here.`,
    remedy: 'Save under another name to keep both, or allow it to be replaced.',
    where: path,
  };
}
