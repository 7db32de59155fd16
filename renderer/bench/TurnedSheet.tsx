// The sheet in the hand while it is turned on the bench, and what it would be when it was turned the wrong way.
import { turnOf } from '../../shared/geometry/work.ts';
import { sheetOf } from '../../shared/job/job.ts';
import { useApp, useJob } from '../state/store.ts';
import { TurningSheet } from '../turning/TurningSheet.tsx';
import { WrongTurn } from '../turning/WrongTurn.tsx';
import { benchView } from './benchView.ts';
import type { Scene } from './canvas/scene.ts';
import { shownPieces } from './model/shownPieces.ts';
import type { TurningHands } from './useTurning.ts';

export function TurnedSheet({
  hands: { turning, lies, turnBack },
  scene,
}: {
  readonly hands: TurningHands;
  readonly scene: (() => Scene | undefined) | undefined;
}) {
  const job = useJob();
  const side = useApp((s) => s.side);
  const right = turnOf(job.brief.work);
  const picturesOf = scene?.()?.picturesOf;
  if (turning === undefined || right === undefined || picturesOf === undefined) return null;
  const sheet = sheetOf(job.brief).size;
  const { view } = benchView.store.getState();
  const page = (of: 1 | 2) => ({ sheet, pieces: shownPieces(job, of), picturesOf, through: [] });
  const { grip, byHand, from, backed, taken, liesWrong, round } = turning;
  return (
    <>
      <TurningSheet
        key={round}
        view={view}
        sheet={sheet}
        grip={grip}
        byHand={byHand}
        from={from}
        front={page(side)}
        behind={{ ...page(side === 1 ? 2 : 1), through: backed }}
        onLies={lies}
      />
      {liesWrong && <WrongTurn taken={taken} right={right} backed={backed} onTurnBack={turnBack} />}
    </>
  );
}
