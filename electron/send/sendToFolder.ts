// Getting the sheets of a job into the RIP's folder: all of them and whole, or none.
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { type Disk, dropName, flushFolder, giveName, lookUp, NODE_DISK, writeWhole } from '../disk/disk.ts';
import { systemCode } from '../disk/systemCode.ts';
import { refuseBeforehand } from './refuseBeforehand.ts';
import { faultOf } from './sendFaults.ts';
import { type StepBack, takeBack } from './takeBack.ts';

/** A finished file on its way out. */
export interface Outgoing {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What was found in the files, and whether that keeps all of them from being sent. */
export interface Checked<F> {
  readonly found: F;
  readonly holds: boolean;
}

/** Looks at all the files together, by name, as the disk gives them back. A refusal keeps them from being sent, too. */
export type FolderCheck<F> = (files: ReadonlyMap<string, Uint8Array>) => Promise<Result<Checked<F>>>;

export interface SendOptions<F> {
  readonly check: FolderCheck<F>;
  /** Whether files of the same names may be replaced. */
  readonly overwrite: boolean;
  /** Cancels until the files are given their names; the folder is then as it was. */
  readonly signal?: AbortSignal | undefined;
  readonly disk?: Disk;
}

/** How a sending ended. Held back, the folder is as it was. */
export type FolderOutcome<F> = {
  /** What the check found. */
  readonly found: F;
  /** What the person should know besides, in words. */
  readonly notices: readonly string[];
} & (
  | { readonly is: 'held' }
  /** `paths`: of the files, in the order they were handed in. */
  | { readonly is: 'sent'; readonly paths: readonly string[] }
);

interface Sending {
  readonly disk: Disk;
  readonly folder: string;
  readonly files: readonly Outgoing[];
  readonly options: Omit<SendOptions<unknown>, 'check'>;
  /** Tells the temporary names of this sending from all others. */
  readonly mark: string;
  /** How the folder becomes what it was. */
  readonly back: StepBack[];
  /** Where the files lie that were replaced. */
  readonly kept: string[];
  /** The file that is being dealt with. */
  current: string;
}

/**
 * Sends files to the RIP's folder.
 *
 * Each is written under a hidden name that does not end in .pdf, flushed, read back from the disk and compared byte for
 * byte; then all are checked together, and only when the check holds none back do they get their own names. Whatever goes
 * wrong before that is done, the folder becomes what it was: temporary files are removed, names taken back, replaced files
 * restored. What could not be put right is said in the fault, or in the notices of what was held back.
 *
 * @throws what `check` throws, and mistakes of our own, after the folder has been put right.
 */
export async function sendToFolder<F>(
  folder: string,
  files: readonly Outgoing[],
  options: SendOptions<F>,
): Promise<Result<FolderOutcome<F>>> {
  const { disk = NODE_DISK } = options;
  const mark = `.turnlay-${randomUUID().slice(0, 8)}`;
  const current = files[0]?.name ?? folder;
  const sending: Sending = { disk, folder, files, options, mark, back: [], kept: [], current };
  let checked: Result<Checked<F>>;
  try {
    checked = await takeSteps(sending, options.check);
  } catch (error) {
    const fault = faultFrom(error, sending);
    if (fault === undefined) {
      await takeBack(sending.back);
      throw error;
    }
    checked = refuse(fault);
  }
  if (!checked.ok) {
    const { fault } = checked;
    const left = await takeBack(sending.back);
    return refuse({ ...fault, message: [fault.message, ...left].join(' ') });
  }
  const { found, holds } = checked.value;
  if (holds) return ok({ is: 'held', found, notices: await takeBack(sending.back) });
  const paths = files.map((f) => join(folder, f.name));
  return ok({ is: 'sent', found, paths, notices: await clearReplaced(sending) });
}

/** Up to the names; what is held back gets none. */
async function takeSteps<F>(sending: Sending, check: FolderCheck<F>): Promise<Result<Checked<F>>> {
  const { disk, folder, files, options } = sending;
  const names = files.map((f) => f.name);
  const refused = await refuseBeforehand(disk, folder, names, options.overwrite);
  if (refused !== undefined) return refuse(refused);
  const written = await writeAll(sending);
  if (!written.ok) return written;
  const checked = await check(written.value);
  if (!checked.ok || checked.value.holds) return checked;
  const unnamed = await nameAll(sending);
  return unnamed === undefined ? checked : refuse(unnamed);
}

/** The fault for what was thrown on the way; none for a mistake of our own. */
function faultFrom(error: unknown, sending: Sending): Fault | undefined {
  const code = systemCode(error);
  if (code !== undefined) return faultOf(code, sending.folder, sending.current);
  return isCancelled(sending) && error instanceof Error && error.name === 'AbortError'
    ? CANCELLED
    : undefined;
}

const CANCELLED: Fault = {
  code: 'send-cancelled',
  message: 'Sending was cancelled.',
  remedy: 'Send again when you want the sheets printed.',
};

function isCancelled(sending: Sending): boolean {
  return sending.options.signal?.aborted === true;
}

/** Where a file lies until it has its name, and where a file that it replaces lies until all is done. */
function hiddenPath(sending: Sending, i: number, ending: 'part' | 'kept'): string {
  return join(sending.folder, `${sending.mark}-${i + 1}.${ending}`);
}

/** Puts all files into the folder under hidden names; gives what the disk has made of each, by name. */
async function writeAll(sending: Sending): Promise<Result<ReadonlyMap<string, Uint8Array>>> {
  const { disk, folder, files, options, back } = sending;
  const written = new Map<string, Uint8Array>();
  for (const [i, file] of files.entries()) {
    if (isCancelled(sending)) return refuse(CANCELLED);
    sending.current = file.name;
    const part = hiddenPath(sending, i, 'part');
    back.push({ take: () => disk.unlink(part), failed: `The unfinished file ${part} could not be removed.` });
    await writeWhole(disk, part, file.bytes, options.signal);
    const read = await disk.readFile(part);
    if (!read.equals(file.bytes)) {
      return refuse({
        code: 'write-failed',
        message: `What ${folder} gives back of ${file.name} is not what was written.`,
        remedy: 'Do not trust this disk or connection: check it, then send again.',
        where: file.name,
      });
    }
    written.set(file.name, read);
  }
  return ok(written);
}

/** Gives all files their names; what stands there under such a name is kept aside. */
async function nameAll(sending: Sending): Promise<Fault | undefined> {
  const { disk, folder, files, options, back } = sending;
  if (isCancelled(sending)) return CANCELLED;
  for (const [i, file] of files.entries()) {
    sending.current = file.name;
    const path = join(folder, file.name);
    if (options.overwrite) await keepAside(sending, path, hiddenPath(sending, i, 'kept'));
    const part = hiddenPath(sending, i, 'part');
    await giveName(disk, part, path);
    back.push({
      take: () => disk.unlink(path),
      failed: `${path} could not be taken back.`,
      gone: `${file.name} is no longer in the folder: the RIP may have taken it already.`,
    });
    await dropName(disk, part);
  }
  await flushFolder(disk, folder);
  return undefined;
}

async function keepAside(sending: Sending, path: string, kept: string): Promise<void> {
  const { disk, back } = sending;
  if ((await lookUp(disk, path)) === undefined) return;
  await disk.rename(path, kept);
  back.push({
    take: async () => {
      await giveName(disk, kept, path);
      await dropName(disk, kept);
    },
    failed: `The earlier ${path} could not be put back: it is now called ${kept}.`,
  });
  sending.kept.push(kept);
}

/** Removes the files that were replaced, now that all is done. */
async function clearReplaced({ disk, kept }: Sending): Promise<readonly string[]> {
  return takeBack(
    kept.map((path) => ({
      take: () => disk.unlink(path),
      failed: `A replaced file could not be removed: it is now called ${path}.`,
    })),
  );
}
