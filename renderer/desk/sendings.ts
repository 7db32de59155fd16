// Sending a job to the RIP's folder and proving what lies there; the store follows what the host tells of it.
import type { SendPlan } from '../../shared/contract/sending.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { chooseRipFolder, rememberedRipFolder } from './settings.ts';

/** What would be written into the RIP's folder; nothing as long as no folder is chosen. */
export async function planSending(job: Job): Promise<Result<SendPlan> | undefined> {
  const folder = app.getState().settings.ripFolder?.folder;
  return folder === undefined ? undefined : host.send.plan({ job, folder });
}

/** Sends the job, asking for the folder first where none is chosen. */
export async function sendOpenJob(
  job: Job,
  how: { replace: boolean; despiteFindings: boolean },
): Promise<void> {
  if ((await rememberedRipFolder()) === undefined && !(await chooseRipFolder())) return;
  const folder = app.getState().settings.ripFolder?.folder;
  if (folder === undefined) return;
  const started = await host.send.start({ job, folder, ...how });
  if (!started.ok) return app.getState().report(started.fault);
  await follow(started.value.send, 'send', job);
}

/** Proves what lies in the RIP's folder already. */
export async function proveOpenJob(job: Job): Promise<void> {
  const folder = app.getState().settings.ripFolder?.folder;
  if (folder === undefined) return;
  const started = await host.send.prove({ job, folder });
  if (!started.ok) return app.getState().report(started.fault);
  await follow(started.value.send, 'prove', job);
}

/** Takes note of a sending; what the host told before the window knew of it is asked for. */
async function follow(send: Parameters<typeof host.send.state>[0]['send'], what: 'send' | 'prove', job: Job) {
  app.getState().beginSending({ send, what, job });
  const state = await host.send.state({ send });
  if (state.ok) app.getState().noteSending(send, state.value);
}

export async function cancelSending(): Promise<void> {
  const { sending, report } = app.getState();
  if (sending === undefined) return;
  const cancelled = await host.send.cancel({ send: sending.send });
  if (!cancelled.ok) report(cancelled.fault);
}
