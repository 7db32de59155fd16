// A stamp of everything that shapes what is built: the same sources and libraries have the same stamp.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const SOURCES = ['build', 'electron', 'renderer', 'shared'];

/** Of these, what has no part in it. */
const APART = ['build/bench', 'build/pictures'];

/** Beside them: the project, how its TypeScript is read, and the libraries and tools that were really installed. */
const FILES = ['package.json', 'package-lock.json', 'tsconfig.base.json', 'node_modules/.package-lock.json'];

/**
 * The stamp of a house, in hex. The mode of the build is fixed in its sources (`buildApart.ts`), and which Node it runs
 * on does not matter, since everything is translated for one named version.
 */
export function stampOf(house: string): string {
  const hash = createHash('sha256');
  for (const path of pathsIn(house)) {
    hash
      .update(path)
      .update('\0')
      .update(readFileSync(join(house, path)))
      .update('\0');
  }
  return hash.digest('hex').slice(0, 16);
}

/** The paths from the house, in one order and written one way on every system. */
function pathsIn(house: string): readonly string[] {
  const sources = SOURCES.flatMap((folder) =>
    readdirSync(join(house, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) =>
        join(entry.parentPath, entry.name)
          .slice(house.length + 1)
          .replaceAll('\\', '/'),
      ),
  );
  return [
    ...sources.filter((path) => !APART.some((folder) => path.startsWith(`${folder}/`))),
    ...FILES.filter((file) => existsSync(join(house, file))),
  ].sort();
}
