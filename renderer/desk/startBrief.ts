// Beginning to write a brief: a new one, the one of the open job, or one from art that was taken in.
import type { Art } from '../../shared/contract/art.ts';
import { artOf } from '../../shared/contract/handles.ts';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { briefDraftOf, emptyDraft } from '../draft/briefDraft.ts';
import { host } from '../hostClient/host.ts';
import type { Drafting } from '../state/draftState.ts';
import { app } from '../state/store.ts';
import { propose } from './propose.ts';
import { mayPutAway } from './saving.ts';

/** Begins an empty brief, once the job that is open may be put away. */
export async function startNewBrief(): Promise<void> {
  if (await mayPutAway()) write(emptyDrafting());
}

/** Begins to change the brief of the job that is open. */
export async function startChangedBrief(): Promise<void> {
  const job = app.getState().history?.present;
  if (job !== undefined) write(await draftingOf(job));
}

/** Makes pieces of art: for the brief that is being written, else for the job that is open, else for a new job. */
export async function startBriefFromArt(art: readonly Art[]): Promise<void> {
  const { screen, drafting, history } = app.getState();
  const isWriting = screen === 'brief' && drafting !== undefined;
  const isOnJob = screen === 'job' && history !== undefined;
  const before = isWriting ? drafting : isOnJob ? await draftingOf(history.present) : emptyDrafting();
  const fresh = art.filter((a) => before.art.every((known) => known.art !== a.art));
  write(
    propose({
      ...before,
      art: [...before.art, ...fresh],
      proposedFrom: [...before.proposedFrom, ...fresh],
    }),
  );
}

/** Puts the draft away and shows what was there before. */
export function leaveBrief(): void {
  const { putDraftAway, showScreen, history } = app.getState();
  putDraftAway();
  showScreen(history === undefined ? 'start' : 'job');
}

function write(drafting: Drafting): void {
  app.getState().draftThis(drafting);
  app.getState().showScreen('brief');
}

function emptyDrafting(): Drafting {
  return {
    changes: false,
    draft: emptyDraft(app.getState().settings),
    art: [],
    proposedFrom: [],
    answers: {},
  };
}

/** Art that cannot be read just now is told, and cannot be chosen. */
async function draftingOf(job: Job): Promise<Drafting> {
  const handles = [...new Set(facesOf(job.brief).map(({ face }) => artOf(face)))];
  const looked = await Promise.all(handles.map((art) => host.art.look({ art })));
  for (const look of looked) if (!look.ok) app.getState().report(look.fault);
  return {
    changes: true,
    draft: briefDraftOf(job.brief),
    art: looked.flatMap((look) => (look.ok ? [look.value] : [])),
    proposedFrom: [],
    answers: {},
  };
}
