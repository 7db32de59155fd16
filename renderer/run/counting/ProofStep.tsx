// The proof sheet: one sheet printed as all will be, looked at, and a go or a no-go.
import { useState } from 'react';
import type { Fault } from '../../../shared/fault/result.ts';
import { USUAL_REASONS } from '../../../shared/run/events.ts';
import { runSteps } from '../../../shared/runSheet/steps.ts';
import { Button } from '../../controls/Button.tsx';
import { FaultNote } from '../../controls/Note.tsx';
import { record } from '../../desk/runs.ts';
import { useJob } from '../../state/store.ts';
import { ReasonChoice } from './ReasonChoice.tsx';
import { StepWords } from './StepWords.tsx';
import type { StepProps } from './stepProps.ts';

export function ProofStep({ sides }: StepProps) {
  const job = useJob();
  const [refusing, setRefusing] = useState(false);
  const [reason, setReason] = useState('');
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  const { steps, cautions } = runSteps(job, sides)[1];
  const noGo = async () => {
    setFault(await record({ kind: 'proofed', go: false, reason: reason.trim() }));
    setRefusing(false);
    setReason('');
  };
  return (
    <>
      <p className="step-says">Print one sheet as all will be. Is it right?</p>
      <div className="count-verdict">
        <Button
          kind="main"
          autoFocus
          onPress={async () => setFault(await record({ kind: 'proofed', go: true }))}
        >
          Go: it is right
        </Button>
        <Button onPress={() => setRefusing(!refusing)}>No-go…</Button>
      </div>
      {refusing && (
        <form
          className="count-form"
          aria-label="No-go"
          onSubmit={(e) => {
            e.preventDefault();
            if (reason.trim() !== '') void noGo();
          }}
        >
          <ReasonChoice
            label="What is wrong with it"
            reasons={USUAL_REASONS[2]}
            reason={reason}
            onChange={setReason}
          />
          <div className="count-does">
            <Button submits disabled={reason.trim() === ''}>
              Spoiled: prove again
            </Button>
          </div>
        </form>
      )}
      {fault !== undefined && (
        <div role="alert">
          <FaultNote fault={fault} />
        </div>
      )}
      <StepWords steps={steps} cautions={cautions} />
    </>
  );
}
