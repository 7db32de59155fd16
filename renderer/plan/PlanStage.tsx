// The Plan stage: what was ordered, where and how it could run and what that costs, and what the sheets come to.
import { useMemo, useState } from 'react';
import { compareWorks, sameWork } from '../../shared/job/compareWorks.ts';
import { piecesWanted } from '../../shared/plan/whatIf.ts';
import { useApp, useJob } from '../state/store.ts';
import { WhereItRuns } from './candidates/WhereItRuns.tsx';
import { CostOfEach } from './chart/CostOfEach.tsx';
import { quantitiesAround } from './chart/costLines.ts';
import { LibraryTrouble } from './LibraryTrouble.tsx';
import { NotPossible } from './NotPossible.tsx';
import { Order } from './Order.tsx';
import { PlanOutcome } from './PlanOutcome.tsx';
import { AS_THEY_ARE, ratiosInWords, whatIfOf } from './ratios.ts';
import { useCoverage } from './useCoverage.ts';
import { usePlanWorker } from './usePlanWorker.ts';
import { Ways } from './Ways.tsx';
import { WhatIfPanel } from './WhatIfPanel.tsx';
import '../look/readStage.css';
import './plan.css';

export function PlanStage() {
  const { brief } = useJob();
  const library = useApp((s) => s.library);
  const [ratios, setRatios] = useState(AS_THEY_ARE);
  const ways = useMemo(() => compareWorks(brief), [brief]);
  const fresh = ways.find(({ work }) => sameWork(work, brief.work))?.offer;
  const coverage = useCoverage();
  const terms = useMemo(
    () => ({ library, coverage: coverage.faces, whatIf: whatIfOf(ratios, brief, library) }),
    [library, coverage.faces, ratios, brief],
  );
  const ordered = piecesWanted(brief);
  const { plan, candidates, curves } = usePlanWorker(brief, terms, quantitiesAround(ordered));
  return (
    <section className="read-stage" aria-label="Plan">
      <h2>Plan</h2>
      <LibraryTrouble />
      <Order />
      {plan !== undefined && (
        <>
          <WhatIfPanel ratios={ratios} says={ratiosInWords(ratios, brief, library)} change={setRatios} />
          <WhereItRuns candidates={candidates} library={library} inkSaid={coverage.said} />
          <CostOfEach curves={curves} ordered={terms.whatIf.pieces ?? ordered} currency={library.currency} />
          <NotPossible refused={plan.refused} />
        </>
      )}
      <Ways ways={ways} />
      <PlanOutcome offer={fresh?.ok ? fresh.value : undefined} />
    </section>
  );
}
