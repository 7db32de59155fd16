// A stamp of everything that the app is built from: the same sources have the same stamp.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const SOURCES = ['build', 'electron', 'renderer', 'shared'];
const FILES = ['package.json', 'package-lock.json'];

/** The stamp of a house, in hex. */
export function stampOf(house: string): string {
  const hash = createHash('sha256');
  const sources = SOURCES.flatMap((folder) =>
    readdirSync(join(house, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name)),
  );
  for (const path of [...sources, ...FILES.map((file) => join(house, file))].sort()) {
    hash.update(path.slice(house.length)).update('\0').update(readFileSync(path)).update('\0');
  }
  return hash.digest('hex').slice(0, 16);
}
