// Choosing a candidate: the job gets its sheet, its way of working and a fresh layout.
import type { Result } from '../fault/result.ts';
import type { Job } from '../job/job.ts';
import { type TakenPlan, takePlan } from '../job/takePlan.ts';
import { points } from '../units/length.ts';
import { showLength, showSize } from '../units/show.ts';
import type { PlanCandidate } from './candidate.ts';
import { sizeInPoints } from './measures.ts';

/**
 * What a candidate makes of a job, for the edit `take-plan`. The overs are those of the plan, sheets for setting up among
 * them, so that the job loads just as many sheets as were reckoned with.
 */
export function takenPlanOf(candidate: PlanCandidate): TakenPlan {
  const { printer, feed, paper, sheet, work, lies, count } = candidate;
  const cutFrom = cutFromInWords(candidate);
  return {
    plan: {
      printer: printer.name,
      feed: feed.name,
      paper: paper.name,
      ...(cutFrom === undefined ? {} : { cutFrom }),
      lies,
    },
    sheet: { size: sheet, unprintable: feed.unprintable, hold: feed.hold, sidesAlike: paper.sidesAlike },
    work,
    overs: { percent: count.oversBy.percent, least: count.overs + count.makeReady },
  };
}

/** What the sheets are cut from: `26 × 40 in, 4 out`; nothing where they come in their size. */
export function cutFromInWords({ source }: Pick<PlanCandidate, 'source'>): string | undefined {
  switch (source.is) {
    case 'sheet':
      return undefined;
    case 'parent': {
      const { size } = source.form;
      return `${showSize(sizeInPoints(size), size[0].unit)}, ${source.out} out`;
    }
    case 'roll': {
      const { width } = source.form;
      return `a roll ${showLength(points(width), width.unit)} wide`;
    }
  }
}

/** The job printed by this candidate, laid out afresh. */
export function takeCandidate(job: Job, candidate: PlanCandidate): Result<Job> {
  return takePlan(job, takenPlanOf(candidate));
}
