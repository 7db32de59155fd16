// The papers of a job as PDF files, made as the program makes them.
import { officeFaces } from '../../electron/ticket/officeFaces.ts';
import type { Job } from '../../shared/job/job.ts';
import { nameJobFiles } from '../../shared/job/nameJobFiles.ts';
import type { Measures } from '../../shared/pdf/document/setWords.ts';
import { writeDocument } from '../../shared/pdf/document/writeDocument.ts';
import type { RunSheetInput } from '../../shared/runSheet/runSheetInput.ts';
import { type Pages, setRunSheet } from '../../shared/runSheet/runSheetPages.ts';
import { granted } from './granted.ts';

const faces = await officeFaces();

/** How long lines of the office type are. */
export const MEASURES: Measures = { plain: faces.plain.measure, strong: faces.strong.measure };

export const DAY = '2026-03-01';
export const NAME = { file: 'orchard.turnlay', fingerprint: '0123456789abcdef'.repeat(4) };

/** What the run sheet of a job is set from. */
export function runSheetInput(job: Job, changes: Partial<RunSheetInput> = {}): RunSheetInput {
  const { sides } = granted(nameJobFiles(job, DAY));
  return { job, sides, day: DAY, name: NAME, measures: MEASURES, ...changes };
}

export function runSheetOf(job: Job): Pages {
  return setRunSheet(runSheetInput(job));
}

/** Pages as the bytes of their PDF. */
export async function pdfOf(pages: Pages): Promise<Uint8Array> {
  return (await writeDocument({ ...pages, title: 'Test', created: `${DAY}T10:00:00Z`, faces })).bytes;
}
