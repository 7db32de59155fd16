// Lays the job out in every way that the library allows and prices every quantity, in a thread of its own, so that the
// window never waits for it.
import type { Brief } from '../../shared/job/brief.ts';
import type { Library } from '../../shared/library/library.ts';
import { type CostCurve, costCurves, type Quantities } from '../../shared/plan/costCurve.ts';
import { type LaidPlan, layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import type { WhatIf } from '../../shared/plan/whatIf.ts';
import { type CoverageOfFaces, coverageFrom } from './coverageOfFaces.ts';

/** `number` comes back with the answer, so that an older one is known. */
export type PlanAsked = { readonly number: number; readonly library: Library } & (
  | { readonly ask: 'layouts'; readonly brief: Brief }
  | {
      readonly ask: 'curves';
      readonly plan: LaidPlan;
      readonly coverage: CoverageOfFaces;
      readonly quantities: Quantities;
      readonly whatIf: WhatIf;
    }
);

export type PlanAnswer = { readonly number: number } & (
  | { readonly ask: 'layouts'; readonly plan: LaidPlan }
  | { readonly ask: 'curves'; readonly curves: readonly CostCurve[] }
);

self.onmessage = ({ data }: MessageEvent<PlanAsked>) => {
  self.postMessage(answer(data));
};

function answer(asked: PlanAsked): PlanAnswer {
  const { number, library } = asked;
  if (asked.ask === 'layouts') {
    return { number, ask: 'layouts', plan: layOutCandidates(asked.brief, library) };
  }
  const { plan, coverage, quantities, whatIf } = asked;
  const curves = costCurves(plan, library, coverageFrom(coverage), quantities, whatIf);
  return { number, ask: 'curves', curves };
}
