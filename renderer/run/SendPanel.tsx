// Where the sheets go, what will be written there, and the sending itself.
import type { SendPlan } from '../../shared/contract/sending.ts';
import { progressInWords } from '../../shared/contract/sendProgress.ts';
import type { Result } from '../../shared/fault/result.ts';
import { printsInWords } from '../../shared/runSheet/steps.ts';
import { Button } from '../controls/Button.tsx';
import { FaultNote, Note } from '../controls/Note.tsx';
import { cancelSending, proveOpenJob, sendOpenJob } from '../desk/sendings.ts';
import { chooseRipFolder } from '../desk/settings.ts';
import type { Sending } from '../state/sendingState.ts';
import { useApp, useJob } from '../state/store.ts';
import { outcomeOf, wasHeld } from './outcome.ts';
import { shareDone } from './shareDone.ts';

/** `plan`: what sending the job would write; none as long as no folder is chosen. */
export function SendPanel({ plan }: { readonly plan: Result<SendPlan> | undefined }) {
  const job = useJob();
  const folder = useApp((s) => s.settings.ripFolder);
  const sending = useApp((s) => s.sending);
  const files = plan?.ok ? plan.value.files : [];
  const replace = files.some((file) => file.exists);
  const all = replace && files.every((file) => file.exists);
  const busy = sending?.state.at === 'under-way';
  const ofThis = sending?.job === job;
  const send = (despiteFindings: boolean) => void sendOpenJob(job, { replace, despiteFindings });
  return (
    <section className="read-panel run-panel" aria-label="Sending">
      <h3>Send to the RIP</h3>
      <div className="run-folder">
        <p>
          {folder === undefined ? 'The folder that the RIP looks into is not chosen yet.' : 'Into '}
          {folder !== undefined && <strong>{folder.place}</strong>}
        </p>
        <Button disabled={busy} onPress={() => void chooseRipFolder()}>
          {folder === undefined ? 'Choose the folder…' : 'Choose another…'}
        </Button>
      </div>
      {plan !== undefined && !plan.ok && <FaultNote fault={plan.fault} />}
      {plan?.ok && (
        <ul className="run-files" aria-label="Files to be written">
          {files.map((file) => (
            <li key={file.name}>
              <code>{file.name}</code>
              <span className="soft">{printsInWords(plan.value.sides, file.name)}</span>
              {file.exists && (
                <Note tone="ask">A file of this name is there already. Sending replaces it.</Note>
              )}
            </li>
          ))}
        </ul>
      )}
      <div className="run-does">
        <Button kind="main" disabled={busy || plan?.ok === false} onPress={() => send(false)}>
          {replace ? 'Replace and send' : 'Send the sheets'}
        </Button>
        {all && (
          <Button disabled={busy} onPress={() => void proveOpenJob(job)}>
            Prove the files in the folder
          </Button>
        )}
        {ofThis && wasHeld(sending.state) && (
          <Button disabled={busy} onPress={() => send(true)}>
            Send despite the faults
          </Button>
        )}
        {busy && <Button onPress={() => void cancelSending()}>Cancel</Button>}
      </div>
      <div aria-live="polite">{sending !== undefined && <HowItStands sending={sending} />}</div>
      {sending?.state.at === 'done' && !ofThis && (
        <Note tone="ask">The job has changed since. What is said here is about the sheets as they were.</Note>
      )}
    </section>
  );
}

function HowItStands({ sending }: { readonly sending: Sending }) {
  const { state } = sending;
  if (state.at === 'under-way') {
    return (
      <div className="run-progress">
        <progress value={shareDone(sending.what, state.progress)} max={1} aria-label="How far it is" />
        <span>{progressInWords(state.progress)}</span>
      </div>
    );
  }
  if (state.at === 'failed') return <FaultNote fault={state.fault} />;
  const said = outcomeOf(sending);
  return said === undefined ? null : <Note tone={said.tone}>{said.says}</Note>;
}
