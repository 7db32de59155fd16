// Builds in a process of its own, whose surroundings are the same whoever asks: a test, a person or a script.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** What a process needs to find its files. Nothing else of the surroundings reaches a build. */
const NEEDED = [
  'PATH',
  'HOME',
  'USERPROFILE',
  'TMPDIR',
  'TEMP',
  'TMP',
  'SystemRoot',
  'APPDATA',
  'LOCALAPPDATA',
];

/** Node's own option for the program that reads TypeScript. */
const TYPESCRIPT = ['--import', pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href];

/** What can be built: the app with its window, or the command line with the threads it starts. */
export type Product = 'app' | 'cli';

/** Builds into a folder, always for production. */
export async function buildApart(what: Product, folder: string): Promise<void> {
  const env = Object.fromEntries(
    NEEDED.flatMap((name) => (process.env[name] === undefined ? [] : [[name, process.env[name]]])),
  );
  const building = spawn(
    process.execPath,
    [...TYPESCRIPT, join(import.meta.dirname, 'buildHere.ts'), what, folder],
    {
      cwd: join(import.meta.dirname, '..'),
      env: { ...env, NODE_ENV: 'production' },
      // Standard output belongs to the program that asked.
      stdio: ['ignore', process.stderr, process.stderr],
    },
  );
  const [code] = await once(building, 'exit');
  if (code !== 0) throw new Error(`The ${what} could not be built; why stands above.`);
}
