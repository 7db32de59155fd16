// Looking into folders, for the window's own chooser where the shell has no dialogs.
import { mkdir, readdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { FileKind, Listing } from '../../shared/contract/choosing.ts';
import type { FileEntry, FolderEntry } from '../../shared/contract/handles.ts';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { ART_ENDING, JOB_ENDING } from '../disk/endings.ts';
import { readingFault, writingFault } from '../disk/fileFaults.ts';
import type { Entries } from './entries.ts';

const ENDINGS: Readonly<Record<FileKind, string>> = {
  job: JOB_ENDING,
  art: ART_ENDING,
  brief: '.json',
  library: '.json',
};

/** What a folder holds: its folders, and its files of a kind. */
export async function listFolder(
  entries: Entries,
  folder: string,
  show: FileKind | 'none',
): Promise<Result<Listing>> {
  try {
    const all = (await readdir(folder, { withFileTypes: true })).filter((e) => !e.name.startsWith('.'));
    const known = await Promise.all(
      all.map(async ({ name }) => {
        const path = join(folder, name);
        const found = await stat(path).catch(() => undefined);
        return found === undefined ? [] : [{ name, path, found }];
      }),
    );
    const sorted = known.flat().toSorted((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
    const wanted = (name: string) => show !== 'none' && name.toLowerCase().endsWith(ENDINGS[show]);
    const up = dirname(folder);
    return ok({
      folder: entries.folder(folder),
      ...(up === folder ? {} : { up: entries.folder(up) }),
      folders: sorted.filter(({ found }) => found.isDirectory()).map(({ path }) => entries.folder(path)),
      files: sorted
        .filter(({ name, found }) => found.isFile() && wanted(name))
        .map(({ path, found }) => ({
          ...entries.file(path),
          bytes: found.size,
          changed: found.mtime.toISOString(),
        })),
    });
  } catch (error) {
    return refuse(readingFault(error, folder));
  }
}

/** The place for a new file in a folder, its ending added where it is missing: that of jobs, or another one. */
export function newFileIn(
  entries: Entries,
  folder: string,
  name: string,
  ending: string = JOB_ENDING,
): Result<FileEntry> {
  const whole = name.toLowerCase().endsWith(ending) ? name : `${name}${ending}`;
  const bad = refuseName(whole, ending);
  return bad === undefined ? ok(entries.file(join(folder, whole))) : refuse(bad);
}

export async function makeFolderIn(
  entries: Entries,
  folder: string,
  name: string,
): Promise<Result<FolderEntry>> {
  const bad = refuseName(name, '');
  if (bad !== undefined) return refuse(bad);
  const path = join(folder, name);
  try {
    await mkdir(path);
    return ok(entries.folder(path));
  } catch (error) {
    return refuse(writingFault(error, path));
  }
}

/** Why a name typed by a person is no name for a file, on any system that the job may travel to. */
function refuseName(name: string, ending: string): Fault | undefined {
  const bare = name.slice(0, name.length - ending.length).trim();
  // biome-ignore lint/suspicious/noControlCharactersInRegex: no file should be named with them
  if (bare !== '' && !bare.startsWith('.') && !/[/\\:*?"<>|\u0000-\u001f]/.test(name)) return undefined;
  return {
    code: 'name-unusable',
    message: bare === '' ? 'A name is missing.' : `"${name}" cannot be the name of a file.`,
    remedy:
      'Use letters, figures, spaces and hyphens, and begin with none of the signs / \\ : * ? " < > | or a dot.',
    where: name,
  };
}
