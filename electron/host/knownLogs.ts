// Where the logs of runs lie that were begun on this machine, so that what they teach can be gathered.
import { join } from 'node:path';
import { z } from 'zod';
import { OwnFile, readBySchema } from '../disk/ownFile.ts';

/** How many logs are remembered, the latest first. */
const MAX_LOGS_REMEMBERED = 500;

const CALLED = 'list of runs';

const stored = z.object({ logs: z.array(z.string().min(1)).catch([]) });

export class KnownLogs {
  readonly #file: OwnFile<z.infer<typeof stored>>;

  constructor(home: string) {
    this.#file = new OwnFile(join(home, 'runs.json'), { called: CALLED, read: readBySchema(CALLED, stored) });
  }

  async paths(): Promise<readonly string[]> {
    return (await this.#file.readOrEmpty()).logs;
  }

  async add(path: string): Promise<void> {
    await this.#file.change(({ logs }) => ({
      logs: [path, ...logs.filter((known) => known !== path)].slice(0, MAX_LOGS_REMEMBERED),
    }));
  }
}
