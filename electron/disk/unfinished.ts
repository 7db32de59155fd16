// Unfinished files: their names say who writes them, so that what a dead program left is told from what a living one is at.
import { createHash, randomUUID } from 'node:crypto';
import { readdir } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { dropName, NODE_DISK } from './disk.ts';
import { isRunning } from './isRunning.ts';

/** This machine, for folders that several machines write to. */
const MACHINE = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);
const UNFINISHED = /^\.turnlay-([0-9a-f]{8})-(\d+)-[0-9a-f]{8}\.part$/;

/** A name for a file of this program that is not yet whole. */
export function unfinishedName(): string {
  return `.turnlay-${MACHINE}-${process.pid}-${randomUUID().slice(0, 8)}.part`;
}

/** Takes away what programs of this machine left unfinished in a folder when they died; as far as the system lets it. */
export async function clearUnfinished(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter(isLeftover)) {
    await dropName(NODE_DISK, join(folder, name)).catch(() => undefined);
  }
}

function isLeftover(name: string): boolean {
  const [, machine, writer] = UNFINISHED.exec(name) ?? [];
  return machine === MACHINE && !isRunning(Number(writer));
}
