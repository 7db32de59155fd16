// What can be done on the bench from the menu or with a key.
import type { Alignment } from '../../shared/bench/align.ts';
import type { SheetAxis } from '../../shared/bench/axis.ts';
import { edit } from '../../shared/job/edit.ts';
import type { Job } from '../../shared/job/job.ts';
import { leadersOf } from '../../shared/job/partners.ts';
import type { Doing, Doings } from '../actions/actionBook.ts';
import { useActions } from '../actions/useActions.ts';
import { ontoArrangement } from '../sheet/pieces/shownPieces.ts';
import { app, useApp } from '../state/store.ts';
import { benchView } from './benchView.ts';
import { copyPlace } from './gesture/copyPlace.ts';
import { useSettledJob } from './useSettledJob.ts';

/** How much nearer one press goes. */
const ZOOM_FACTOR = 1.25;

/** Offers the actions of the bench while it is on the screen. */
export function useBenchActions(askRepeat: () => void): void {
  const job = useSettledJob();
  const selection = useApp((s) => s.selection);
  const side = useApp((s) => s.side);
  const { perform, select, takeInHand, goTo } = app.getState();
  const chosen = selection.length > 0;
  const leaders = leadersOf(job, selection).length;
  const align = (by: Alignment): Doing => ({
    can: chosen,
    run: () => perform({ do: 'align', positions: selection, by, to: leaders > 1 ? 'one-another' : 'sheet' }),
  });
  const distribute = (axis: SheetAxis): Doing => ({
    can: leaders > 2,
    run: () => perform({ do: 'distribute', positions: selection, axis }),
  });
  const { a, d } = ontoArrangement(job, side);
  const turn = (quarters: number): Doing => ({
    can: chosen,
    run: () => perform({ do: 'turn-heads', positions: selection, quarters: quarters * a * d }),
  });
  const doings: Doings = {
    duplicate: { can: chosen, run: () => duplicate(job, selection) },
    remove: { can: chosen, run: () => perform({ do: 'remove', positions: selection }) && select([]) },
    'choose-all': { can: job.arrangement.length > 0, run: () => select([...job.arrangement.keys()]) },
    'choose-none': { can: chosen, run: () => select([]) },
    'turn-left': turn(1),
    'turn-right': turn(-1),
    'turn-half': turn(2),
    'swap-faces': { can: chosen, run: () => perform({ do: 'swap-faces', positions: selection }) },
    'align-left': align('left'),
    'align-right': align('right'),
    'align-lead': align('lead'),
    'align-tail': align('tail'),
    'align-middle-across': align('middle-across'),
    'align-middle-along': align('middle-along'),
    'distribute-across': distribute('x'),
    'distribute-along': distribute('y'),
    'step-and-repeat': { can: chosen, run: askRepeat },
    'take-in-hand': {
      can: chosen,
      run: () => {
        takeInHand(selection[0]);
        goTo('light-table');
      },
    },
    'lay-out': { run: () => perform({ do: 'lay-out' }) },
    'zoom-in': { run: () => benchView.zoomBy(ZOOM_FACTOR) },
    'zoom-out': { run: () => benchView.zoomBy(1 / ZOOM_FACTOR) },
    'zoom-fit': { run: () => benchView.showWhole() },
  };
  useActions(doings);
}

/** Duplicates the chosen pieces and chooses the copies. */
function duplicate(job: Job, selection: readonly number[]): void {
  const command = { do: 'duplicate', positions: selection, ...copyPlace(job, selection) } as const;
  const copied = edit(job, command);
  if (!app.getState().perform(command).ok || !copied.ok) return;
  const copies = [...copied.value.arrangement.keys()].slice(job.arrangement.length);
  app.getState().select(leadersOf(copied.value, copies));
}
