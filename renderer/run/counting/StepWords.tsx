// What the hands do in a step, and the cautions that go with it.
import { CAUTIONS, type Handling } from '../../../shared/job/cautions.ts';
import { Note } from '../../controls/Note.tsx';

export function StepWords({
  steps,
  cautions,
}: {
  readonly steps: readonly string[];
  readonly cautions: readonly Handling[];
}) {
  return (
    <div className="step-words">
      <ol>
        {steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {cautions.map((caution) => (
        <Note key={caution} tone="ask">
          {CAUTIONS[caution]}
        </Note>
      ))}
    </div>
  );
}
