// At the printer: the step that is on, what is counted in it, and whether the quantity can still be met.
import { useEffect, useState } from 'react';
import type { SidePage } from '../../../shared/job/nameJobFiles.ts';
import type { RunLog } from '../../../shared/run/logText.ts';
import { nextStep, type RunStep } from '../../../shared/run/nextStep.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { Note } from '../../controls/Note.tsx';
import { runOf } from '../useRun.ts';
import { BeginPanel } from './BeginPanel.tsx';
import { CountLog } from './CountLog.tsx';
import { JobChanged } from './JobChanged.tsx';
import { ProspectLine } from './ProspectLine.tsx';
import { StepBar } from './StepBar.tsx';
import { StepShown } from './StepShown.tsx';
import { Tally } from './Tally.tsx';
import './counting.css';

export function CountPart({
  log,
  sides,
}: {
  readonly log: RunLog | undefined;
  readonly sides: readonly SidePage[];
}) {
  const run = runOf(log);
  return (
    <>
      {log?.notices.map((notice) => (
        <section key={notice} className="read-panel run-panel" aria-label="What the log says">
          <Note tone="ask">{notice}</Note>
        </section>
      ))}
      {run === undefined ? <BeginPanel /> : <Counting run={run} sides={sides} />}
    </>
  );
}

function Counting({ run, sides }: { readonly run: PrintRun; readonly sides: readonly SidePage[] }) {
  const next = nextStep(run);
  const [chosen, choose] = useState<RunStep | undefined>(undefined);
  // What comes next is shown as soon as it changes, whatever was looked at meanwhile.
  // biome-ignore lint/correctness/useExhaustiveDependencies: that it changes is all that matters.
  useEffect(() => choose(undefined), [next]);
  const step = chosen ?? (next === 'done' ? 'deliver' : next);
  return (
    <>
      <section className="read-panel run-panel count-panel" aria-label="How the run stands">
        <ProspectLine run={run} />
        <Tally run={run} />
        <JobChanged run={run} />
      </section>
      <div className="count-desk">
        <section className="read-panel count-panel" aria-label="Counting">
          <StepBar run={run} step={step} onChoose={choose} />
          <StepShown key={step} run={run} step={step} sides={sides} onGoTo={choose} />
        </section>
        <CountLog run={run} />
      </div>
    </>
  );
}
