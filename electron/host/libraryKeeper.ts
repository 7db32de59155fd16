// The library of printers and papers: kept in one file of the program's own, read from files and written for others.
import { join } from 'node:path';
import { z } from 'zod';
import type { FileEntry } from '../../shared/contract/handles.ts';
import type { ExportAsk } from '../../shared/contract/library.ts';
import type { OwnFileTrouble } from '../../shared/contract/ownFiles.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Library } from '../../shared/library/library.ts';
import { readLibrary, writeLibrary } from '../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../shared/library/startingLibrary.ts';
import { writingFault } from '../disk/fileFaults.ts';
import { OwnFile, readBySchema } from '../disk/ownFile.ts';
import { saveWhole } from '../disk/saveWhole.ts';
import { newFileIn } from './browse.ts';
import type { Entries } from './entries.ts';

/** The ending of libraries that are written for others. */
const ENDING = '.json';

const CALLED = 'printers and papers';

/** What its file holds: the library as it is written, or none as long as it has not been changed. */
interface Stored {
  readonly library?: unknown;
}

const stored = readBySchema(CALLED, z.object({ library: z.unknown().optional() }));

function readStored(json: unknown): Result<Stored> {
  const file = stored(json);
  if (!file.ok || file.value.library === undefined) return file;
  const library = readLibrary(file.value.library);
  return library.ok ? file : library;
}

export class LibraryKeeper {
  readonly #file: OwnFile<Stored>;
  readonly #entries: Entries;

  constructor(home: string, entries: Entries) {
    const path = join(home, 'library.json');
    this.#file = new OwnFile(path, { called: CALLED, read: readStored, keepsCopies: true });
    this.#entries = entries;
  }

  /** The library; the one to begin with until it has been changed, and while its file is of no use. */
  async read(): Promise<Library> {
    return libraryOf(await this.#file.readOrEmpty());
  }

  /** What was wrong with its file, if anything was. */
  trouble(): Promise<OwnFileTrouble | undefined> {
    return this.#file.trouble();
  }

  /** Keeps a changed library in place of the one before. Refuses a disk that takes nothing. */
  async change(library: Library): Promise<Result<Library>> {
    const changed = await this.#file.change(() => ({ library: JSON.parse(writeLibrary(library)) }));
    return changed.ok ? ok(library) : changed;
  }

  /** Takes the last good copy back in place of a damaged file. */
  async takeBack(): Promise<Result<Library>> {
    const taken = await this.#file.takeBack();
    return taken.ok ? ok(libraryOf(taken.value)) : taken;
  }

  /** Writes the library into a folder. Replaces a file of that name only where it may. */
  async export(ask: ExportAsk): Promise<Result<FileEntry>> {
    const folder = this.#entries.folders.resolve(ask.folder);
    if (!folder.ok) return folder;
    const entry = newFileIn(this.#entries, folder.value, ask.name, ENDING);
    if (!entry.ok) return entry;
    const path = join(folder.value, entry.value.name);
    try {
      await saveWhole(path, Buffer.from(writeLibrary(await this.read())), ask.replace ?? false);
      return entry;
    } catch (error) {
      return refuse(writingFault(error, path));
    }
  }
}

function libraryOf({ library }: Stored): Library {
  const read = readLibrary(library);
  return read.ok ? read.value : startingLibrary();
}
