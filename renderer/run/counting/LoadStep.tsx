// Laying blank sheets in, at the beginning or later.
import { prospectOf } from '../../../shared/run/prospect.ts';
import { runSteps } from '../../../shared/runSheet/steps.ts';
import { record } from '../../desk/runs.ts';
import { useJob } from '../../state/store.ts';
import { CountForm } from './CountForm.tsx';
import { StepWords } from './StepWords.tsx';
import type { StepProps } from './stepProps.ts';

export function LoadStep({ run, sides, onGoTo }: StepProps) {
  const job = useJob();
  const first = run.sheets.loaded === 0;
  const { toLoadWithOvers } = prospectOf(run);
  const { steps, cautions } = runSteps(job, sides)[0];
  return (
    <>
      <CountForm
        label={first ? 'Sheets loaded' : 'More sheets loaded'}
        does="Loaded"
        starts={first ? run.plan.sheets : toLoadWithOvers}
        main
        onCount={async (sheets) => {
          const refused = await record({ kind: 'loaded', sheets });
          if (refused === undefined) onGoTo(undefined);
          return refused;
        }}
      />
      <StepWords steps={steps} cautions={cautions} />
    </>
  );
}
