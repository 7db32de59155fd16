// Writing a file whole or not at all: under another name, flushed, then renamed.
import { randomUUID } from 'node:crypto';
import { realpath, rename } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { dropName, flushFolder, giveName, NODE_DISK, writeWhole } from './disk.ts';

/**
 * Writes the file. Whoever reads it meanwhile sees the old one or the new one, never a part; after a failure the old
 * one stands. Where it may not replace, an existing file throws EEXIST; where it may, a link stays a link and what it
 * leads to is replaced. Throws what the system throws.
 */
export async function saveWhole(path: string, bytes: Uint8Array, mayReplace: boolean): Promise<void> {
  const target = mayReplace ? await realpath(path).catch(() => path) : path;
  const folder = dirname(target);
  const part = join(folder, `.turnlay-${randomUUID().slice(0, 8)}.part`);
  try {
    await writeWhole(NODE_DISK, part, bytes, undefined);
    await (mayReplace ? rename(part, target) : giveName(NODE_DISK, part, target));
    await flushFolder(NODE_DISK, folder);
  } finally {
    await dropName(NODE_DISK, part);
  }
}
