// The one store of the window: the job with its history, how it is looked at, and what lies around it.
import { useStore } from 'zustand';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Job } from '../../shared/job/job.ts';
import { type DeskState, deskState } from './deskState.ts';
import { type DraftState, draftState } from './draftState.ts';
import { type JobState, jobState, shownJob } from './jobState.ts';
import { type LibraryState, libraryState } from './libraryState.ts';
import { type RunState, runState } from './runState.ts';
import { type SendingState, sendingState } from './sendingState.ts';
import { type ViewState, viewState } from './viewState.ts';

export type AppState = JobState & ViewState & DeskState & DraftState & SendingState & RunState & LibraryState;

/** A store of its own, for a window or a test. */
export function createAppStore(): StoreApi<AppState> {
  return createStore<AppState>()((...api) => ({
    ...jobState(...api),
    ...viewState(...api),
    ...deskState(...api),
    ...draftState(...api),
    ...sendingState(...api),
    ...runState(...api),
    ...libraryState(...api),
  }));
}

/** The store of this window. */
export const app: StoreApi<AppState> = createAppStore();

/** What a component takes from the store; it is drawn again when that changes. */
export function useApp<T>(take: (state: AppState) => T): T {
  return useStore(app, take);
}

/** The job as it is shown. Only for what is drawn while a job is open; throws where none is. */
export function useJob(): Job {
  const job = useApp(shownJob);
  if (job === undefined) throw new Error('No job is open, yet something that shows one is drawn');
  return job;
}
