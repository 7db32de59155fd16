// The Run stage: both sides into the RIP's folder, the sheets counted through the printer, the pieces delivered.

import { useEffect } from 'react';
import { nameOfEvent } from '../../shared/run/events.ts';
import { nextStep } from '../../shared/run/nextStep.ts';
import { lastCount, type PrintRun } from '../../shared/run/run.ts';
import { useActions } from '../actions/useActions.ts';
import { RadioButtons } from '../controls/Choice.tsx';
import { beginRun, takeBackLast } from '../desk/runs.ts';
import type { RunPart } from '../state/runState.ts';
import { useApp } from '../state/store.ts';
import { CountPart } from './counting/CountPart.tsx';
import { DeliverPart } from './delivery/DeliverPart.tsx';
import { PapersPanel } from './PapersPanel.tsx';
import '../look/readStage.css';
import './run.css';
import { SendPart } from './SendPart.tsx';
import { runOf, useRunLog } from './useRun.ts';
import { useSendPlan } from './useSendPlan.ts';

const PARTS: readonly { readonly value: RunPart; readonly label: string }[] = [
  { value: 'send', label: 'Send and prove' },
  { value: 'count', label: 'Print and count' },
  { value: 'deliver', label: 'Deliver' },
];

export function RunStage() {
  const plan = useSendPlan();
  const log = useRunLog();
  const run = runOf(log);
  const usual = partFor(run);
  const part = useApp((s) => s.runPart) ?? usual;
  const showRunPart = useApp((s) => s.showRunPart);
  // Once all is counted the delivery is shown, whatever was looked at before.
  // biome-ignore lint/correctness/useExhaustiveDependencies: that it changes is all that matters.
  useEffect(() => showRunPart(undefined), [usual]);
  const last = run === undefined ? undefined : lastCount(run);
  useActions({
    'begin-run': { run: () => void beginRun(run !== undefined && nextStep(run) !== 'done') },
    'take-back-count': {
      run: () => run !== undefined && void takeBackLast(run),
      can: last !== undefined,
      label: last && `Take back “${nameOfEvent(last.event)}”`,
    },
  });
  const sides = plan?.ok ? plan.value.sides : [];
  return (
    <section className="read-stage" aria-label="Run">
      <div className="run-head">
        <h2>Run</h2>
        <RadioButtons label="Part of the run" value={part} options={PARTS} onChange={showRunPart} />
      </div>
      {part === 'send' && <SendPart plan={plan} sides={sides} />}
      {part === 'count' && <CountPart log={log} sides={sides} />}
      {part === 'deliver' && <DeliverPart log={log} />}
      {part !== 'deliver' && <PapersPanel />}
    </section>
  );
}

/** A run that goes on is counted, one that is over delivered; before the first the sheets are sent. */
function partFor(run: PrintRun | undefined): RunPart {
  if (run === undefined) return 'send';
  const next = nextStep(run);
  return next === 'deliver' || next === 'done' ? 'deliver' : 'count';
}
