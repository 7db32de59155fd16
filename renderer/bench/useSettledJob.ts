// The job as it was before the gesture that is going on: what is told in words is told again when the hand lets go.
import type { Job } from '../../shared/job/job.ts';
import { useApp } from '../state/store.ts';

/** Only for what is drawn while a job is open; throws where none is. */
export function useSettledJob(): Job {
  const job = useApp((s) => s.history?.present);
  if (job === undefined) throw new Error('No job is open, yet something that shows one is drawn');
  return job;
}
