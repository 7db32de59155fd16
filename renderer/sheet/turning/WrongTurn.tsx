// What a sheet would be that was turned the wrong way, in words, with the way back.
import { type Backed, countFaults } from '../../../shared/bench/backUp.ts';
import { registerEdges } from '../../../shared/geometry/register.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import { Button } from '../../controls/Button.tsx';
import { Sign } from '../../controls/Note.tsx';

const IN_WORDS: Readonly<Record<Turn, string>> = {
  'side-to-side': 'side to side',
  'end-to-end': 'end to end',
};

export function WrongTurn({
  taken,
  right,
  backed,
  onTurnBack,
}: {
  readonly taken: Turn;
  readonly right: Turn;
  readonly backed: readonly Backed[];
  readonly onTurnBack: () => void;
}) {
  const counted = countFaults(backed);
  const [one, other] = registerEdges(right);
  return (
    <div className="turned-wrong" role="alert">
      <div>
        <h2>
          <Sign tone="bad" /> Turned {IN_WORDS[taken]}, but it was laid out for {IN_WORDS[right]}
        </h2>
        <p>
          {counted.length === 0
            ? 'By chance every back still lies behind its front. Do not rely on it: turn the sheet as it was laid out.'
            : `Printed now, it would give ${counted.join(', ')}.`}{' '}
          <span className="soft">
            Turn it back and take it by its {one} or {other} edge.
          </span>
        </p>
      </div>
      <Button kind="main" onPress={onTurnBack} autoFocus>
        Turn it back
      </Button>
    </div>
  );
}
