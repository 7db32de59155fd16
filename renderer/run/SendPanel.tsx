// Where the sheets go, what will be written there, and the sending itself.
import { useEffect, useState } from 'react';
import type { SendPlan, SendState } from '../../shared/contract/sending.ts';
import type { Result } from '../../shared/fault/result.ts';
import { Button } from '../controls/Button.tsx';
import { FaultNote, Note } from '../controls/Note.tsx';
import { cancelSending, planSending, proveJob, sendJob } from '../desk/sendings.ts';
import { chooseRipFolder } from '../desk/settings.ts';
import { useApp, useJob } from '../state/store.ts';

export function SendPanel() {
  const job = useJob();
  const folder = useApp((s) => s.settings.ripFolder);
  const state = useApp((s) => s.sending?.state);
  const [plan, setPlan] = useState<Result<SendPlan> | undefined>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what lies in the folder changes with the sending.
  useEffect(() => {
    let wanted = true;
    void planSending(job).then((planned) => {
      if (wanted) setPlan(planned);
    });
    return () => {
      wanted = false;
    };
  }, [job, folder, state?.at]);
  const files = plan?.ok ? plan.value.files : [];
  const replace = files.some((file) => file.exists);
  const all = replace && files.every((file) => file.exists);
  const busy = state?.at === 'under-way';
  const held = state?.at === 'done' && state.sent.held;
  return (
    <section className="run-panel" aria-label="Sending">
      <h3>Send to the RIP</h3>
      <p>
        {folder === undefined ? 'No folder of the RIP is chosen yet.' : `Folder of the RIP: ${folder.place}`}{' '}
        <Button kind="quiet" off={busy} onPress={() => void chooseRipFolder()}>
          {folder === undefined ? 'Choose the folder…' : 'Choose another…'}
        </Button>
      </p>
      {plan !== undefined && !plan.ok && <FaultNote fault={plan.fault} />}
      {plan?.ok && (
        <ul className="run-files" aria-label="Files to be written">
          {plan.value.files.map((file) => (
            <li key={file.name}>
              <code>{file.name}</code>{' '}
              <span className="soft">
                {sidesOf(plan.value, file.name)}
                {file.exists ? ', is there already and would be replaced' : ''}
              </span>
            </li>
          ))}
        </ul>
      )}
      <div className="run-does">
        <Button
          kind="main"
          off={busy || (plan !== undefined && !plan.ok)}
          onPress={() => void sendJob(job, { replace, despiteFindings: false })}
        >
          {replace ? 'Replace and send' : 'Send both sides'}
        </Button>
        {held && (
          <Button off={busy} onPress={() => void sendJob(job, { replace, despiteFindings: true })}>
            Send despite the faults
          </Button>
        )}
        {all && (
          <Button off={busy} onPress={() => void proveJob(job)}>
            Prove what lies there
          </Button>
        )}
        {busy && <Button onPress={() => void cancelSending()}>Cancel</Button>}
      </div>
      <div aria-live="polite">{state !== undefined && <Progress state={state} />}</div>
    </section>
  );
}

function sidesOf(plan: SendPlan, name: string): string {
  const sides = plan.sides.filter((side) => side.name === name).map((side) => side.side);
  return sides.length > 1 ? 'side 1 and side 2' : `side ${sides[0]}`;
}

function Progress({ state }: { readonly state: SendState }) {
  switch (state.at) {
    case 'under-way':
      return (
        <div className="run-progress">
          <progress value={state.part} max={1} aria-label="How far it is" />
          <span>{state.says}</span>
        </div>
      );
    case 'failed':
      return <FaultNote fault={state.fault} />;
    case 'cancelled':
      return <Note tone="know">It was cancelled. Nothing was left in the folder.</Note>;
    case 'done':
      return state.sent.held ? (
        <Note tone="bad">
          The proof found faults, so the sheets were held back and nothing was left in the folder. Mend what
          is named below and send again.
        </Note>
      ) : (
        <Note tone="good">It lies in {state.sent.folder.place}.</Note>
      );
  }
}
