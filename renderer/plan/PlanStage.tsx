// The Plan stage: what was ordered, how the job could be worked, and what the sheets come to.
import { useMemo } from 'react';
import { compareWorks, sameWork } from '../../shared/job/compareWorks.ts';
import { useJob } from '../state/store.ts';
import { Order } from './Order.tsx';
import { Outcome } from './Outcome.tsx';
import { Ways } from './Ways.tsx';
import '../look/readStage.css';
import './plan.css';

export function PlanStage() {
  const { brief } = useJob();
  const ways = useMemo(() => compareWorks(brief), [brief]);
  const chosen = ways.find(({ work }) => sameWork(work, brief.work))?.offer;
  return (
    <section className="read-stage" aria-label="Plan">
      <h2>Plan</h2>
      <Order />
      <Ways ways={ways} />
      <Outcome offer={chosen?.ok ? chosen.value : undefined} />
    </section>
  );
}
