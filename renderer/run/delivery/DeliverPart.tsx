// Delivery: the good pieces of each design against the order, what goes to the customer, and the slip that goes with it.
import type { RunLog } from '../../../shared/run/logText.ts';
import { nextStep } from '../../../shared/run/nextStep.ts';
import { BeginPanel } from '../counting/BeginPanel.tsx';
import { runOf } from '../useRun.ts';
import { CostPanel } from './CostPanel.tsx';
import { Deliveries } from './Deliveries.tsx';
import { DeliveryPanel } from './DeliveryPanel.tsx';
import { LearnPanel } from './LearnPanel.tsx';
import './delivery.css';

export function DeliverPart({ log }: { readonly log: RunLog | undefined }) {
  const run = runOf(log);
  if (run === undefined) return <BeginPanel />;
  return (
    <>
      <DeliveryPanel run={run} />
      <Deliveries run={run} />
      <CostPanel run={run} />
      {nextStep(run) === 'done' && <LearnPanel run={run} />}
    </>
  );
}
