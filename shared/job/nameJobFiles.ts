// The files that a job is sent as: the forms in each, its name, and which of its pages prints which side.
import { ok, type Result } from '../fault/result.ts';
import { formsOf, groupByFile } from '../layout/forms.ts';
import type { Form } from '../layout/placement.ts';
import { countJob } from './counts.ts';
import { nameFiles } from './fileNames.ts';
import { designsOf, type Job, sheetOf } from './job.ts';

/** Which page of which file prints a side of the sheet. */
export interface SidePage {
  readonly side: 1 | 2;
  readonly name: string;
  /** From 1. */
  readonly page: number;
}

/** What each pass of a job prints. */
export function formsOfJob({ arrangement, brief }: Job): readonly Form[] {
  return formsOf(arrangement, designsOf(brief), brief.work, sheetOf(brief).size);
}

/**
 * The files that a job is sent as: their names, and the side that each page prints. `day` is `2026-03-01`. Refuses a
 * pattern of names that cannot be used (`name-unusable`).
 */
export function nameJobFiles(
  job: Job,
  day: string,
): Result<{ readonly names: readonly string[]; readonly sides: readonly SidePage[] }> {
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
