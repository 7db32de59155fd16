// How the window begins: it asks the host what there is, and hears from then on what the host tells.
import type { Beginning } from '../../shared/contract/app.ts';
import { actionBook } from '../actions/actionBook.ts';
import { host } from '../hostClient/host.ts';
import type { DialogShown } from '../state/dialogs.ts';
import { app } from '../state/store.ts';
import { keepJobs, tellShell } from './keeping.ts';
import { closeJob, openJob } from './opening.ts';

/** Begins; afterwards the store says what the host has told. */
export async function beginWindow(): Promise<void> {
  hear();
  const [begun, library] = await Promise.all([host.app.begin(), host.library.read()]);
  const { version, runsOn, shell, machine, settings, troubles, recents, kept, asked } = begun;
  app.setState({ begun: { version, runsOn, shell, machine }, settings, troubles, recents, kept, library });
  keepJobs();
  tellShell();
  const goOn = () => takeUpWork(kept, asked);
  if (troubles.length === 0) return goOn();
  app.getState().openDialog({ is: 'file-troubles' });
  // Two dialogs that open at once would each shut the other out; the window itself need not wait.
  void untilAnswered('file-troubles').then(goOn);
}

/** What was left behind is asked for first, else the job that the person asked to open is opened. */
async function takeUpWork(kept: Beginning['kept'], asked: Beginning['asked']): Promise<void> {
  const [first] = asked;
  if (kept.length > 0) app.getState().openDialog({ is: 'left-behind' });
  else if (first !== undefined) await openJob(first);
}

/** Waits until no dialog of this kind is open. */
function untilAnswered(is: DialogShown['is']): Promise<void> {
  return new Promise((resolve) => {
    const stop = app.subscribe(({ dialogs }) => {
      if (dialogs.some((dialog) => dialog.is === is)) return;
      stop();
      resolve();
    });
  });
}

function hear(): void {
  host.on('action', ({ action }) => actionBook.run(action));
  host.on('open-job', ({ file }) => void openJob(file));
  host.on('art', (state) => app.getState().noteArt([state]));
  host.on('send', ({ send, state }) => app.getState().noteSending(send, state));
  host.on('run', ({ file, log }) => {
    if (app.getState().file?.file === file) app.getState().noteRuns(file, log);
  });
  host.on('closing', async () => {
    if (await closeJob()) await host.app.close();
  });
  host.on('host-gone', () => {
    const { dialogs, openDialog } = app.getState();
    if (dialogs.every((b) => b.is !== 'host-gone')) openDialog({ is: 'host-gone' });
  });
}
