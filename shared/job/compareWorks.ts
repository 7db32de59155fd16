// The ways in which a job could be worked, side by side: what each would hold and how many sheets it would take.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import { hasOneForm, type Work } from '../geometry/work.ts';
import type { SheetCount } from '../layout/count.ts';
import type { Brief } from './brief.ts';
import { countJob } from './counts.ts';
import { JOB_SCHEMA } from './job.ts';
import { layOutBrief } from './layOutJob.ts';
import { oneFormFaults, withWork } from './oneForm.ts';

/** Every way of working, in the order they are offered. */
export const WORKS: readonly Work[] = [
  { style: 'simplex' },
  { style: 'work-and-back', turn: 'side-to-side' },
  { style: 'work-and-back', turn: 'end-to-end' },
  { style: 'perfecting', turn: 'side-to-side' },
  { style: 'perfecting', turn: 'end-to-end' },
  { style: 'work-and-turn' },
  { style: 'work-and-tumble' },
];

/** What the sheet would hold if the job were worked in this way. */
export interface WorkOffer {
  /** Pieces on each sheet, of all designs together. */
  readonly up: number;
  /** Forms to be set up. */
  readonly forms: 1 | 2;
  readonly count: SheetCount;
  /** What the person should know of this layout, in words. */
  readonly notices: readonly string[];
}

/** Whether two ways of working are one. */
export function sameWork(a: Work, b: Work): boolean {
  return a.style === b.style && ('turn' in a ? a.turn : undefined) === ('turn' in b ? b.turn : undefined);
}

/** What the job would be in each way of working, or why it cannot be worked so. */
export function compareWorks(
  brief: Brief,
): readonly { readonly work: Work; readonly offer: Result<WorkOffer> }[] {
  return WORKS.map((work) => ({ work, offer: offerOf(brief, work) }));
}

function offerOf(brief: Brief, work: Work): Result<WorkOffer> {
  const other = withWork(brief, work);
  const unfit = unfitFor(other);
  if (unfit !== undefined) return refuse(unfit);
  const arranged = layOutBrief(other);
  if (!arranged.ok) return arranged;
  const { positions, notices } = arranged.value;
  return ok({
    up: positions.length,
    forms: work.style === 'simplex' || hasOneForm(work) ? 1 : 2,
    count: countJob({ schema: JOB_SCHEMA, brief: other, art: [], arrangement: positions }),
    notices,
  });
}

/** Why the job cannot be worked in the way that its brief says, whatever its sheet would hold. */
export function unfitFor(brief: Brief): Fault | undefined {
  const backs = brief.pieces.filter((p) => p.back !== undefined).length;
  if (brief.work.style === 'simplex' && backs > 0) {
    return unfit('One side only would leave the backs unprinted.', 'Take a way of working with two sides.');
  }
  if (brief.work.style !== 'simplex' && backs === 0) {
    return unfit('No piece has a back, so there is nothing to print on side 2.', 'Take one side only.');
  }
  const [fault] = oneFormFaults(brief);
  return (
    fault && unfit(`${fault.says[0]?.toUpperCase()}${fault.says.slice(1)}.`, 'Take another way of working.')
  );
}

function unfit(message: string, remedy: string): Fault {
  return { code: 'edit-refused', message, remedy, where: 'work' };
}
