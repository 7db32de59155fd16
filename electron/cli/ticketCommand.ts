// `ticket`: the run sheet, the dummy, the cutting order and the open job ticket of a job, as files in a folder.
import { basename, join, resolve } from 'node:path';
import { ok, type Result } from '../../shared/fault/result.ts';
import { type Stock, stockFrom } from '../../shared/runSheet/stock.ts';
import { JobFiles } from '../disk/jobFiles.ts';
import { readLibraryFile } from '../disk/libraryFiles.ts';
import { writeTicket } from '../ticket/writeTicket.ts';
import { answer, answerFault } from './answer.ts';

export interface TicketOptions {
  readonly to: string;
  readonly json: boolean;
  readonly library?: string;
  readonly paper?: string;
}

export async function ticket(jobPath: string, options: TicketOptions): Promise<void> {
  const { to, json } = options;
  const path = resolve(jobPath);
  const job = await new JobFiles().open(path);
  if (!job.ok) return answerFault(json, job.fault);
  const stock = await readStock(options, job.value.brief.plan?.paper);
  if (!stock.ok) return answerFault(json, stock.fault);
  const ask = { job: job.value, file: basename(path), to, now: new Date(), stock: stock.value };
  const written = await writeTicket(ask);
  if (!written.ok) return answerFault(json, written.fault);
  const { files, notices } = written.value;
  const paths = files.map(({ part, name }) => ({ part, file: join(resolve(to), name) }));
  answer(json, { files: paths, notices }, [...paths.map(({ file }) => `Wrote ${file}`), ...notices]);
}

/** What a library tells of the paper that is named, else of the planned one if it has it; nothing without a library. */
async function readStock(
  { library, paper }: TicketOptions,
  planned: string | undefined,
): Promise<Result<Stock | undefined>> {
  if (library === undefined) return ok(undefined);
  const read = await readLibraryFile(library);
  if (!read.ok) return read;
  const known = read.value.papers.find(({ name }) => name === planned)?.name;
  return stockFrom(read.value, paper ?? known);
}
