// The Plan stage: what was ordered, how the job could be worked, and what the sheets come to.
import { Order } from './Order.tsx';
import { Outcome } from './Outcome.tsx';
import { Ways } from './Ways.tsx';
import './plan.css';

export function PlanStage() {
  return (
    <section className="plan-stage" aria-label="Plan">
      <h2>Plan</h2>
      <Order />
      <Ways />
      <Outcome />
    </section>
  );
}
