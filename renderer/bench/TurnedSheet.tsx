// The sheet in the hand while it is turned on the bench, and what it would be when it was turned the wrong way.
import { wholeOf } from '../../shared/geometry/rect.ts';
import type { Side } from '../../shared/geometry/space.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { sheetOf } from '../../shared/job/job.ts';
import type { PicturesOf } from '../sheet/paint/paintPieces.ts';
import { onScreen } from '../sheet/paint/pen.ts';
import { shownPieces } from '../sheet/pieces/shownPieces.ts';
import { paintPage } from '../sheet/turning/paintPage.ts';
import { TurningPaper } from '../sheet/turning/TurningPaper.tsx';
import { WrongTurn } from '../sheet/turning/WrongTurn.tsx';
import { useApp } from '../state/store.ts';
import { benchView } from './benchView.ts';
import { useSettledJob } from './useSettledJob.ts';
import type { TurningHands } from './useTurning.ts';

export function TurnedSheet({
  hands: { turning, lies, turnBack },
  picturesOf,
}: {
  readonly hands: TurningHands;
  readonly picturesOf: PicturesOf;
}) {
  const job = useSettledJob();
  const side = useApp((s) => s.side);
  const right = turnOf(job.brief.work);
  if (turning === undefined || right === undefined) return null;
  const sheet = sheetOf(job.brief).size;
  const { view } = benchView.store.getState();
  const { grip, hand, from, backed, taken, liesWrong, round } = turning;
  const page = (of: 1 | 2) => ({ sheet, pieces: shownPieces(job, of), picturesOf });
  const front = { ...page(side), through: [] };
  const behind = { ...page(side === 1 ? 2 : 1), through: backed };
  return (
    <>
      <TurningPaper
        key={round}
        lying={onScreen(view, wholeOf<Side>(sheet))}
        grip={grip}
        hand={hand}
        from={from}
        paintFront={(pen) => paintPage(pen, front, view.zoom)}
        paintBehind={(pen) => paintPage(pen, behind, view.zoom)}
        onLies={lies}
      />
      {liesWrong && <WrongTurn taken={taken} right={right} backed={backed} onTurnBack={turnBack} />}
    </>
  );
}
