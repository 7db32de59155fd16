// Keeping the open job for after a crash: each host keeps its own, and finds those that others left behind.
import { randomUUID } from 'node:crypto';
import { mkdir, readdir, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { z } from 'zod';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { writeJob } from '../../shared/job/jobFile.ts';
import { writingFault } from '../disk/fileFaults.ts';
import { isRunning } from '../disk/isRunning.ts';
import { readJobText } from '../disk/jobFiles.ts';
import { saveWhole } from '../disk/saveWhole.ts';
import { systemCode } from '../disk/systemCode.ts';
import { clearUnfinished } from '../disk/unfinished.ts';

const KEPT_ENDING = '.kept.json';
/** Beside a kept job lies a file that its living host touches again and again. */
const ALIVE_ENDING = '.alive';
const TOUCHED_EVERY_MS = 10_000;
/** A host whose file has not been touched for so long is gone, though another program may have its number by now. */
const GONE_AFTER_MS = 60_000;

const stored = z.object({
  title: z.string(),
  /** The file that the job was opened from or saved to. */
  file: z.string().optional(),
  /** The hash of what was last read or written there. */
  seen: z.string().optional(),
  at: z.iso.datetime(),
  /** As it stands in a job file, with whole paths. */
  job: z.unknown(),
});

/** Where a kept job belongs. */
interface Origin {
  /** The file that it was opened from or saved to. */
  readonly file?: string | undefined;
  /** The hash of what was last read or written there. */
  readonly seen?: string | undefined;
}

/** A kept job. */
interface KeptJob extends Origin {
  readonly title: string;
  readonly at: string;
  readonly job: Job;
}

/** One host's keeping. */
export class Keeping {
  readonly #folder: string;
  readonly #id = randomUUID();
  #touching: NodeJS.Timeout | undefined;
  #last: Promise<unknown> = Promise.resolve();

  constructor(home: string) {
    this.#folder = join(home, 'kept');
  }

  /** Makes the folder, says that this host lives, and clears what dead ones left that is of no use to anybody. */
  async begin(): Promise<void> {
    await mkdir(this.#folder, { recursive: true, mode: 0o700 });
    await clearUnfinished(this.#folder);
    await this.#forgetDead();
    const alive = this.#own(ALIVE_ENDING);
    await writeFile(alive, `${process.pid}`, { mode: 0o600 });
    this.#touching = setInterval(() => {
      const now = new Date();
      utimes(alive, now, now).catch(() => undefined);
    }, TOUCHED_EVERY_MS);
    this.#touching.unref();
  }

  /** The host ends in good order. A job that is still kept is found by the next. */
  async end(): Promise<void> {
    clearInterval(this.#touching);
    await this.#last;
    await rm(this.#own(ALIVE_ENDING), { force: true });
  }

  /** Keeps the job in place of what was kept before. Its art is named by whole paths. */
  async keep(job: Job, origin: Origin, at: Date): Promise<Result<{ readonly at: string }>> {
    const text = JSON.stringify({
      ...origin,
      title: job.brief.title,
      at: at.toISOString(),
      job: JSON.parse(writeJob(job)),
    });
    const saved = this.#last.then(() => saveWhole(this.#own(KEPT_ENDING), Buffer.from(text), true, true));
    this.#last = saved.catch(() => undefined);
    try {
      await saved;
      return ok({ at: at.toISOString() });
    } catch (error) {
      return refuse(writingFault(error, this.#own(KEPT_ENDING)));
    }
  }

  /** Keeps no longer what this host has kept. */
  async drop(): Promise<void> {
    this.#last = this.#last.then(() => rm(this.#own(KEPT_ENDING), { force: true }));
    await this.#last;
  }

  /** The kept jobs that no other living host works on, by their paths, the latest first. */
  async list(): Promise<readonly (KeptJob & { readonly path: string })[]> {
    const names = (await readdir(this.#folder)).filter((name) => name.endsWith(KEPT_ENDING));
    const found = await Promise.all(
      names.map(async (name) => {
        const path = join(this.#folder, name);
        if (name !== basename(this.#own(KEPT_ENDING)) && (await this.#hasLivingHost(path))) return [];
        const kept = await readKept(path);
        return kept === undefined ? [] : [{ ...kept, path }];
      }),
    );
    return found.flat().toSorted((a, b) => b.at.localeCompare(a.at));
  }

  /** Throws away what another host had kept, now that this one has taken it up. */
  async relieve(path: string): Promise<void> {
    if (path !== this.#own(KEPT_ENDING)) await this.throwAway(path);
  }

  /** Throws a kept job away, and what its host left beside it. */
  async throwAway(path: string): Promise<void> {
    await rm(path, { force: true });
    if (path !== this.#own(KEPT_ENDING)) await rm(aliveBeside(path), { force: true });
  }

  /** Takes away the signs of life of hosts that are gone and kept nothing. */
  async #forgetDead(): Promise<void> {
    const names = await readdir(this.#folder);
    const signs = names.filter((name) => name.endsWith(ALIVE_ENDING));
    for (const sign of signs) {
      const kept = sign.slice(0, -ALIVE_ENDING.length) + KEPT_ENDING;
      if (names.includes(kept) || (await this.#hasLivingHost(join(this.#folder, kept)))) continue;
      await rm(join(this.#folder, sign), { force: true });
    }
  }

  async #hasLivingHost(kept: string): Promise<boolean> {
    const alive = aliveBeside(kept);
    try {
      const { mtimeMs } = await stat(alive);
      return Date.now() - mtimeMs < GONE_AFTER_MS && isRunning(Number(await readFile(alive, 'utf8')));
    } catch (error) {
      if (systemCode(error) === undefined) throw error;
      return false;
    }
  }

  #own(ending: string): string {
    return join(this.#folder, `${this.#id}${ending}`);
  }
}

/** The kept job of a file; a damaged one is none, and is left lying. */
export async function readKept(path: string): Promise<KeptJob | undefined> {
  try {
    const { job, ...rest } = stored.parse(JSON.parse(await readFile(path, 'utf8')));
    const read = readJobText(JSON.stringify(job), path);
    return read.ok ? { ...rest, job: read.value } : undefined;
  } catch {
    return undefined;
  }
}

const aliveBeside = (kept: string) => kept.slice(0, -KEPT_ENDING.length) + ALIVE_ENDING;
