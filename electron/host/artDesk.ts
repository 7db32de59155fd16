// Looking through art for the window: what a file holds, and where the trim lies on its pages.
import { stat } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import type { Art, TrimAsk } from '../../shared/contract/art.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { type FoundTrim, findTrim } from '../../shared/pdf/art/findTrim.ts';
import type { ArtReport, Inspection } from '../art/inspectArt.ts';
import { readingFault } from '../disk/fileFaults.ts';
import type { FileHashes } from '../disk/hashes.ts';
import { type Entries, folderAndName } from './entries.ts';

/** Begins to look through a file. `sha256`: its hash, where it was worked out as the file came. */
export type Inspect = (path: string, sha256: string | undefined) => Inspection;

export class ArtDesk {
  readonly #entries: Entries;
  readonly #hashes: FileHashes;
  readonly #inspect: Inspect;
  /** What was found in each file when it was last looked through. */
  readonly #reports = new Map<string, ArtReport>();
  /** The files that are being looked through. */
  readonly #running = new Map<string, Inspection>();

  constructor(entries: Entries, hashes: FileHashes, inspect: Inspect) {
    this.#entries = entries;
    this.#hashes = hashes;
    this.#inspect = inspect;
  }

  /**
   * Takes a file in: answers as soon as its pages are known, while they are still being tried out. Refusals are those of
   * `inspectArt`. `sha256`: its hash, where it was worked out as the file came.
   */
  async takeIn(path: string, sha256?: string): Promise<Result<Art>> {
    const known = await this.#known(path);
    if (known !== undefined) return this.#artOf(path, known, true);
    const { pages } = this.#begin(path, sha256);
    const report = await pages;
    return report.ok ? this.#artOf(path, report.value, false) : report;
  }

  /** Looks through a file, to the end. Refusals are those of `inspectArt`. */
  async look(path: string): Promise<Result<Art>> {
    const report = await this.#report(path);
    return report.ok ? this.#artOf(path, report.value, true) : report;
  }

  async findTrim(path: string, ask: TrimAsk): Promise<Result<FoundTrim>> {
    const report = await this.#report(path);
    if (!report.ok) return report;
    const { pages, name } = report.value;
    const page = pages[ask.page - 1];
    if (page === undefined) {
      return refuse({
        code: 'art-page-missing',
        message: `There is no page ${ask.page} in ${name}: it has ${pages.length}.`,
        remedy: 'Choose one of its pages.',
        where: path,
      });
    }
    return findTrim(page, ask);
  }

  async #artOf(path: string, report: ArtReport, checked: boolean): Promise<Result<Art>> {
    const { sha256, pages, notices } = report;
    try {
      const { size } = await stat(path);
      const art = this.#entries.art.issue(path);
      const place = folderAndName(dirname(path));
      return ok({ art, name: basename(path), place, bytes: size, sha256, pages, notices, checked });
    } catch (error) {
      return refuse(readingFault(error, path));
    }
  }

  async #report(path: string): Promise<Result<ArtReport>> {
    const known = await this.#known(path);
    return known === undefined ? this.#begin(path).whole : ok(known);
  }

  /** What was found in a file that is still what it was: it is not looked through again. */
  async #known(path: string): Promise<ArtReport | undefined> {
    const known = this.#reports.get(path);
    if (known === undefined) return undefined;
    return known.sha256 === (await this.#hashes.of(path).catch(() => undefined)) ? known : undefined;
  }

  /** A file that is being looked through already is not looked through twice at once. */
  #begin(path: string, sha256?: string): Inspection {
    const running = this.#running.get(path);
    if (running !== undefined) return running;
    const { pages, whole } = this.#inspect(path, sha256);
    const noted = whole.then((report) => {
      this.#running.delete(path);
      if (report.ok) {
        const { mended: _, ...plain } = report.value;
        this.#reports.set(path, plain);
      }
      return report;
    });
    const inspection = { pages, whole: noted };
    this.#running.set(path, inspection);
    return inspection;
  }
}
