// The settings: remembered in one small file, each field standing for itself when another is damaged.
import { join } from 'node:path';
import { z } from 'zod';
import type { OwnFileTrouble } from '../../shared/contract/ownFiles.ts';
import { type Settings, type SettingsChange, THEMES } from '../../shared/contract/settings.ts';
import { ok, type Result } from '../../shared/fault/result.ts';
import { nameFiles, USUAL_FILE_NAMES } from '../../shared/job/fileNames.ts';
import { UNITS } from '../../shared/units/length.ts';
import { OwnFile, readBySchema } from '../disk/ownFile.ts';
import type { Entries } from './entries.ts';

const CALLED = 'settings';

const stored = z.looseObject({
  units: z.enum(UNITS).catch('in'),
  theme: z.enum(THEMES).catch('as-system'),
  ripFolder: z.string().optional().catch(undefined),
  fileNames: z.string().min(1).catch(USUAL_FILE_NAMES),
  marks: z.boolean().catch(true),
});

type Stored = z.infer<typeof stored>;

export class SettingsKeeper {
  readonly #file: OwnFile<Stored>;
  readonly #entries: Entries;

  constructor(home: string, entries: Entries) {
    this.#file = new OwnFile(join(home, 'settings.json'), {
      called: CALLED,
      read: readBySchema(CALLED, stored),
      keepsCopies: true,
    });
    this.#entries = entries;
  }

  async read(): Promise<Settings> {
    return this.#show(await this.#file.readOrEmpty());
  }

  /** Refuses a pattern that makes no names, a folder that was not chosen here, and a disk that takes nothing. */
  async change(change: SettingsChange): Promise<Result<Settings>> {
    const { ripFolder, ...plain } = change;
    if (plain.fileNames !== undefined) {
      const named = nameFiles(plain.fileNames, SAMPLE);
      if (!named.ok) return named;
    }
    const folder = typeof ripFolder === 'string' ? this.#entries.folders.resolve(ripFolder) : undefined;
    if (folder?.ok === false) return folder;
    const given = Object.fromEntries(Object.entries(plain).filter(([, value]) => value !== undefined));
    const changed = await this.#file.change((now) => ({
      ...now,
      ...given,
      ...(ripFolder === undefined ? {} : { ripFolder: folder?.value }),
    }));
    return this.#answer(changed);
  }

  /** What was wrong with their file, if anything was. */
  trouble(): Promise<OwnFileTrouble | undefined> {
    return this.#file.trouble();
  }

  /** Takes the last good copy back in place of a damaged file. */
  async takeBack(): Promise<Result<Settings>> {
    return this.#answer(await this.#file.takeBack());
  }

  #answer(stored: Result<Stored>): Result<Settings> {
    return stored.ok ? ok(this.#show(stored.value)) : stored;
  }

  #show({ units, theme, fileNames, marks, ripFolder }: Stored): Settings {
    const plain = { units, theme, fileNames, marks };
    return ripFolder === undefined ? plain : { ...plain, ripFolder: this.#entries.folder(ripFolder) };
  }
}

/** A form of a job, to see whether a pattern makes a name of it. */
const SAMPLE = [
  { job: 'Sample', forms: [1], sides: [1, 2], quantity: 100, sheets: 50, date: '2026-01-01' },
] as const;
