// Art that came as bytes and has no place of its own: kept by the host until the job is saved, then put beside it.
import { createHash, randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { copyFile, mkdir, readdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, extname, join, sep } from 'node:path';
import { Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { flushFile, flushFolder, NODE_DISK } from '../disk/disk.ts';
import type { FileHashes } from '../disk/hashes.ts';
import { unfinishedName } from '../disk/unfinished.ts';

/** How long art is kept that nobody has saved, in ms: a month. */
const FORGOTTEN_AFTER_MS = 30 * 24 * 60 * 60 * 1000;

/** A file that was taken in. */
interface TakenFile {
  readonly path: string;
  /** Of its bytes, in hex. */
  readonly sha256: string;
}

export class TakenIn {
  readonly #folder: string;
  readonly #hashes: FileHashes;
  readonly #flush: (path: string) => Promise<void>;
  /** What was taken in and may not be on the disk yet, by path. */
  readonly #flushing = new Map<string, Promise<void>>();

  /** `flush` has a file and its name flushed to the disk. */
  constructor(home: string, hashes: FileHashes, flush = flushToDisk) {
    this.#folder = join(home, 'taken-in');
    this.#hashes = hashes;
    this.#flush = flush;
  }

  /**
   * Takes the bytes in and gives their path, the same for the same bytes of the same name. They can be read there at
   * once; before a job names them, wait until they are `whole`.
   */
  async take(name: string, bytes: AsyncIterable<Uint8Array>): Promise<TakenFile> {
    await mkdir(this.#folder, { recursive: true });
    const part = join(this.#folder, `${randomUUID()}.part`);
    const hash = createHash('sha256');
    const hashing = new Transform({
      transform(chunk: Buffer, _encoding, done) {
        hash.update(chunk);
        done(null, chunk);
      },
    });
    try {
      await pipeline(bytes, hashing, createWriteStream(part));
      const sha256 = hash.digest('hex');
      const folder = join(this.#folder, sha256.slice(0, 32));
      await mkdir(folder, { recursive: true });
      const path = join(folder, fileNameOf(name));
      await rename(part, path);
      await this.#hashes.note(path, sha256);
      const flushing = this.#flush(path);
      // Whoever needs it hears of a failure.
      flushing.catch(() => undefined);
      this.#flushing.set(path, flushing);
      return { path, sha256 };
    } finally {
      await rm(part, { force: true });
    }
  }

  /** Waits until what was taken in is on the disk, whatever happens to this machine. Throws what the system throws. */
  async whole(path: string): Promise<void> {
    const flushing = this.#flushing.get(path);
    await flushing;
    if (this.#flushing.get(path) === flushing) this.#flushing.delete(path);
  }

  /** Throws away what has lain here for long and that no kept job needs: saved jobs have art of their own. */
  async forgetOld(needed: readonly string[], now: Date): Promise<void> {
    const names = await readdir(this.#folder).catch(() => []);
    for (const folder of names.map((name) => join(this.#folder, name))) {
      const age = now.getTime() - (await stat(folder)).mtimeMs;
      const isNeeded = needed.some((path) => path.startsWith(folder + sep));
      if (age > FORGOTTEN_AFTER_MS && !isNeeded) await rm(folder, { recursive: true, force: true });
    }
  }

  holds(path: string): boolean {
    return path.startsWith(this.#folder + sep);
  }

  /**
   * Where art is to lie once its job is saved: taken-in art is copied into a folder beside the job, all else stays.
   * A file of the same name that holds something else is left alone. Throws what the system throws.
   */
  async settle(path: string, jobFile: string): Promise<string> {
    if (!this.holds(path)) return path;
    await this.whole(path);
    const folder = join(dirname(jobFile), `${basename(jobFile, extname(jobFile))} art`);
    await mkdir(folder, { recursive: true });
    const name = basename(path);
    const stem = basename(name, extname(name));
    const wanted = await this.#hashes.of(path);
    for (let n = 1; ; n += 1) {
      const place = join(folder, n === 1 ? name : `${stem} ${n}${extname(name)}`);
      const there = await this.#hashes.of(place).catch(() => undefined);
      if (there === wanted) return place;
      if (there !== undefined) continue;
      const part = join(folder, unfinishedName());
      try {
        await copyFile(path, part);
        await flushFile(NODE_DISK, part);
        await rename(part, place);
        await flushFolder(NODE_DISK, folder);
      } finally {
        await rm(part, { force: true });
      }
      return place;
    }
  }
}

async function flushToDisk(path: string): Promise<void> {
  await flushFile(NODE_DISK, path);
  await flushFolder(NODE_DISK, dirname(path));
}

/** A name given by a browser, made one that every disk takes. */
function fileNameOf(given: string): string {
  const last = given.split(/[/\\]/).at(-1) ?? '';
  // biome-ignore lint/suspicious/noControlCharactersInRegex: no file should be named with them
  const plain = last.replace(/[:*?"<>|\u0000-\u001f]/g, '-').replace(/^\.+/, '');
  const ending = extname(plain);
  return `${[...basename(plain, ending)].slice(0, 60).join('') || 'art'}${ending}`;
}
