// The job as a gesture shows it, no oftener than a person can read: for numbers that follow a drag.
import { useEffect, useState } from 'react';
import type { Job } from '../../shared/job/job.ts';
import { shownJob } from '../state/jobState.ts';
import { app } from '../state/store.ts';

/** Numbers that change faster than this cannot be read, and fields cost more to draw than the sheet. */
const READABLE_MS = 150;

/** `undefined` while no job is open. What is not a gesture is shown at once. */
export function useReadableJob(): Job | undefined {
  const [job, setJob] = useState(() => shownJob(app.getState()));
  useEffect(() => {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const show = () => {
      waiting = undefined;
      setJob(shownJob(app.getState()));
    };
    show();
    const stop = app.subscribe((state) => {
      if (state.previewed === undefined) {
        clearTimeout(waiting);
        show();
      } else waiting ??= setTimeout(show, READABLE_MS);
    });
    return () => {
      stop();
      clearTimeout(waiting);
    };
  }, []);
  return job;
}
