// What is wrong with the sheet as it is shown, told while it is dragged, but no oftener than a person can read.
import { useEffect } from 'react';
import { useStore } from 'zustand';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { designsOf, type Job, sheetOf } from '../../shared/job/job.ts';
import { checkArrangement, type LayoutFinding } from '../../shared/layout/check.ts';
import { shownJob } from '../state/jobState.ts';
import { type AppState, app } from '../state/store.ts';

export function findingsOf(job: Job): readonly LayoutFinding[] {
  const sheet = { ...sheetOf(job.brief), work: job.brief.work };
  return checkArrangement(job.arrangement, designsOf(job.brief), sheet, job.brief.units);
}

/** At most so often while a gesture lasts, in ms. */
const REFRESH_MS = 80;

/** Follows the job of a store until the returned function is called; `found` holds what is wrong with it. */
export function followFindings(
  store: StoreApi<AppState>,
  found: StoreApi<readonly LayoutFinding[]>,
): () => void {
  let checked: Job | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const check = () => {
    waiting = undefined;
    const job = shownJob(store.getState());
    if (job === checked) return;
    checked = job;
    found.setState(job === undefined ? [] : findingsOf(job), true);
  };
  const follow = (state: AppState) => {
    if (shownJob(state) === checked) return;
    if (state.previewed === undefined) {
      clearTimeout(waiting);
      check();
    } else {
      waiting ??= setTimeout(check, REFRESH_MS);
    }
  };
  check();
  const stop = store.subscribe(follow);
  return () => {
    stop();
    clearTimeout(waiting);
  };
}

export const benchFindings = createStore<readonly LayoutFinding[]>(() => []);

/** Follows the job of the window while the component is on the screen. */
export function useFollowedFindings(): void {
  useEffect(() => followFindings(app, benchFindings), []);
}

/** What is taken of the findings; the component is drawn again when that changes. */
export function useFindings<T>(take: (findings: readonly LayoutFinding[]) => T): T {
  return useStore(benchFindings, take);
}
