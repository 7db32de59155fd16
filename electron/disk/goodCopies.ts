// The last good contents of a file, kept in a folder beside it for when the file is damaged.
import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import { saveWhole } from './saveWhole.ts';
import { systemCode } from './systemCode.ts';

/** So many are kept of each file. */
const KEPT = 10;

export interface GoodCopy {
  /** When it was written, as an ISO 8601 date and time. */
  readonly at: string;
  readonly text: string;
}

/** Keeps what was just written to `path`, in place of the oldest copy once there are ten. */
export async function keepCopy(path: string, text: string, at: Date = new Date()): Promise<void> {
  const folder = folderBeside(path);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const name = `${at.toISOString().replaceAll(':', '-')}${extname(path)}`;
  await saveWhole(join(folder, name), Buffer.from(text), true, true);
  const names = await copyNames(path);
  for (const old of names.slice(KEPT)) await rm(join(folder, old), { force: true });
}

/** The latest copy that was kept of a file, or `undefined` where there is none. */
export async function latestCopy(path: string): Promise<GoodCopy | undefined> {
  const [latest] = await copyNames(path);
  if (latest === undefined) return undefined;
  const text = await readFile(join(folderBeside(path), latest), 'utf8').catch(() => undefined);
  const stamp = basename(latest, extname(path)).replace(/T(\d\d)-(\d\d)-/, 'T$1:$2:');
  return text === undefined ? undefined : { at: stamp, text };
}

/** The latest first. */
async function copyNames(path: string): Promise<readonly string[]> {
  try {
    const names = await readdir(folderBeside(path));
    return names
      .filter((name) => name.endsWith(extname(path)) && /^\d{4}-/.test(name))
      .toSorted()
      .toReversed();
  } catch (error) {
    if (systemCode(error) === undefined) throw error;
    return [];
  }
}

/** `copies/library` beside `library.json`. */
function folderBeside(path: string): string {
  return join(dirname(path), 'copies', basename(path, extname(path)));
}
