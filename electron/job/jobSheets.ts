// The sheets of a job as files in memory, named and ready to be sent.
import { ok, type Result } from '../../shared/fault/result.ts';
import { countJob } from '../../shared/job/counts.ts';
import { nameFiles } from '../../shared/job/fileNames.ts';
import { designsOf, type Job, sheetOf } from '../../shared/job/job.ts';
import { formsOf, groupByFile } from '../../shared/layout/forms.ts';
import type { Form } from '../../shared/layout/placement.ts';
import { marksOf } from '../../shared/marks/marksOf.ts';
import { writeSheets } from '../../shared/pdf/sheet/writeSheets.ts';
import { faceSourceOf } from './faceSource.ts';
import type { JobArtFiles } from './jobArt.ts';
import { sheetFont } from './sheetFont.ts';

/** Which page of which file prints a side of the sheet. */
export interface SidePage {
  readonly side: 1 | 2;
  readonly name: string;
  /** From 1. */
  readonly page: number;
}

export interface JobSheets {
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[];
  readonly sides: readonly SidePage[];
  readonly notices: readonly string[];
}

function formsOfJob({ arrangement, brief }: Job): readonly Form[] {
  return formsOf(arrangement, designsOf(brief), brief.work, sheetOf(brief).size);
}

/** The files that a job is sent as: their names, and the side that each page prints. `day` is `2026-03-01`. */
export function nameJobFiles(
  job: Job,
  day: string,
): Result<{ names: readonly string[]; sides: readonly SidePage[] }> {
  const byFile = groupByFile(job.brief.work, formsOfJob(job));
  const { sheets } = countJob(job);
  const quantity = job.brief.pieces.reduce((sum, piece) => sum + piece.quantity, 0);
  const names = nameFiles(
    job.brief.fileNames,
    byFile.map((forms) => ({
      job: job.brief.title,
      forms: forms.map((f) => f.number),
      sides: forms.flatMap((f) => f.sides),
      quantity,
      sheets,
      date: day,
    })),
  );
  if (!names.ok) return names;
  const sides = byFile.flatMap((forms, i) =>
    forms.flatMap((form, p) => form.sides.map((side) => ({ side, name: names.value[i] ?? '', page: p + 1 }))),
  );
  return ok({ names: names.value, sides });
}

/** Writes the sheets of a job. `now` is when; the same job, art and time give the same bytes. */
export async function writeJobSheets(job: Job, art: JobArtFiles, now: Date): Promise<Result<JobSheets>> {
  const { brief } = job;
  const sheet = sheetOf(brief);
  const [day = ''] = now.toISOString().split('T');
  const named = nameJobFiles(job, day);
  if (!named.ok) return named;
  const font = await sheetFont();
  const forms = formsOfJob(job);
  const { sheets: count } = countJob(job);
  const marked = forms.map((form) => ({
    form,
    ...(brief.marks
      ? marksOf({
          sheet: sheet.size,
          unprintable: sheet.unprintable,
          work: brief.work,
          forms,
          form,
          slug: { job: brief.title, sheets: count, date: day },
          measure: font.measure,
        })
      : { marks: [], notices: [] }),
  }));
  const written = await writeSheets({
    sheet: sheet.size,
    work: brief.work,
    forms: marked,
    openFaces: faceSourceOf(job, art),
    font,
    title: brief.title,
    created: `${now.toISOString().slice(0, 19)}Z`,
  });
  if (!written.ok) return written;
  return ok({
    files: written.value.files.map((file, i) => ({ name: named.value.names[i] ?? '', bytes: file.bytes })),
    sides: named.value.sides,
    notices: [...new Set([...marked.flatMap((m) => m.notices), ...written.value.notices])],
  });
}
