// The step that is on: what is done in it, and what is counted.
import type { SidePage } from '../../../shared/job/nameJobFiles.ts';
import type { RunStep } from '../../../shared/run/nextStep.ts';
import type { Run } from '../../../shared/run/run.ts';
import { Button } from '../../controls/Button.tsx';
import { useApp } from '../../state/store.ts';
import { LoadStep } from './LoadStep.tsx';
import { PassStep } from './PassStep.tsx';
import { ProofStep } from './ProofStep.tsx';
import { TrimStep } from './TrimStep.tsx';
import { TurnStep } from './TurnStep.tsx';

export interface StepProps {
  readonly run: Run;
  /** Which page of which file prints each side; empty where it is not known. */
  readonly sides: readonly SidePage[];
  /** To another step, or to the one that comes next. */
  readonly onGoTo: (step: RunStep | undefined) => void;
}

export function StepShown({ step, ...props }: StepProps & { readonly step: RunStep }) {
  const showRunPart = useApp((s) => s.showRunPart);
  switch (step) {
    case 'load':
      return <LoadStep {...props} />;
    case 'proof':
      return <ProofStep {...props} />;
    case 'pass-1':
      return <PassStep {...props} pass={1} />;
    case 'turn':
      return <TurnStep {...props} />;
    case 'pass-2':
      return <PassStep {...props} pass={2} />;
    case 'trim':
      return <TrimStep {...props} />;
    case 'deliver':
      return (
        <div className="run-does">
          <Button kind="main" onPress={() => showRunPart('deliver')}>
            Go to the delivery
          </Button>
        </div>
      );
  }
}
