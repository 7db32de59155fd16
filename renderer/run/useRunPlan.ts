// What a run of the open job sets out to do, with what it was planned to cost where it is planned for a printer.
import { useCallback } from 'react';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import { planRun, type RunPlan } from '../../shared/run/plan.ts';
import { plannedRun } from '../../shared/run/planned.ts';
import { isTaken } from '../plan/candidates/isTaken.ts';
import { coverageFrom } from '../plan/coverageOfFaces.ts';
import { useCoverage } from '../plan/useCoverage.ts';
import { useApp, useJob } from '../state/store.ts';

/** Works the plan out when it is called: that takes a moment. */
export function useRunPlan(): () => RunPlan {
  const job = useJob();
  const library = useApp((s) => s.library);
  const { faces } = useCoverage();
  return useCallback(() => {
    const { brief } = job;
    const { plan } = brief;
    if (plan === undefined) return planRun(job);
    const coverage = coverageFrom(faces);
    // Only what the job was planned for is laid out and priced.
    const chosen = {
      ...library,
      printers: library.printers.filter(({ name }) => name === plan.printer),
      papers: library.papers.filter(({ name }) => name === plan.paper),
    };
    const priced = costCandidates(layOutCandidates(brief, chosen), chosen, coverage);
    const taken = priced.find((candidate) => isTaken(candidate, brief));
    return planRun(job, taken === undefined ? undefined : plannedRun(taken, library, coverage));
  }, [job, library, faces]);
}
