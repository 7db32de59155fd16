// The jobs that were opened or saved lately.
import { access } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { FileHandle } from '../../shared/contract/handles.ts';
import type { Recent } from '../../shared/contract/openJob.ts';
import { OwnFile, readBySchema } from '../disk/ownFile.ts';
import type { Entries } from './entries.ts';

/** How many are remembered. */
const MAX_RECENT_JOBS = 12;

const CALLED = 'recent jobs';

const recent = z.object({ path: z.string().min(1), title: z.string(), at: z.iso.datetime() });
const stored = z.object({
  /** A damaged entry is left out, the others stay. */
  jobs: z
    .array(recent.nullable().catch(null))
    .catch([])
    .transform((jobs) => jobs.filter((job) => job !== null)),
});

export class RecentsKeeper {
  readonly #file: OwnFile<z.infer<typeof stored>>;
  readonly #entries: Entries;

  constructor(home: string, entries: Entries) {
    this.#file = new OwnFile(join(home, 'recents.json'), {
      called: CALLED,
      read: readBySchema(CALLED, stored),
    });
    this.#entries = entries;
  }

  async list(): Promise<readonly Recent[]> {
    const { jobs } = await this.#file.readOrEmpty();
    return Promise.all(
      jobs.map(async ({ path, title, at }) => ({
        ...this.#entries.file(path),
        title,
        at,
        there: await access(path).then(
          () => true,
          () => false,
        ),
      })),
    );
  }

  /** The latest first. */
  async paths(): Promise<readonly string[]> {
    return (await this.#file.readOrEmpty()).jobs.map(({ path }) => path);
  }

  async add(path: string, title: string, at: Date): Promise<void> {
    const added = { path, title, at: at.toISOString() };
    await this.#file.change(({ jobs }) => ({
      jobs: [added, ...jobs.filter((job) => job.path !== path)].slice(0, MAX_RECENT_JOBS),
    }));
  }

  async forget(file: FileHandle): Promise<void> {
    const path = this.#entries.files.resolve(file);
    if (path.ok) await this.#file.change(({ jobs }) => ({ jobs: jobs.filter((j) => j.path !== path.value) }));
  }
}
