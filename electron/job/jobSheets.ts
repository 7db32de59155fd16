// The sheets of a job as files in memory, named and ready to be sent.
import { ok, type Result } from '../../shared/fault/result.ts';
import { type Job, sheetOf } from '../../shared/job/job.ts';
import { nameJobFiles, type SidePage } from '../../shared/job/nameJobFiles.ts';
import { writeSheets } from '../../shared/pdf/sheet/writeSheets.ts';
import { faceSourceOf } from './faceSource.ts';
import type { JobArtFiles } from './jobArt.ts';
import { markedForms } from './markedForms.ts';
import { sheetFont } from './sheetFont.ts';

export interface JobSheets {
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[];
  readonly sides: readonly SidePage[];
  readonly notices: readonly string[];
}

/** Writes the sheets of a job. `now` is when; the same job, art and time give the same bytes. */
export async function writeJobSheets(job: Job, art: JobArtFiles, now: Date): Promise<Result<JobSheets>> {
  const { brief } = job;
  const sheet = sheetOf(brief);
  const [day = ''] = now.toISOString().split('T');
  const named = nameJobFiles(job, day);
  if (!named.ok) return named;
  const font = await sheetFont();
  const marked = markedForms(job, day, font.measure);
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
