// The steps of the run in their order; the one that is on is marked, and any other can be gone to.
import { ToggleButton, Toolbar } from 'react-aria-components';
import { nextStep, type RunStep, stepsOfRun } from '../../../shared/run/nextStep.ts';
import type { PrintRun } from '../../../shared/run/run.ts';

const STEP_NAMES: Readonly<Record<RunStep, string>> = {
  load: 'Load',
  proof: 'Proof sheet',
  'pass-1': 'Pass 1',
  turn: 'Dry and turn',
  'pass-2': 'Pass 2',
  trim: 'Trim',
  deliver: 'Deliver',
};

export function StepBar({
  run,
  step,
  onChoose,
}: {
  readonly run: PrintRun;
  readonly step: RunStep;
  readonly onChoose: (step: RunStep) => void;
}) {
  const next = nextStep(run);
  return (
    <Toolbar className="step-bar" aria-label="Steps of the run">
      {stepsOfRun(run).map((name) => (
        <ToggleButton
          key={name}
          className={`step-button${name === next ? ' next' : ''}`}
          isSelected={name === step}
          onChange={() => onChoose(name)}
        >
          {STEP_NAMES[name]}
          {name === next && <span className="step-next">next</span>}
        </ToggleButton>
      ))}
    </Toolbar>
  );
}
