// A small file of the program's own, such as the settings: written whole, and read with patience for damage.
import { mkdir, readFile, rename } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { z } from 'zod';
import { saveWhole } from './saveWhole.ts';
import { systemCode } from './systemCode.ts';

/** One such file. What it holds is read once and then known; every change is on the disk before it is answered. */
export class OwnFile<T> {
  readonly #path: string;
  readonly #schema: z.ZodType<T>;
  #value: T | undefined;
  #last: Promise<unknown> = Promise.resolve();

  /** The schema must make something usable of `{}`: that is what a missing or damaged file counts as. */
  constructor(path: string, schema: z.ZodType<T>) {
    this.#path = path;
    this.#schema = schema;
  }

  /** What the file holds. A file that cannot be understood is set aside under another name, not thrown away. */
  async read(): Promise<T> {
    this.#value ??= await this.#load();
    return this.#value;
  }

  /** Changes what the file holds. Changes made at the same time follow one another. */
  async change(change: (value: T) => T): Promise<T> {
    const changed = this.#last.then(async () => {
      const value = change(await this.read());
      await mkdir(dirname(this.#path), { recursive: true });
      await saveWhole(this.#path, Buffer.from(`${JSON.stringify(value, null, 2)}\n`), true);
      this.#value = value;
      return value;
    });
    this.#last = changed.catch(() => undefined);
    return changed;
  }

  async #load(): Promise<T> {
    let text: string;
    try {
      text = await readFile(this.#path, 'utf8');
    } catch (error) {
      if (systemCode(error) === undefined) throw error;
      return this.#schema.parse({});
    }
    const read = this.#schema.safeParse(parse(text));
    if (read.success) return read.data;
    await rename(this.#path, `${this.#path}.damaged`).catch(() => undefined);
    return this.#schema.parse({});
  }
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
