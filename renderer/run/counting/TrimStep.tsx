// Trimming: the pieces that came from the knife are counted, design by design.
import { USUAL_REASONS } from '../../../shared/run/events.ts';
import { record } from '../../desk/runs.ts';
import { CountForm } from './CountForm.tsx';
import { StepWords } from './StepWords.tsx';
import type { StepProps } from './stepProps.ts';

const STEPS = [
  'Trim when the ink is dry, jogged to the edges that registered the second pass.',
  'Count the good pieces of each design, and put the spoiled ones aside.',
];

export function TrimStep({ run }: StepProps) {
  return (
    <>
      {run.plan.designs
        .filter((d) => d.perSheet > 0)
        .map(({ piece, perSheet }, i) => {
          const cut = run.pieces.find((p) => p.piece === piece);
          const uncut = run.sheets.done * perSheet - (cut?.good ?? 0) - (cut?.spoiled ?? 0);
          return (
            <section key={piece} className="count-design" aria-label={piece}>
              <h4>
                {piece} <span className="soft">{uncut} on finished sheets are not counted yet</span>
              </h4>
              <CountForm
                label={`Good ${piece}`}
                does="Count as good"
                main={i === 0}
                onCount={(good) => record({ kind: 'trimmed', piece, good, spoiled: 0, reason: '' })}
              />
              <CountForm
                label={`Spoiled ${piece}`}
                does="Count as spoiled"
                reasons={USUAL_REASONS.trim}
                onCount={(spoiled, reason) => record({ kind: 'trimmed', piece, good: 0, spoiled, reason })}
              />
            </section>
          );
        })}
      <StepWords steps={STEPS} cautions={['trim']} />
    </>
  );
}
