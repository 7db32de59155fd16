// How the art of a job is now, compared with what it was when the job was laid out.
import { readdir } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import type { ArtState } from '../../shared/contract/art.ts';
import type { Fault } from '../../shared/fault/result.ts';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { ART_ENDING } from '../disk/endings.ts';
import type { FileHashes } from '../disk/hashes.ts';
import { systemCode } from '../disk/systemCode.ts';
import type { Entries } from './entries.ts';

/** The art files of a job by their paths, each with the hashes that its faces were laid out with. */
export function artOfJob(job: Job): ReadonlyMap<string, ReadonlySet<string>> {
  const files = new Map<string, Set<string>>();
  for (const { piece, name, face } of facesOf(job.brief)) {
    const hashes = files.get(face.file) ?? new Set();
    files.set(face.file, hashes);
    const found = job.art.find((a) => a.piece === piece.name && a.face === name);
    if (found !== undefined) hashes.add(found.sha256);
  }
  return files;
}

export class ArtStates {
  readonly #entries: Entries;
  readonly #hashes: FileHashes;

  constructor(entries: Entries, hashes: FileHashes) {
    this.#entries = entries;
    this.#hashes = hashes;
  }

  /** The state of every art file of a job that names them by path. `beside`: folders where moved art may be. */
  async ofJob(job: Job, beside: readonly string[]): Promise<readonly ArtState[]> {
    return Promise.all([...artOfJob(job)].map(([path, hashes]) => this.of(path, hashes, beside)));
  }

  async of(path: string, hashes: ReadonlySet<string>, beside: readonly string[]): Promise<ArtState> {
    const art = this.#entries.art.issue(path);
    const now = await this.#hashOf(path);
    if (now !== undefined) {
      const same = [...hashes].every((laidOut) => laidOut === now);
      return same ? { art, state: 'as-laid-out' } : { art, state: 'changed', fault: changed(path) };
    }
    const [sha256] = hashes;
    const found =
      sha256 === undefined ? undefined : await this.#search(path, sha256, [dirname(path), ...beside]);
    if (found === undefined) return { art, state: 'missing', fault: missing(path) };
    return { art, state: 'moved', found: this.#entries.file(found), fault: moved(path, found) };
  }

  async #hashOf(path: string): Promise<string | undefined> {
    try {
      return await this.#hashes.of(path);
    } catch (error) {
      if (systemCode(error) === undefined) throw error;
      return undefined;
    }
  }

  /** The very same file under another name or in another place near by. */
  async #search(path: string, sha256: string, folders: readonly string[]): Promise<string | undefined> {
    const near = (await Promise.all([...new Set(folders)].map(pdfsIn))).flat();
    const likeliest = near
      .toSorted((a, b) => likeness(b, path) - likeness(a, path))
      .slice(0, MAX_PLACES_LOOKED_AT);
    for (const candidate of likeliest) {
      if ((await this.#hashOf(candidate)) === sha256) return candidate;
    }
    return undefined;
  }
}

/** So many files are looked at when art has gone. */
const MAX_PLACES_LOOKED_AT = 100;

const likeness = (candidate: string, path: string) => Number(basename(candidate) === basename(path));

/** The PDFs in a folder and in the folders in it. */
async function pdfsIn(folder: string): Promise<readonly string[]> {
  const names = async (in_: string) => readdir(in_, { withFileTypes: true }).catch(() => []);
  const pdfs: string[] = [];
  for (const entry of await names(folder)) {
    if (entry.isFile()) pdfs.push(join(folder, entry.name));
    if (!entry.isDirectory() || entry.name.startsWith('.')) continue;
    const inner = await names(join(folder, entry.name));
    pdfs.push(...inner.filter((e) => e.isFile()).map((e) => join(folder, entry.name, e.name)));
  }
  return pdfs.filter((path) => extname(path).toLowerCase() === ART_ENDING);
}

function changed(path: string): Fault {
  return {
    code: 'art-changed',
    message: `${basename(path)} has changed since the job was laid out.`,
    remedy: 'Look at it again and take it as it is now, or put the earlier file back.',
    where: path,
  };
}

function missing(path: string): Fault {
  return {
    code: 'art-missing',
    message: `${basename(path)} is no longer in ${dirname(path)}.`,
    remedy: 'Put it back, or choose where it is now.',
    where: path,
  };
}

function moved(path: string, found: string): Fault {
  return {
    code: 'art-missing',
    message: `${basename(path)} is no longer in ${dirname(path)}; the very same file is ${found}.`,
    remedy: 'Use it from there, or put it back.',
    where: path,
  };
}
