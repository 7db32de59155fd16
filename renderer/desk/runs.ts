// Counting the sheets of a run: every count is with the host before it is shown.
import type { FileEntry, FileHandle } from '../../shared/contract/handles.ts';
import type { Fault, Result } from '../../shared/fault/result.ts';
import { nameOfEvent, type RunEvent } from '../../shared/run/events.ts';
import type { RunLog } from '../../shared/run/logText.ts';
import { lastCount, type PrintRun } from '../../shared/run/run.ts';
import { host } from '../hostClient/host.ts';
import { isUnsaved } from '../state/deskState.ts';
import { app } from '../state/store.ts';
import { ask } from './ask.ts';
import { planRunNow } from './planRunNow.ts';
import { saveJob } from './saving.ts';

/** Asks the host for the runs of the job in this file. */
export async function loadRuns(file: FileHandle): Promise<void> {
  note(file, await host.run.read({ file }));
}

/** Tells the host what happened. What it refuses is returned, to be said where it was typed. */
export async function record(event: RunEvent): Promise<Fault | undefined> {
  const { file, say } = app.getState();
  if (file === undefined) return undefined;
  const recorded = await host.run.record({ file: file.file, event });
  if (!recorded.ok) {
    // What reached the disk all the same is shown.
    if (recorded.fault.code !== 'count-refused') await loadRuns(file.file);
    return recorded.fault;
  }
  app.getState().noteRuns(file.file, recorded.value);
  app.getState().putFaultAway();
  if (event.kind !== 'undone') say(nameOfEvent(event));
  return undefined;
}

/**
 * Begins a run, saving the job first as it is now; asks first where another one is not delivered. As long as one is
 * being begun a second press does nothing.
 */
export async function beginRun(undelivered: boolean): Promise<void> {
  if (app.getState().beginningRun) return;
  app.setState({ beginningRun: true });
  try {
    await begin(undelivered);
  } finally {
    app.setState({ beginningRun: false });
  }
}

async function begin(undelivered: boolean): Promise<void> {
  if (isUnsaved(app.getState()) && !(await saveJob())) return;
  if (undelivered && !(await mayBeginAnother())) return;
  const { history, report, showRunPart } = app.getState();
  if (history === undefined) return;
  const fault = await record({ kind: 'begun', plan: await planRunNow(history.present) });
  if (fault === undefined) showRunPart('count');
  else report(fault);
}

/** Writes the packing slip of a delivery beside the job; nothing where it could not be written, which is told. */
export async function savePackingSlip(delivery: number): Promise<FileEntry | undefined> {
  const { file, history, report } = app.getState();
  if (file === undefined || history === undefined) return undefined;
  const written = await host.run.packingSlip({ file: file.file, job: history.present, delivery });
  if (written.ok) return written.value;
  report(written.fault);
  return undefined;
}

/** The runs of all jobs that this machine knows of. */
export function allRuns(): Promise<readonly PrintRun[]> {
  return host.run.all();
}

/** Takes back what was counted last. */
export async function takeBackLast(run: PrintRun): Promise<void> {
  const last = lastCount(run);
  if (last !== undefined) await undoLastCount(last.id, nameOfEvent(last.event));
}

/** Takes one count back; what speaks against it is told. */
export async function undoLastCount(of: number, name: string): Promise<void> {
  const fault = await record({ kind: 'undone', of });
  if (fault === undefined) app.getState().say(`Taken back: ${name}`);
  else app.getState().report(fault);
}

function note(file: FileHandle, log: Result<RunLog>): void {
  if (log.ok) app.getState().noteRuns(file, log.value);
  else app.getState().report(log.fault);
}

async function mayBeginAnother(): Promise<boolean> {
  const answer = await ask({
    title: 'Begin another run?',
    says: 'The run before is not delivered. Its counts stay in the log, but you count in the new one from now on. Taking back the beginning leads back to it.',
    answers: [
      { is: 'stay', label: 'Go on with this run' },
      { is: 'begin', label: 'Begin another run' },
    ],
  });
  return answer === 'begin';
}
