// Opening the written sheets and the art for a proof, or saying why they cannot be opened.
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { SideNumber } from '../../shared/proof/finding.ts';
import type { FaceArt, ProofJob } from '../../shared/proof/job.ts';
import type { PageSource } from '../../shared/proof/pageSource.ts';
import type { OpenPage, Renderer } from './renderer.ts';

/** The page of a side, and the number of pages of its file. */
interface OpenSide extends OpenPage {
  readonly pages: number;
}

/** Opens the page that was written for a side: its file, if there is one, and the number of the page, from 1. */
export function openSide(
  renderer: Renderer,
  side: SideNumber,
  bytes: Uint8Array | undefined,
  number: number,
): Result<OpenSide> {
  const fault = (code: Fault['code'], message: string): Result<OpenSide> =>
    refuse({ code, message, remedy: 'Send the job again and prove the new files.', where: `side ${side}` });
  if (bytes === undefined) return fault('sheet-missing', `There is no file for side ${side}.`);
  const document = renderer.open(bytes);
  if (typeof document === 'string') {
    return fault('sheet-unreadable', `The file for side ${side} ${WHY[document]}.`);
  }
  const page = document.page(number);
  if (page === undefined) {
    const pages = document.pages === 1 ? '1 page' : `${document.pages} pages`;
    return fault(
      'sheet-unreadable',
      `The file for side ${side} has ${pages}; page ${number} cannot be read.`,
    );
  }
  return ok({ ...page, pages: document.pages });
}

const WHY = {
  locked: 'needs a password',
  damaged: 'cannot be read as a PDF',
} as const;

/** Opens every page of art that the job names. Gives the page of a face. */
export function openArtPages(
  renderer: Renderer,
  job: ProofJob,
  art: ReadonlyMap<string, Uint8Array>,
): Result<(face: FaceArt) => PageSource> {
  const sources = new Map<FaceArt, PageSource>();
  for (const { faces } of job.pieces) {
    for (const face of [faces.front, faces.back]) {
      if (face === undefined) continue;
      const source = openFace(renderer, face, art);
      if (!source.ok) return source;
      sources.set(face, source.value);
    }
  }
  return ok((face) => {
    const source = sources.get(face);
    if (source === undefined) throw new Error(`Page ${face.page} of ${face.art} is no art of this job`);
    return source;
  });
}

function openFace(
  renderer: Renderer,
  face: FaceArt,
  art: ReadonlyMap<string, Uint8Array>,
): Result<PageSource> {
  const fault = (code: Fault['code'], message: string, remedy: string): Result<PageSource> =>
    refuse({ code, message, remedy, where: face.art });
  const bytes = art.get(face.art);
  if (bytes === undefined) {
    return fault('art-missing', `The art file ${face.art} is not there.`, 'Link the art again.');
  }
  const document = renderer.open(bytes);
  if (document === 'locked') {
    return fault('art-locked', `The art file ${face.art} needs a password.`, 'Ask for one without.');
  }
  if (document === 'damaged') {
    return fault('art-damaged', `The art file ${face.art} cannot be read.`, 'Have it exported again.');
  }
  const page = document.page(face.page);
  if (page === undefined) {
    return fault('art-page-missing', `${face.art} has no page ${face.page}.`, 'Choose one of its pages.');
  }
  return ok(page.source);
}
