// The Run stage: both sides into the RIP's folder, the proof of what was written, and how the sheets are run.
import { ProofShown } from './ProofShown.tsx';
import { RunSteps } from './RunSteps.tsx';
import '../look/readStage.css';
import './run.css';
import { SendPanel } from './SendPanel.tsx';
import { useSendPlan } from './useSendPlan.ts';

export function RunStage() {
  const plan = useSendPlan();
  return (
    <section className="read-stage" aria-label="Run">
      <h2>Run</h2>
      <SendPanel plan={plan} />
      <ProofShown />
      <RunSteps sides={plan?.ok ? plan.value.sides : []} />
    </section>
  );
}
