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
  /** Looks at what the disk gives back; a fault keeps everything from being sent. */
  readonly verify: (bytes: Uint8Array) => Promise<Result<void>>;
}

export interface SendOptions {
  /** Whether files of the same names may be replaced. */
  readonly overwrite: boolean;
  /** Cancels until the files are given their names; the folder is then as it was. */
  readonly signal?: AbortSignal;
  readonly disk?: Disk;
}

/** What was sent. */
export interface Sent {
  /** The paths of the files, in the order they were handed in. */
  readonly paths: readonly string[];
  /** What the person should know though all went well, in words. */
  readonly notices: readonly string[];
}

interface Sending {
  readonly disk: Disk;
  readonly folder: string;
  readonly files: readonly Outgoing[];
  readonly options: SendOptions;
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
 * Each is written under a hidden name that does not end in .pdf, flushed, read back from the disk, compared byte for
 * byte and verified; only when all are there do they get their own names. Whatever goes wrong before that is done,
 * the folder becomes what it was: temporary files are removed, names taken back, replaced files restored. What could
 * not be put right is said in the fault.
 *
 * @throws what `verify` throws, and mistakes of our own, after the folder has been put right.
 */
export async function sendToFolder(
  folder: string,
  files: readonly Outgoing[],
  options: SendOptions,
): Promise<Result<Sent>> {
  const { disk = NODE_DISK } = options;
  const mark = `.turnlay-${randomUUID().slice(0, 8)}`;
  const current = files[0]?.name ?? folder;
  const sending: Sending = { disk, folder, files, options, mark, back: [], kept: [], current };
  let fault: Fault | undefined;
  try {
    const names = files.map((f) => f.name);
    fault =
      (await refuseBeforehand(disk, folder, names, options.overwrite)) ??
      (await writeAll(sending)) ??
      (await nameAll(sending));
  } catch (error) {
    const code = systemCode(error);
    if (code !== undefined) fault = faultOf(code, folder, sending.current);
    else if (isCancelled(sending) && error instanceof Error && error.name === 'AbortError') fault = CANCELLED;
    else {
      await takeBack(sending.back);
      throw error;
    }
  }
  if (fault !== undefined) {
    const left = await takeBack(sending.back);
    return refuse({ ...fault, message: [fault.message, ...left].join(' ') });
  }
  return ok({ paths: files.map((f) => join(folder, f.name)), notices: await clearReplaced(sending) });
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

/** Puts all files into the folder under hidden names, and looks at what the disk has made of them. */
async function writeAll(sending: Sending): Promise<Fault | undefined> {
  const { disk, folder, files, options, back } = sending;
  for (const [i, file] of files.entries()) {
    if (isCancelled(sending)) return CANCELLED;
    sending.current = file.name;
    const part = hiddenPath(sending, i, 'part');
    back.push({ take: () => disk.unlink(part), failed: `The unfinished file ${part} could not be removed.` });
    await writeWhole(disk, part, file.bytes, options.signal);
    const read = await disk.readFile(part);
    if (!read.equals(file.bytes)) {
      return {
        code: 'write-failed',
        message: `What ${folder} gives back of ${file.name} is not what was written.`,
        remedy: 'Do not trust this disk or connection: check it, then send again.',
        where: file.name,
      };
    }
    const verified = await file.verify(read);
    if (!verified.ok) return verified.fault;
  }
  return undefined;
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
