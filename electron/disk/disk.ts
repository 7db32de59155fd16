// The few things that sending does to a disk, as Node offers them.
import * as node from 'node:fs/promises';
import { systemCode } from './systemCode.ts';

export type Disk = Pick<typeof node, 'stat' | 'lstat' | 'open' | 'readFile' | 'link' | 'rename' | 'unlink'>;

export const NODE_DISK: Disk = node;

/** Refusals that only say that this kind of file, disk or system cannot be flushed on its own. */
const CANNOT_FLUSH = ['EINVAL', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'];
const CANNOT_FLUSH_FOLDERS = [...CANNOT_FLUSH, 'EISDIR', 'EPERM', 'EACCES', 'EBADF'];

/** What there is of this name, or `undefined` for nothing; a link counts as itself. */
export async function lookUp(disk: Disk, path: string): Promise<'folder' | 'file' | undefined> {
  try {
    return (await disk.lstat(path)).isDirectory() ? 'folder' : 'file';
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return undefined;
    throw error;
  }
}

/**
 * Writes a new file and has it flushed to the disk; `mode` says who may read and write it, where not as usual. Throws
 * what the system throws, also when the file exists.
 */
export async function writeWhole(
  disk: Disk,
  path: string,
  bytes: Uint8Array,
  signal: AbortSignal | undefined,
  mode?: number,
): Promise<void> {
  const file = await disk.open(path, 'wx', mode);
  try {
    await file.writeFile(bytes, { signal });
    await flush(file, CANNOT_FLUSH);
  } catch (error) {
    await file.close().catch(() => undefined);
    throw error;
  }
  await file.close();
}

/**
 * Adds bytes at the end of a file and has them flushed to the disk; a file that is not there is made. `cutAt`: where the
 * file ends before, if not all of it is to stay. Throws what the system throws, and then leaves the file without the
 * bytes where the disk still allows it.
 */
export async function appendWhole(
  disk: Disk,
  path: string,
  bytes: Uint8Array,
  cutAt: number | undefined,
): Promise<void> {
  const file = await disk.open(path, 'a');
  try {
    if (cutAt !== undefined) await file.truncate(cutAt);
    const { size } = await file.stat();
    try {
      await file.writeFile(bytes);
      await flush(file, CANNOT_FLUSH);
    } catch (error) {
      await file.truncate(size).catch(() => undefined);
      throw error;
    }
  } catch (error) {
    await file.close().catch(() => undefined);
    throw error;
  }
  await file.close();
}

/** Has a file that was written flushed to the disk. Throws what the system throws. */
export async function flushFile(disk: Disk, path: string): Promise<void> {
  const file = await disk.open(path, 'r+');
  try {
    await flush(file, CANNOT_FLUSH);
  } finally {
    await file.close();
  }
}

/** Has the names in a folder flushed to the disk, where the system offers that. */
export async function flushFolder(disk: Disk, path: string): Promise<void> {
  let folder: node.FileHandle;
  try {
    folder = await disk.open(path, 'r');
  } catch (error) {
    if (CANNOT_FLUSH_FOLDERS.includes(systemCode(error) ?? '')) return;
    throw error;
  }
  try {
    await flush(folder, CANNOT_FLUSH_FOLDERS);
  } finally {
    await folder.close();
  }
}

async function flush(file: node.FileHandle, forgiven: readonly string[]): Promise<void> {
  try {
    await file.sync();
  } catch (error) {
    if (!forgiven.includes(systemCode(error) ?? '')) throw error;
  }
}

/**
 * Gives a file another name, never over a file of that name: throws EEXIST instead. The earlier name may remain as a
 * second name of the same file. Where the disk has no second names, it looks whether the name is free and renames.
 */
export async function giveName(disk: Disk, from: string, to: string): Promise<void> {
  try {
    await disk.link(from, to);
  } catch {
    if ((await lookUp(disk, to)) !== undefined) {
      throw Object.assign(new Error(`${to} exists`), { code: 'EEXIST' });
    }
    await disk.rename(from, to);
  }
}

/** Takes a name away, if it is there. */
export async function dropName(disk: Disk, path: string): Promise<void> {
  try {
    await disk.unlink(path);
  } catch (error) {
    if (systemCode(error) !== 'ENOENT') throw error;
  }
}
