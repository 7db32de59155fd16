// Whether the job is printed by a candidate already.

import { same } from '../geometry/tolerance.ts';
import type { Brief } from '../job/brief.ts';
import { sameWork } from '../job/compareWorks.ts';
import { sheetOf } from '../job/job.ts';
import type { PlanCandidate } from './candidate.ts';
import { cutFromInWords } from './takeCandidate.ts';

export function isTaken(candidate: PlanCandidate, brief: Brief): boolean {
  const { plan } = brief;
  const { size } = sheetOf(brief);
  return (
    plan !== undefined &&
    plan.printer === candidate.printer.name &&
    plan.feed === candidate.feed.name &&
    plan.paper === candidate.paper.name &&
    plan.lies === candidate.lies &&
    plan.cutFrom === cutFromInWords(candidate) &&
    sameWork(brief.work, candidate.work) &&
    same(size.w, candidate.size.w) &&
    same(size.h, candidate.size.h)
  );
}
