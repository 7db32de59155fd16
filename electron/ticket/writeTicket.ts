// The papers of a job into a folder, each whole.
import { access, mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import type { Stock } from '../../shared/runSheet/stock.ts';
import { writtenBeside } from '../disk/faceFiles.ts';
import { writingFault } from '../disk/fileFaults.ts';
import { saveWhole } from '../disk/saveWhole.ts';
import { makeTicket, type TicketPart } from './makeTicket.ts';

export interface WriteTicketAsk {
  /** The faces name whole paths. */
  readonly job: Job;
  readonly file: string | undefined;
  /** The folder; made where it is missing. */
  readonly to: string;
  readonly now: Date;
  readonly stock?: Stock | undefined;
}

export interface WrittenTicket {
  readonly files: readonly { readonly part: TicketPart; readonly name: string }[];
  readonly notices: readonly string[];
}

/**
 * Writes the papers of a job; those of an earlier writing are replaced. One that this job cannot have and that lies
 * there still is told, not taken away.
 */
export async function writeTicket(ask: WriteTicketAsk): Promise<Result<WrittenTicket>> {
  const { job, file, now, stock } = ask;
  const to = resolve(ask.to);
  const made = await makeTicket({ job, file, now, stock, urlOf: urlsFrom(to) });
  if (!made.ok) return made;
  const { files, left, notices } = made.value;
  try {
    await mkdir(to, { recursive: true });
  } catch (error) {
    return refuse(writingFault(error, to));
  }
  for (const { name, bytes } of files) {
    try {
      await saveWhole(join(to, name), bytes, true);
    } catch (error) {
      return refuse(writingFault(error, join(to, name)));
    }
  }
  const stale: string[] = [];
  for (const name of left) {
    if (await isThere(join(to, name)))
      stale.push(`${name} is of an earlier writing and does not fit any more.`);
  }
  return ok({ files: files.map(({ part, name }) => ({ part, name })), notices: [...notices, ...stale] });
}

/** The art as seen from the folder of the ticket; from another disk by its whole address. */
function urlsFrom(folder: string): (art: string) => string {
  const beside = writtenBeside(join(folder, 'ticket'));
  return (art) => {
    const way = beside(art);
    return way === art ? pathToFileURL(art).href : way.split('/').map(encodeURIComponent).join('/');
  };
}

function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
