// Says when the job is no longer what the run was begun with, and lets another run be begun.

import { nextStep } from '../../../shared/run/nextStep.ts';
import { planRun } from '../../../shared/run/plan.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { Button } from '../../controls/Button.tsx';
import { Note } from '../../controls/Note.tsx';
import { beginRun } from '../../desk/runs.ts';
import { useApp, useJob } from '../../state/store.ts';

export function JobChanged({ run }: { readonly run: PrintRun }) {
  const beginning = useApp((s) => s.beginningRun);
  const now = planRun(useJob(), run.plan.planned);
  if (JSON.stringify(now) === JSON.stringify(run.plan)) return null;
  return (
    <div className="run-does">
      <Note tone="ask">
        The job has been changed since this run began. The counts go by the job as it was then.
      </Note>
      <Button disabled={beginning} onPress={() => void beginRun(nextStep(run) !== 'done')}>
        Begin a run of the changed job
      </Button>
    </div>
  );
}
