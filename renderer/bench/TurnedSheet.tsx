// The sheet in the hand while it is turned on the bench, and what it would be when it was turned the wrong way.
import type { Backed } from '../../shared/bench/backUp.ts';
import { wholeOf } from '../../shared/geometry/rect.ts';
import type { Side } from '../../shared/geometry/space.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { sheetOf } from '../../shared/job/job.ts';
import { useApp } from '../state/store.ts';
import { paintPage } from '../turning/pageOfSheet.ts';
import { TurningPaper } from '../turning/TurningPaper.tsx';
import { WrongTurn } from '../turning/WrongTurn.tsx';
import { benchView } from './benchView.ts';
import type { Scene } from './canvas/scene.ts';
import { shownPieces } from './model/shownPieces.ts';
import { onScreen } from './paint/pen.ts';
import { useSettledJob } from './useSettledJob.ts';
import type { TurningHands } from './useTurning.ts';

export function TurnedSheet({
  hands: { turning, lies, turnBack },
  scene,
}: {
  readonly hands: TurningHands;
  readonly scene: (() => Scene | undefined) | undefined;
}) {
  const job = useSettledJob();
  const side = useApp((s) => s.side);
  const right = turnOf(job.brief.work);
  const picturesOf = scene?.()?.picturesOf;
  if (turning === undefined || right === undefined || picturesOf === undefined) return null;
  const sheet = sheetOf(job.brief).size;
  const { view } = benchView.store.getState();
  const paint = (of: 1 | 2, through: readonly Backed[]) => (page: HTMLCanvasElement) =>
    paintPage(
      page,
      { sheet, pieces: shownPieces(job, of), picturesOf, through },
      view.zoom,
      devicePixelRatio,
    );
  const { grip, byHand, from, backed, taken, liesWrong, round } = turning;
  return (
    <>
      <TurningPaper
        key={round}
        lying={onScreen(view, wholeOf<Side>(sheet))}
        grip={grip}
        byHand={byHand}
        from={from}
        paintFront={paint(side, [])}
        paintBehind={paint(side === 1 ? 2 : 1, backed)}
        onLies={lies}
      />
      {liesWrong && <WrongTurn taken={taken} right={right} backed={backed} onTurnBack={turnBack} />}
    </>
  );
}
