// The papers of the window's job, written into the folder that the person chose.
import type { Papers, PapersAsk } from '../../shared/contract/papers.ts';
import { ok, type Result } from '../../shared/fault/result.ts';
import { stockFrom } from '../../shared/runSheet/stock.ts';
import { writeInThread } from '../ticket/writeInThread.ts';
import type { Entries } from './entries.ts';
import type { LibraryKeeper } from './libraryKeeper.ts';
import { jobFromWindow } from './windowJob.ts';

/** Writes them for the paper that is named, with what the library tells of it. */
export async function writePapers(
  entries: Entries,
  library: LibraryKeeper,
  ask: PapersAsk,
  now: Date,
): Promise<Result<Papers>> {
  const job = jobFromWindow(entries, ask.job);
  if (!job.ok) return job;
  const to = entries.folders.resolve(ask.folder);
  if (!to.ok) return to;
  const file = ask.file === undefined ? ok(undefined) : entries.files.resolve(ask.file);
  if (!file.ok) return file;
  const stock = stockFrom(await library.read(), ask.paper);
  if (!stock.ok) return stock;
  const written = await writeInThread({
    job: job.value,
    file: file.value,
    to: to.value,
    now,
    stock: stock.value,
  });
  if (!written.ok) return written;
  const { files, notices } = written.value;
  return ok({ folder: entries.folder(to.value), names: files.map(({ name }) => name), notices });
}
