// At the printer: what the hands do, in order, how the sheet is turned, and the cautions that go with it.
import { turnOf } from '../../shared/geometry/work.ts';
import { CAUTIONS } from '../../shared/job/cautions.ts';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import { runSteps } from '../../shared/runSheet/steps.ts';
import { Note } from '../controls/Note.tsx';
import { useJob } from '../state/store.ts';
import { TurnDrawing } from './TurnDrawing.tsx';

export function RunSteps({ sides }: { readonly sides: readonly SidePage[] }) {
  const job = useJob();
  const turn = turnOf(job.brief.work);
  return (
    <section className="read-panel run-panel" aria-label="Running the sheets">
      <h3>At the printer</h3>
      <div className="run-steps">
        <div className="run-words">
          {runSteps(job, sides).map(({ name, steps, cautions }) => (
            <section key={name} aria-label={name}>
              <h4>{name}</h4>
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
            </section>
          ))}
        </div>
        {turn !== undefined && <TurnDrawing job={job} turn={turn} />}
      </div>
    </section>
  );
}
