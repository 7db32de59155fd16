// The Run stage: both sides into the RIP's folder, the proof of what was written, and how the sheets are run.
import { ProofShown } from './ProofShown.tsx';
import { RunSteps } from './RunSteps.tsx';
import { SendPanel } from './SendPanel.tsx';
import './run.css';

export function RunStage() {
  return (
    <section className="run-stage" aria-label="Run">
      <h2>Run</h2>
      <SendPanel />
      <ProofShown />
      <RunSteps />
    </section>
  );
}
