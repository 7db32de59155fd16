// Opening jobs, going back to the saved one, putting them away.
import type { FileEntry, KeptHandle } from '../../shared/contract/handles.ts';
import type { OpenJob } from '../../shared/contract/openJob.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { ask } from './ask.ts';
import { chooseFiles } from './choose.ts';
import { mayPutAway } from './saving.ts';

/** Opens the job in this file, or in one that is asked for. */
export async function openJob(file?: FileEntry): Promise<void> {
  if (!(await mayPutAway())) return;
  const [chosen] = file === undefined ? await chooseFiles('job', false) : [file];
  if (chosen !== undefined) await show(await host.job.open({ file: chosen.file }));
}

/** Lays out a job from a brief in a file that is asked for. */
export async function openBrief(): Promise<void> {
  if (!(await mayPutAway())) return;
  const [chosen] = await chooseFiles('brief', false);
  if (chosen !== undefined) await show(await host.job.layFile({ file: chosen.file }));
}

/** Lays a brief out as a job of its own, once the one that is open can be put away. */
export async function layAnew(brief: Brief): Promise<void> {
  if (await mayPutAway()) await show(await host.job.lay({ brief }), 'bench');
}

/** Takes up a job that was left behind. */
export async function takeUp(kept: KeptHandle): Promise<void> {
  await show(await host.job.takeUp({ kept }));
  dropFromKept(kept);
}

/** Throws away a job that was left behind. */
export async function discardUnsaved(kept: KeptHandle): Promise<void> {
  const gone = await host.job.letGo({ kept });
  if (gone.ok) dropFromKept(kept);
  else app.getState().report(gone.fault);
}

/** Goes back to the job as it was saved, once the person agrees. */
export async function revertJob(): Promise<void> {
  const { file } = app.getState();
  if (file === undefined) return;
  const answer = await ask({
    title: 'Go back to the saved job?',
    says: `Everything changed since ${file.name} was saved is given up. This cannot be undone.`,
    answers: [
      { is: 'stay', label: 'Keep the changes' },
      { is: 'revert', label: 'Go back to the saved job' },
    ],
    urgent: true,
  });
  if (answer === 'revert') await show(await host.job.open({ file: file.file }), app.getState().stage);
}

/** Puts the job away and shows the start. Says whether it could be put away. */
export async function closeJob(): Promise<boolean> {
  if (!(await mayPutAway())) return false;
  await host.job.close();
  const { endJob, showScreen } = app.getState();
  endJob();
  putSendingAway();
  showScreen('start');
  app.setState({ file: undefined, saved: undefined, runPart: undefined, recents: await host.recents.list() });
  return true;
}

/** Lays an opened job on the table, or says why it cannot be opened. Says whether it could. */
export async function show(opened: Result<OpenJob>, stage = app.getState().stage): Promise<boolean> {
  const { report, lay, goTo } = app.getState();
  if (!opened.ok) {
    report(opened.fault);
    return false;
  }
  lay(opened.value);
  putSendingAway();
  app.setState({ runPart: undefined });
  goTo(stage);
  app.setState({ recents: await host.recents.list() });
  return true;
}

/** What was sent of another job is no longer shown; what is still being sent is seen to its end. */
function putSendingAway(): void {
  const { sending, endSending } = app.getState();
  if (sending?.state.at !== 'under-way') endSending();
}

function dropFromKept(kept: KeptHandle): void {
  app.setState({ kept: app.getState().kept.filter((k) => k.kept !== kept) });
}
