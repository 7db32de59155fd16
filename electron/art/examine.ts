// What is done with a stranger's file inside the worker: opened, each page measured, then each tried out as a form.
import { PDFDocument } from 'pdf-lib';
import { ok, type Result } from '../../shared/fault/result.ts';
import type { ArtPage } from '../../shared/pdf/art/artPage.ts';
import { type OpenArt, openArt } from '../../shared/pdf/art/openArt.ts';
import { createFormMaker } from '../../shared/pdf/form/formMaker.ts';
import { readArtFile } from './readArtFile.ts';
import { repair } from './repair.ts';

/** What is asked of the worker. Plain values, sent between threads. */
export interface Question {
  readonly path: string;
  /** The pages that matter, from 1; all of them when left out. */
  readonly pages?: readonly number[] | undefined;
  readonly password?: string | undefined;
  /** The SHA-256 of the file, in hexadecimal, where it was worked out as the file came. */
  readonly sha256?: string | undefined;
}

/** What a file holds. Plain values, sent between threads. */
export interface ArtReport {
  readonly name: string;
  /** The file on the disk, in hexadecimal. */
  readonly sha256: string;
  readonly pageCount: number;
  /** The pages asked for, in that order. */
  readonly pages: readonly ArtPage[];
  /** What the person should know, in words. */
  readonly notices: readonly string[];
  /** The mended copy that has to be used instead of the file, where one was needed. */
  readonly mended?: Uint8Array | undefined;
}

/**
 * Opens the file and tries every page out. Where that fails because the file is damaged or locked, mends it in memory
 * and tries once more; the refusal of the first try stands if that does not help. `onPages` hears what the pages are as
 * soon as all of them are measured, before any is tried out.
 */
export async function examine(
  question: Question,
  onPages: (report: ArtReport) => void = () => undefined,
): Promise<Result<ArtReport>> {
  const file = await readArtFile(question.path, question.sha256);
  if (!file.ok) return file;
  const { name, bytes, sha256 } = file.value;
  const first = await look(bytes, name, question, (pages) => onPages({ ...pages, name, sha256 }));
  if (first.ok) return ok({ ...first.value, name, sha256 });
  const { code } = first.fault;
  if (code !== 'art-damaged' && code !== 'art-locked') return first;

  const mended = await repair(bytes, question.password ?? '');
  if (mended === undefined) return first;
  const second = await look(mended, name, { ...question, password: '' });
  if (!second.ok) return first;
  const notice = `${name} could not be read as it is, so a copy was mended in memory and the file left alone. Look closely at the proof.`;
  return ok({ ...second.value, name, sha256, notices: [notice, ...second.value.notices], mended });
}

type Look = Pick<ArtReport, 'pageCount' | 'pages' | 'notices'>;

async function look(
  bytes: Uint8Array,
  name: string,
  { pages: asked, password = '' }: Question,
  onPages: (look: Look) => void = () => undefined,
): Promise<Result<Look>> {
  const opened = await openArt(bytes, { name, password });
  if (!opened.ok) return opened;
  const art = opened.value;
  const wanted = asked ?? Array.from({ length: art.pageCount }, (_, i) => i + 1);
  const pages: ArtPage[] = [];
  for (const n of wanted) {
    const page = art.page(n);
    if (!page.ok) return page;
    pages.push(page.value);
  }
  const { pageCount, notices } = art;
  onPages({ pageCount, pages, notices });
  const tried = await tryOut(art, pages);
  return tried.ok ? ok({ pageCount, pages, notices: tried.value }) : tried;
}

/**
 * Makes a form of each page in a file that is thrown away, so that whatever may go wrong goes wrong here. Gives what the
 * person should know, in words.
 */
async function tryOut(art: OpenArt, pages: readonly ArtPage[]): Promise<Result<readonly string[]>> {
  const maker = createFormMaker(await PDFDocument.create({ updateMetadata: false }));
  for (const { number, boxes } of pages) {
    const form = maker.formOf(art, number, 0, boxes.media);
    if (!form.ok) return form;
  }
  return ok(maker.finish());
}
