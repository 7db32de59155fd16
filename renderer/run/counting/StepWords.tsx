// What the hands do in a step, and the caution that goes with it.
import { CAUTIONS, type Handling } from '../../../shared/job/cautions.ts';
import { Note } from '../../controls/Note.tsx';

export function StepWords({
  steps,
  caution,
}: {
  readonly steps: readonly string[];
  readonly caution: Handling;
}) {
  return (
    <div className="step-words">
      <ol>
        {steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <Note tone="ask">{CAUTIONS[caution]}</Note>
    </div>
  );
}
