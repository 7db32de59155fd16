// Turning the sheet on the bench: by an edge that is taken, by a button or a key, the right way or the wrong way.
import { useState } from 'react';
import { type Backed, backUp } from '../../shared/bench/backUp.ts';
import { type Grip, turnByEdge } from '../../shared/bench/turning.ts';
import { wholeOf } from '../../shared/geometry/rect.ts';
import type { SheetEdge } from '../../shared/geometry/sheet.ts';
import type { Point, Rect, Side } from '../../shared/geometry/space.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { designsOf, type Job, sheetOf } from '../../shared/job/job.ts';
import { useActions } from '../actions/useActions.ts';
import { onScreen } from '../sheet/paint/pen.ts';
import { gripAt, gripFor } from '../sheet/turning/grips.ts';
import { app, useApp } from '../state/store.ts';
import { benchView } from './benchView.ts';
import { useSettledJob } from './useSettledJob.ts';

/** A turning under way. */
export interface Turning {
  readonly taken: Turn;
  readonly grip: Grip;
  /** The pointer of the hand that holds it; none where it goes by itself. */
  readonly hand: number | undefined;
  readonly from: 0 | 180;
  /** Whether it has come to lie turned the wrong way. */
  readonly liesWrong: boolean;
  /** What is behind each piece when it was turned the wrong way. */
  readonly backed: readonly Backed[];
  /** The rounds are counted: 0 for the turning over, 1 for the turning back. */
  readonly round: number;
}

export interface TurningHands {
  readonly turning: Turning | undefined;
  readonly takeEdge: (edge: SheetEdge, at: Point<'screen'>, pointerId: number) => void;
  readonly lies: (turned: boolean) => void;
  readonly turnBack: () => void;
}

const other = (turn: Turn): Turn => (turn === 'side-to-side' ? 'end-to-end' : 'side-to-side');

export function useTurning(): TurningHands {
  const job = useSettledJob();
  const side = useApp((s) => s.side);
  const [turning, setTurning] = useState<Turning | undefined>(undefined);
  const right = turnOf(job.brief.work);

  const begin = (taken: Turn, grip: Grip, hand?: number) =>
    setTurning({
      taken,
      grip,
      hand,
      from: 0,
      liesWrong: false,
      backed: wrongly(job, taken, right),
      round: 0,
    });
  const byItself = (taken: Turn) => {
    begin(taken, gripFor(taken, lying(job)));
  };
  useActions({
    'turn-sheet': {
      can: right !== undefined && turning === undefined,
      run: () => right !== undefined && byItself(right),
    },
    'turn-sheet-wrong': {
      can: right !== undefined && turning === undefined && side === 1,
      run: () => right !== undefined && byItself(other(right)),
    },
  });

  return {
    turning,
    takeEdge: (edge, at, pointerId) => {
      const taken = turnByEdge(edge);
      if (turning !== undefined || right === undefined || (side === 2 && taken !== right)) return;
      begin(taken, gripAt(edge, at, lying(job)), pointerId);
    },
    lies: (turned) => {
      if (turned && turning !== undefined && turning.taken !== right) {
        setTurning({ ...turning, liesWrong: true });
        return;
      }
      setTurning(undefined);
      if (turned) app.getState().showSide(side === 1 ? 2 : 1);
    },
    turnBack: () => {
      if (turning !== undefined)
        setTurning({ ...turning, hand: undefined, from: 180, liesWrong: false, round: 1 });
    },
  };
}

/** Where the sheet lies on the screen. */
function lying(job: Job): Rect<'screen'> {
  return onScreen(benchView.store.getState().view, wholeOf<Side>(sheetOf(job.brief).size));
}

function wrongly(job: Job, taken: Turn, right: Turn | undefined): readonly Backed[] {
  if (taken === right) return [];
  const sheet = { ...sheetOf(job.brief), work: job.brief.work };
  return backUp(job.arrangement, designsOf(job.brief), sheet, taken, job.brief.units);
}
