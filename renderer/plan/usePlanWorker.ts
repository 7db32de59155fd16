// What the thread of the plan has worked out: an older answer stays to be seen while a new one comes.
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Brief } from '../../shared/job/brief.ts';
import type { PlanCandidate } from '../../shared/plan/candidate.ts';
import type { CostCurve, Quantities } from '../../shared/plan/costCurve.ts';
import type { LaidPlan } from '../../shared/plan/layOutCandidates.ts';
import { PlanThread } from './planThread.ts';
import type { PlanTerms, PricedCandidate } from './planWorker.ts';

export interface Worked {
  readonly plan: LaidPlan | undefined;
  /** The cheapest first. */
  readonly candidates: readonly PlanCandidate[];
  readonly curves: readonly CostCurve[];
}

/**
 * Lays out whenever the brief or the library changes, and prices whenever anything does.
 *
 * @param terms - the same object as long as nothing in it has changed
 */
export function usePlanWorker(brief: Brief, terms: PlanTerms, { from, to }: Quantities): Worked {
  const { library } = terms;
  const [plan, setPlan] = useState<LaidPlan | undefined>();
  const [prices, setPrices] = useState<readonly PricedCandidate[]>([]);
  const [curves, setCurves] = useState<readonly CostCurve[]>([]);
  const thread = useRef<PlanThread | undefined>(undefined);
  useEffect(() => {
    const started = new PlanThread((answer) => {
      if (answer.ask === 'layouts') setPlan(answer.plan);
      else if (answer.ask === 'prices') setPrices(answer.prices);
      else setCurves(answer.curves);
    });
    thread.current = started;
    return () => started.end();
  }, []);
  useEffect(() => thread.current?.ask({ ask: 'layouts', brief, library }), [brief, library]);
  useEffect(() => {
    if (plan === undefined) return;
    thread.current?.ask({ ask: 'prices', terms });
    thread.current?.ask({ ask: 'curves', terms, quantities: { from, to } });
  }, [plan, terms, from, to]);
  const candidates = useMemo(() => withLayouts(prices, plan), [prices, plan]);
  return { plan, candidates, curves };
}

/** Prices of an older plan are passed over until the new ones are there. */
function withLayouts(
  prices: readonly PricedCandidate[],
  plan: LaidPlan | undefined,
): readonly PlanCandidate[] {
  const laid = new Map(plan?.candidates.map((candidate) => [candidate.id, candidate]));
  return prices.flatMap((priced) => {
    const candidate = laid.get(priced.id);
    return candidate === undefined ? [] : [{ ...candidate, ...priced }];
  });
}
