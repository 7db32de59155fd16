// Before printing: the sheets go to the RIP's folder and are proved, and what the hands will do is told.
import type { SendPlan } from '../../shared/contract/sending.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import { ProofShown } from './ProofShown.tsx';
import { RunSteps } from './RunSteps.tsx';
import { SendPanel } from './SendPanel.tsx';

export function SendPart({
  plan,
  sides,
}: {
  readonly plan: Result<SendPlan> | undefined;
  readonly sides: readonly SidePage[];
}) {
  return (
    <>
      <SendPanel plan={plan} />
      <ProofShown />
      <RunSteps sides={sides} />
    </>
  );
}
