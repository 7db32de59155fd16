// What a run of the open job sets out to do, with what it was planned to cost where it is planned for a printer.
import type { Job } from '../../shared/job/job.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { coverageFrom } from '../../shared/plan/coverageOfFaces.ts';
import { isTaken } from '../../shared/plan/isTaken.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import { planRun, type RunPlan } from '../../shared/run/plan.ts';
import { plannedRun } from '../../shared/run/planned.ts';
import { app } from '../state/store.ts';
import { measureCoverage } from './coverage.ts';

/** Works the plan out from the library as it is now and the ink of the art, which takes a moment. */
export async function planRunNow(job: Job): Promise<RunPlan> {
  const { brief } = job;
  const { plan } = brief;
  if (plan === undefined) return planRun(job);
  const coverage = coverageFrom((await measureCoverage(job)).faces);
  const { library } = app.getState();
  // Only what the job was planned for is laid out and priced.
  const chosen = {
    ...library,
    printers: library.printers.filter(({ name }) => name === plan.printer),
    papers: library.papers.filter(({ name }) => name === plan.paper),
  };
  const priced = costCandidates(layOutCandidates(brief, chosen), chosen, coverage);
  const taken = priced.find((candidate) => isTaken(candidate, brief));
  return planRun(job, taken === undefined ? undefined : plannedRun(taken, library, coverage));
}
