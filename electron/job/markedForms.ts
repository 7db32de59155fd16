// The forms of a job with the marks that belong on them, if the job has marks.
import { countJob } from '../../shared/job/counts.ts';
import { type Job, sheetOf } from '../../shared/job/job.ts';
import { formsOfJob } from '../../shared/job/nameJobFiles.ts';
import type { Form } from '../../shared/layout/placement.ts';
import type { Measure } from '../../shared/marks/mark.ts';
import { type Marks, marksOf } from '../../shared/marks/marksOf.ts';

/** Each form with its marks. `day` is the date that the slug tells, as YYYY-MM-DD. */
export function markedForms(
  job: Job,
  day: string,
  measure: Measure,
): readonly (Marks & { readonly form: Form })[] {
  const { brief } = job;
  const { size, unprintable } = sheetOf(brief);
  const forms = formsOfJob(job);
  const { sheets } = countJob(job);
  const slug = { job: brief.title, sheets, date: day };
  return forms.map((form) => ({
    form,
    ...(brief.marks
      ? marksOf({ sheet: size, unprintable, work: brief.work, forms, form, slug, measure })
      : { marks: [], notices: [] }),
  }));
}
