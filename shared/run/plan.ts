// What a run sets out to do: the sheets to print and what each yields, as the job was when the run began.
import type { Work } from '../geometry/work.ts';
import { countJob } from '../job/counts.ts';
import { designsOf, type Job, sheetOf } from '../job/job.ts';
import type { Overs } from '../layout/count.ts';
import { formsOf } from '../layout/forms.ts';
import type { PlannedRun } from './planned.ts';

/** The version of the log that this program writes. */
export const RUN_SCHEMA = 1;

/** Stands at the head of a run and does not change with the job afterwards. */
export interface RunPlan {
  readonly schema: typeof RUN_SCHEMA;
  readonly title: string;
  readonly work: Work;
  /** How often each sheet goes through the printer: once where it turns the sheet itself. */
  readonly passes: 1 | 2;
  /** How many sides of each sheet are printed. */
  readonly sides: 1 | 2;
  /** Good sheets that the quantities need. */
  readonly needed: number;
  readonly overs: Overs;
  /** To be loaded: needed and overs. */
  readonly sheets: number;
  readonly designs: readonly PlannedDesign[];
  /** What was reckoned with; none where the job was not planned for a printer of the library. */
  readonly planned?: PlannedRun | undefined;
}

/** What a design is to get out of the run, in pieces. */
interface PlannedDesign {
  readonly piece: string;
  readonly wanted: number;
  readonly perSheet: number;
}

/** The plan of a run of this job as it is now. */
export function planRun(job: Job, planned?: PlannedRun): RunPlan {
  const { brief, arrangement } = job;
  const count = countJob(job);
  const forms = formsOf(arrangement, designsOf(brief), brief.work, sheetOf(brief).size);
  const sides = forms.some((form) => form.sides.includes(2)) ? 2 : 1;
  return {
    schema: RUN_SCHEMA,
    title: brief.title,
    work: brief.work,
    passes: brief.work.style === 'perfecting' ? 1 : sides,
    sides,
    needed: count.needed,
    overs: brief.overs,
    sheets: count.sheets,
    designs: count.yields.map(({ piece, wanted, perSheet }) => ({ piece, wanted, perSheet })),
    ...(planned === undefined ? {} : { planned }),
  };
}
