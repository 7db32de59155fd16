// The proof of a job from the bytes that were read back, whether they are on their way or in the folder already.
import type { Result } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { facesOf } from '../../shared/job/job.ts';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import type { Mark } from '../../shared/marks/mark.ts';
import type { SideNumber } from '../../shared/proof/finding.ts';
import { type ProofOptions, proveSheets, type SheetsProof, type WrittenSide } from '../proof/proveSheets.ts';
import { artFileOf, type JobArtFiles } from './jobArt.ts';
import { markedForms } from './markedForms.ts';
import { proofJobOf } from './proofJob.ts';
import { sheetFont } from './sheetFont.ts';

/** Proves the sides of a job from its files, given by name. */
export async function proveWritten(
  job: Job,
  art: JobArtFiles,
  sides: readonly SidePage[],
  files: ReadonlyMap<string, Uint8Array>,
  options: ProofOptions,
): Promise<Result<SheetsProof>> {
  const written = (side: 1 | 2): WrittenSide | undefined => {
    const at = sides.find((s) => s.side === side);
    if (at === undefined) return undefined;
    const bytes = files.get(at.name);
    if (bytes === undefined) throw new Error(`${at.name} has not been read back`);
    return {
      bytes,
      page: at.page,
      pages: Math.max(...sides.filter((s) => s.name === at.name).map((s) => s.page)),
    };
  };
  const side1 = written(1);
  if (side1 === undefined) throw new Error('Every job prints side 1');
  const side2 = written(2);
  const artBytes = new Map(
    facesOf(job.brief).map(({ face }) => [face.file, artFileOf(art, face.file).bytes]),
  );
  return proveSheets(proofJobOf(job, art), { side1, ...(side2 === undefined ? {} : { side2 }) }, artBytes, {
    ...options,
    marks: await marksOfSides(job),
  });
}

/** Any date: all digits of the sheet font are of one width, so that the slug is as long on any day. */
const ANY_DAY = '2000-00-00';

/** The marks that belong on each side, worked out anew and not taken from the files. */
async function marksOfSides(job: Job): Promise<Readonly<Record<SideNumber, readonly Mark[]>>> {
  const font = await sheetFont();
  const forms = markedForms(job, ANY_DAY, font.measure);
  const ofSide = (side: SideNumber) =>
    forms.filter(({ form }) => form.sides.includes(side)).flatMap(({ marks }) => marks);
  return { 1: ofSide(1), 2: ofSide(2) };
}
