// Looking through art for the window: what a file holds, and where the trim lies on its pages.
import { stat } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import type { Art, TrimAsk } from '../../shared/contract/art.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { type FoundTrim, findTrim } from '../../shared/pdf/art/findTrim.ts';
import { type ArtReport, inspectArt } from '../art/inspectArt.ts';
import { type Entries, placeOf } from './entries.ts';
import { readingFault } from './fileFaults.ts';
import type { FileHashes } from './hashes.ts';

export class ArtDesk {
  readonly #entries: Entries;
  readonly #hashes: FileHashes;
  /** What was found in each file when it was last looked through. */
  readonly #reports = new Map<string, ArtReport>();

  constructor(entries: Entries, hashes: FileHashes) {
    this.#entries = entries;
    this.#hashes = hashes;
  }

  /** Looks through a file. Refusals are those of `inspectArt`. */
  async look(path: string): Promise<Result<Art>> {
    const report = await this.#report(path);
    if (!report.ok) return report;
    const { sha256, pages, notices } = report.value;
    try {
      const { size } = await stat(path);
      const art = this.#entries.art.issue(path);
      const place = placeOf(dirname(path));
      return ok({ art, name: basename(path), place, bytes: size, sha256, pages, notices });
    } catch (error) {
      return refuse(readingFault(error, path));
    }
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

  /** A file that is still what it was is not looked through again. */
  async #report(path: string): Promise<Result<ArtReport>> {
    const known = this.#reports.get(path);
    if (known !== undefined && known.sha256 === (await this.#hashes.of(path).catch(() => undefined))) {
      return ok(known);
    }
    const report = await inspectArt(path);
    if (report.ok) {
      const { mended: _, ...plain } = report.value;
      this.#reports.set(path, plain);
    }
    return report;
  }
}
