// The log of a job's runs on the disk, beside the job: read, and added to in whole lines that a crash cannot spoil.
import { basename, dirname, join } from 'node:path';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { RunEvent } from '../../shared/run/events.ts';
import { type RunLog, readLog, writeEntry } from '../../shared/run/logText.ts';
import { addEntry } from '../../shared/run/run.ts';
import { appendWhole, type Disk, flushFolder } from './disk.ts';
import { JOB_ENDING } from './endings.ts';
import { readingFault, writingFault } from './fileFaults.ts';
import { systemCode } from './systemCode.ts';

const LOG_ENDING = '.run.jsonl';
const LINE_END = 0x0a;

/** Where the log of a job lies. */
export function logPathOf(job: string): string {
  return join(dirname(job), `${basename(job, JOB_ENDING)}${LOG_ENDING}`);
}

/** What the log says; nothing where there is none yet. */
export async function readRunLog(disk: Disk, path: string): Promise<Result<RunLog>> {
  const bytes = await readBytes(disk, path);
  return bytes.ok ? ok(readLog(bytes.value.toString('utf8'))) : bytes;
}

/**
 * Adds an event to the log, numbered and dated, and answers with the log as it is then. What cannot have happened is
 * refused. Once it is answered it is on the disk; where writing fails the log is as it was.
 */
export async function addToRunLog(
  disk: Disk,
  path: string,
  event: RunEvent,
  now: Date,
): Promise<Result<RunLog>> {
  const bytes = await readBytes(disk, path);
  if (!bytes.ok) return bytes;
  const log = readLog(bytes.value.toString('utf8'));
  const entry = { id: log.book.last + 1, at: now.toISOString(), event };
  const after = addEntry(log.book, entry);
  if (!after.ok) return after;
  const end = bytes.value.lastIndexOf(LINE_END) + 1;
  try {
    const torn = end < bytes.value.length;
    await appendWhole(disk, path, Buffer.from(writeEntry(entry)), torn ? end : undefined);
    if (end === 0) await flushFolder(disk, dirname(path));
  } catch (error) {
    return refuse(writingFault(error, path));
  }
  return ok({ ...log, book: after.value });
}

async function readBytes(disk: Disk, path: string): Promise<Result<Buffer>> {
  try {
    return ok(await disk.readFile(path));
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return ok(Buffer.alloc(0));
    return refuse(readingFault(error, path));
  }
}
