// Keeping the job for after a crash, and telling the shell what the window shows: both follow every change by themselves.
import type { Job } from '../../shared/job/job.ts';
import { actionBook } from '../actions/actionBook.ts';
import { host } from '../hostClient/host.ts';
import { isUnsaved } from '../state/deskState.ts';
import { app } from '../state/store.ts';

/** Keeps every changed job with the host: at once, and while one is being kept the newest waits for its turn. */
export function keepJobs(): void {
  let isKeeping = false;
  const keepNewest = async () => {
    if (isKeeping) return;
    isKeeping = true;
    try {
      for (let kept: Job | undefined; ; ) {
        const job = unsavedJob();
        if (job === undefined || job === kept) return;
        await keep(job);
        kept = job;
      }
    } finally {
      isKeeping = false;
    }
  };
  app.subscribe((now, before) => {
    if (now.history?.present !== before.history?.present) void keepNewest();
  });
}

function unsavedJob(): Job | undefined {
  const state = app.getState();
  return isUnsaved(state) ? state.history?.present : undefined;
}

async function keep(job: Job): Promise<void> {
  const { file, report, openDialog } = app.getState();
  try {
    const kept = await host.job.keep({ job, ...(file === undefined ? {} : { file: file.file }) });
    if (!kept.ok) report(kept.fault);
  } catch {
    // A host that does not answer has ended; what it has kept before is offered by the next.
    if (app.getState().dialogs.every((b) => b.is !== 'host-gone')) openDialog({ is: 'host-gone' });
  }
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
