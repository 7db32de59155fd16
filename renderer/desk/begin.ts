// How the window begins: it asks the host what there is, and hears from then on what the host tells.
import { actionBook } from '../actions/actionBook.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { keepJobs, tellShell } from './keeping.ts';
import { closeJob, openJob } from './opening.ts';

/** Begins; afterwards the store says what the host has told. */
export async function beginWindow(): Promise<void> {
  hear();
  const [begun, library] = await Promise.all([host.app.begin(), host.library.read()]);
  const { version, runsOn, shell, machine, settings, recents, kept, asked } = begun;
  app.setState({ begun: { version, runsOn, shell, machine }, settings, recents, kept, library });
  keepJobs();
  tellShell();
  const [first] = asked;
  if (kept.length > 0) app.getState().openDialog({ is: 'left-behind' });
  else if (first !== undefined) await openJob(first);
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
