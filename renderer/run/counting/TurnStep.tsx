// Drying and turning between the passes, with the picture of the turn.
import { useState } from 'react';
import type { Fault } from '../../../shared/fault/result.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { sheetsOf } from '../../../shared/run/events.ts';
import { turningOf } from '../../../shared/runSheet/steps.ts';
import { Button } from '../../controls/Button.tsx';
import { FaultNote } from '../../controls/Note.tsx';
import { record } from '../../desk/runs.ts';
import { useJob } from '../../state/store.ts';
import { TurnDrawing } from '../TurnDrawing.tsx';
import { StepWords } from './StepWords.tsx';
import type { StepProps } from './stepProps.ts';

export function TurnStep({ run }: StepProps) {
  const job = useJob();
  const turn = turnOf(run.plan.work);
  const [fault, setFault] = useState<Fault | undefined>(undefined);
  if (turn === undefined) return null;
  const waiting = run.sheets.side1;
  const steps = [
    'Let the ink dry: a fingertip leaves no trace, and sheets do not cling to each other.',
    turningOf(job, turn),
    'Turn the whole pile in the same way, and see by the pencil line that it lies as in the drawing.',
  ];
  return (
    <div className="count-turn">
      <div className="count-column">
        <p className="step-says">
          {waiting === 0 ? 'Nothing waits to be turned.' : `${sheetsOf(waiting)} to dry and turn.`}
        </p>
        <div className="count-verdict">
          <Button
            kind="main"
            autoFocus
            disabled={waiting === 0}
            onPress={async () => setFault(await record({ kind: 'turned' }))}
          >
            It is dry and turned
          </Button>
        </div>
        {fault !== undefined && (
          <div role="alert">
            <FaultNote fault={fault} />
          </div>
        )}
        <StepWords steps={steps} cautions={['lift']} />
      </div>
      <TurnDrawing job={job} turn={turn} />
    </div>
  );
}
