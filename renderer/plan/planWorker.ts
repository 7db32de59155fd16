// Lays the job out in every way that the library allows and prices all of it, in a thread of its own, so that the window
// never waits for it.
import type { Brief } from '../../shared/job/brief.ts';
import type { Library } from '../../shared/library/library.ts';
import type { LaidCandidate, PlanCandidate } from '../../shared/plan/candidate.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { type CostCurve, costCurves, type Quantities } from '../../shared/plan/costCurve.ts';
import { type CoverageOfFaces, coverageFrom } from '../../shared/plan/coverageOfFaces.ts';
import { type LaidPlan, layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import type { WhatIf } from '../../shared/plan/whatIf.ts';

/** What is reckoned with besides the layouts, which are those of the last answer. */
export interface PlanTerms {
  readonly library: Library;
  readonly coverage: CoverageOfFaces;
  readonly whatIf: WhatIf;
}

export type PlanAsked =
  | { readonly ask: 'layouts'; readonly brief: Brief; readonly library: Library }
  | { readonly ask: 'prices'; readonly terms: PlanTerms }
  | { readonly ask: 'curves'; readonly terms: PlanTerms; readonly quantities: Quantities };

/** A candidate without its layout, which the window has already. */
export type PricedCandidate = Pick<LaidCandidate, 'id'> & Omit<PlanCandidate, keyof LaidCandidate>;

export type PlanAnswer =
  | { readonly ask: 'layouts'; readonly plan: LaidPlan }
  | { readonly ask: 'prices'; readonly prices: readonly PricedCandidate[] }
  | { readonly ask: 'curves'; readonly curves: readonly CostCurve[] };

let plan: LaidPlan | undefined;

self.onmessage = ({ data }: MessageEvent<PlanAsked>) => self.postMessage(answer(data));

function answer(asked: PlanAsked): PlanAnswer {
  if (asked.ask === 'layouts') {
    plan = layOutCandidates(asked.brief, asked.library);
    return { ask: 'layouts', plan };
  }
  if (plan === undefined) throw new Error('Nothing was laid out that could be priced');
  const { library, coverage, whatIf } = asked.terms;
  const covered = coverageFrom(coverage);
  return asked.ask === 'prices'
    ? { ask: 'prices', prices: costCandidates(plan, library, covered, whatIf).map(withoutLayout) }
    : { ask: 'curves', curves: costCurves(plan, library, covered, asked.quantities, whatIf) };
}

function withoutLayout(candidate: PlanCandidate): PricedCandidate {
  const { id, quality, count, area, time, ink, cost, spread, perPiece, unbeaten } = candidate;
  return { id, quality, count, area, time, ink, cost, spread, perPiece, unbeaten };
}
