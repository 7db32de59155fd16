// Writing a file whole or not at all: under another name, flushed, then renamed.
import { chmod, chown, realpath, rename, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { dropName, flushFolder, giveName, NODE_DISK, writeWhole } from './disk.ts';
import { unfinishedName } from './unfinished.ts';

/** Who may read and write what is new: the person alone. */
const PRIVATE_MODE = 0o600;

/**
 * Writes the file. Whoever reads it meanwhile sees the old one or the new one, never a part; after a failure the old
 * one stands. Where it may not replace, an existing file throws EEXIST; where it may, a link stays a link and what it
 * leads to is replaced, with the rights and the owner that it had. A new file is for everybody to read as far as the
 * system is set so, or `isPrivate`. Throws what the system throws.
 */
export async function saveWhole(
  path: string,
  bytes: Uint8Array,
  mayReplace: boolean,
  isPrivate = false,
): Promise<void> {
  const target = mayReplace ? await realpath(path).catch(() => path) : path;
  const folder = dirname(target);
  const part = join(folder, unfinishedName());
  try {
    await writeWhole(NODE_DISK, part, bytes, undefined, isPrivate ? PRIVATE_MODE : undefined);
    if (mayReplace && !isPrivate) await takeRightsOver(target, part);
    await (mayReplace ? rename(part, target) : giveName(NODE_DISK, part, target));
    await flushFolder(NODE_DISK, folder);
  } finally {
    await dropName(NODE_DISK, part);
  }
}

/** Gives a new file the rights and the owner of the one that it replaces, as far as the system lets it. */
async function takeRightsOver(from: string, to: string): Promise<void> {
  const [old, own] = await Promise.all([stat(from).catch(() => undefined), stat(to)]);
  if (old === undefined) return;
  if (old.uid !== own.uid || old.gid !== own.gid) await chown(to, old.uid, old.gid).catch(() => undefined);
  if (old.mode !== own.mode) await chmod(to, old.mode & 0o7777);
}
