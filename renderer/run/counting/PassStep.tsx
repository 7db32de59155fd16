// A pass through the printer: the good sheets are counted, and the spoiled ones with their reasons.
import { type Pass, USUAL_REASONS } from '../../../shared/run/events.ts';
import { Button } from '../../controls/Button.tsx';
import { record } from '../../desk/runs.ts';
import { CountForm } from './CountForm.tsx';
import { StepWords } from './StepWords.tsx';
import { sayPass } from './sayPass.ts';
import type { StepProps } from './stepProps.ts';

export function PassStep({ run, sides, pass, onGoTo }: StepProps & { readonly pass: Pass }) {
  const { blank, side1, turned } = run.sheets;
  const waiting = pass === 1 ? blank : turned;
  const hint = waiting === 0 ? 'None are waiting.' : `${waiting} ${waiting === 1 ? 'is' : 'are'} waiting.`;
  return (
    <>
      <CountForm
        label={`Good out of pass ${pass}`}
        does="Count as good"
        hint={hint}
        main
        onCount={(sheets) => record({ kind: 'good', pass, sheets })}
      >
        {pass === 1 && side1 > 0 && (
          <Button onPress={() => onGoTo('turn')}>The pile is through: dry and turn</Button>
        )}
      </CountForm>
      <CountForm
        label={`Spoiled in pass ${pass}`}
        does="Count as spoiled"
        reasons={USUAL_REASONS[pass]}
        onCount={(sheets, reason) => record({ kind: 'spoiled', pass, sheets, reason })}
      />
      <StepWords steps={sayPass(run, pass, sides)} cautions={['feed']} />
    </>
  );
}
