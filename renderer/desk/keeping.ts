// Keeping the job for after a crash, and telling the shell what the window shows: both follow every change by themselves.
import { actionBook } from '../actions/actionBook.ts';
import { host } from '../hostClient/host.ts';
import { isUnsaved } from '../state/deskState.ts';
import { app } from '../state/store.ts';

/** So long after a change the job is kept, in ms: not at every step of a fast row of edits. */
const KEPT_AFTER = 250;

/** Keeps every changed job with the host. */
export function keepJobs(): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  app.subscribe((now, before) => {
    const job = now.history?.present;
    if (job === before.history?.present) return;
    clearTimeout(waiting);
    if (job === undefined || !isUnsaved(now)) return;
    waiting = setTimeout(keep, KEPT_AFTER);
  });
}

async function keep(): Promise<void> {
  const { history, file, report } = app.getState();
  if (history === undefined || !isUnsaved(app.getState())) return;
  const kept = await host.job.keep({
    job: history.present,
    ...(file === undefined ? {} : { file: file.file }),
  });
  if (!kept.ok) report(kept.fault);
}

/** Tells the shell the title and which actions can be done, whenever that changes. */
export function tellShell(): void {
  let told = '';
  const tell = () => {
    const title = app.getState().history?.present.brief.title ?? '';
    const shown = { title, unsaved: isUnsaved(app.getState()), ...actionBook.shown() };
    const now = JSON.stringify(shown);
    if (now === told) return;
    told = now;
    document.title = title === '' ? 'Turnlay' : `${shown.unsaved ? '• ' : ''}${title} · Turnlay`;
    void host.app.show(shown);
  };
  app.subscribe(tell);
  actionBook.subscribe(tell);
}
