// Delivery: the good pieces of each design against the order, what goes to the customer, and the slip that goes with it.
import type { RunLog } from '../../../shared/run/logText.ts';
import { BeginPanel } from '../counting/BeginPanel.tsx';
import { runOf } from '../useRun.ts';
import { Deliveries } from './Deliveries.tsx';
import { DeliveryPanel } from './DeliveryPanel.tsx';
import './delivery.css';

export function DeliverPart({ log }: { readonly log: RunLog | undefined }) {
  const run = runOf(log);
  if (run === undefined) return <BeginPanel />;
  return (
    <>
      <DeliveryPanel run={run} />
      <Deliveries run={run} />
    </>
  );
}
