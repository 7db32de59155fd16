// A small file of the program's own, such as the settings. It is never replaced by a guess: only a file that is not there
// counts as empty, one of a later version and one that cannot be read stay as they are, a damaged one is kept.
import { mkdir, readFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { z } from 'zod';
import type { OwnFileTrouble } from '../../shared/contract/ownFiles.ts';
import { type Fault, type FaultCode, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { bringUpToDate, type Versions } from '../../shared/job/upToDate.ts';
import { writingFault } from './fileFaults.ts';
import { keepCopy, latestCopy } from './goodCopies.ts';
import { damaged, damagedForGood, missing, noCopy, unreadable, unusable } from './ownFileFaults.ts';
import { parseJson } from './readJson.ts';
import { saveWhole } from './saveWhole.ts';
import { setAside } from './setAside.ts';
import { systemCode } from './systemCode.ts';

/** The version of own files that this program writes; one without a version is of the first. */
const OWN_FILE_SCHEMA = 1;

const LATER: readonly FaultCode[] = ['own-file-too-new', 'library-too-new'];

export interface OwnFileKind<T extends object> {
  /** What a person calls it: `settings`. */
  readonly called: string;
  /** Reads its content; it must make something usable of `{}`, which is what a missing file counts as. */
  readonly read: (json: unknown) => Result<T>;
  /** Whether its last good contents are kept beside it. */
  readonly keepsCopies?: boolean;
}

/** One such file. What it holds is read once and then known; every change is on the disk before it is answered. */
export class OwnFile<T extends object> {
  readonly #path: string;
  readonly #kind: OwnFileKind<T>;
  /** Begun once, however many ask at the same time. */
  #known: Promise<Result<T>> | undefined;
  #trouble: OwnFileTrouble | undefined;
  #last: Promise<unknown> = Promise.resolve();

  constructor(path: string, kind: OwnFileKind<T>) {
    this.#path = path;
    this.#kind = kind;
  }

  /**
   * What the file holds. Refuses one that cannot be read (`file-unreadable`) or is of a later version (`own-file-too-new`),
   * until the program is started again, and then changes nothing in it either.
   */
  async read(): Promise<Result<T>> {
    this.#known ??= this.#load();
    return this.#known;
  }

  /** What the file holds, or what a missing one would where it cannot be read. */
  async readOrEmpty(): Promise<T> {
    const read = await this.read();
    return read.ok ? read.value : this.#empty();
  }

  /** What was found wrong with the file, if anything was. */
  async trouble(): Promise<OwnFileTrouble | undefined> {
    await this.read();
    return this.#trouble;
  }

  /** Changes what the file holds. Changes made at the same time follow one another. */
  async change(change: (value: T) => T): Promise<Result<T>> {
    const changed = this.#last.then(async () => {
      const read = await this.read();
      return read.ok ? this.#write(change(read.value)) : read;
    });
    this.#last = changed.catch(() => undefined);
    return changed;
  }

  /** Waits until every change that was asked for is on the disk, or was refused. */
  async settled(): Promise<void> {
    await this.#last;
  }

  /** Puts the latest good copy in the place of a file that was damaged. Refuses where none was kept. */
  async takeBack(): Promise<Result<T>> {
    const copy = await latestCopy(this.#path);
    const read = copy === undefined ? undefined : this.#parse(copy.text);
    if (!read?.ok) return refuse(noCopy(this.#kind.called));
    const taken = await this.change(() => read.value);
    if (taken.ok) this.#trouble = undefined;
    return taken;
  }

  async #write(value: T): Promise<Result<T>> {
    const text = `${JSON.stringify({ schema: OWN_FILE_SCHEMA, ...value }, null, 2)}\n`;
    try {
      await mkdir(dirname(this.#path), { recursive: true, mode: 0o700 });
      await saveWhole(this.#path, Buffer.from(text), true, true);
      // The file itself is safe already; a copy that cannot be kept is no reason to refuse it.
      if (this.#kind.keepsCopies) await keepCopy(this.#path, text).catch(() => undefined);
    } catch (error) {
      return refuse(writingFault(error, `The file of the ${this.#kind.called}`));
    }
    const known = ok(value);
    this.#known = Promise.resolve(known);
    return known;
  }

  async #load(): Promise<Result<T>> {
    let text: string;
    try {
      text = await readFile(this.#path, 'utf8');
    } catch (error) {
      const code = systemCode(error);
      if (code === undefined) throw error;
      return code === 'ENOENT'
        ? this.#beginEmpty()
        : this.#refuse(unreadable(this.#kind.called, code, this.#path));
    }
    const read = this.#parse(text);
    if (read.ok) return read;
    if (LATER.includes(read.fault.code)) return this.#refuse(read.fault);
    const aside = await setAside(this.#path);
    if (aside === undefined) return this.#refuse(damagedForGood(this.#kind.called, this.#path));
    return this.#beginEmpty(aside);
  }

  /** Begins as a missing file does: `aside` is the name of a damaged one. A copy that was kept is offered. */
  async #beginEmpty(aside?: string): Promise<Result<T>> {
    const { called } = this.#kind;
    const copy = this.#kind.keepsCopies ? await latestCopy(this.#path) : undefined;
    if (aside !== undefined || copy !== undefined) {
      const fault =
        aside === undefined ? missing(called, this.#path) : damaged(called, aside, copy !== undefined);
      this.#trouble = { fault, ...(copy !== undefined && { copyOf: copy.at }) };
    }
    return ok(this.#empty());
  }

  #refuse(fault: Fault): Result<T> {
    this.#trouble = { fault };
    return refuse(fault);
  }

  #empty(): T {
    const empty = this.#kind.read({});
    if (!empty.ok) throw new Error(`Nothing usable is made of an empty file of the ${this.#kind.called}`);
    return empty.value;
  }

  #parse(text: string): Result<T> {
    const json = parseJson(text, () => unusable(this.#kind.called));
    if (!json.ok) return json;
    const current = bringUpToDate(withVersion(json.value), versionsOf(this.#kind.called));
    return current.ok ? this.#kind.read(current.value) : current;
  }
}

/** How a file is read that a schema checks. The schema must make something usable of `{}`. */
export function readBySchema<T>(called: string, schema: z.ZodType<T>): (json: unknown) => Result<T> {
  return (json) => {
    const read = schema.safeParse(json);
    return read.success ? ok(read.data) : refuse(unusable(called));
  };
}

/** Files of the first version did not say so. */
function withVersion(json: unknown): unknown {
  const isObject = typeof json === 'object' && json !== null && !Array.isArray(json);
  return isObject ? { schema: OWN_FILE_SCHEMA, ...json } : json;
}

function versionsOf(called: string): Versions {
  return {
    called,
    present: OWN_FILE_SCHEMA,
    steps: [],
    invalid: 'own-file-damaged',
    tooNew: 'own-file-too-new',
    remedy: 'Begin anew.',
  };
}
