// The step that is on: what is done in it, and what is counted.
import type { RunStep } from '../../../shared/run/nextStep.ts';
import { Button } from '../../controls/Button.tsx';
import { useApp } from '../../state/store.ts';
import { LoadStep } from './LoadStep.tsx';
import { PassStep } from './PassStep.tsx';
import { ProofStep } from './ProofStep.tsx';
import type { StepProps } from './stepProps.ts';
import { TrimStep } from './TrimStep.tsx';
import { TurnStep } from './TurnStep.tsx';

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
