// The tools over the bench: turning the sheet, turning and copying pieces, laying out afresh, looking nearer.
import { useSyncExternalStore } from 'react';
import { turnOf } from '../../shared/geometry/work.ts';
import { actionBook } from '../actions/actionBook.ts';
import { useActionsShown } from '../actions/useActions.ts';
import { Button } from '../controls/Button.tsx';
import { useApp } from '../state/store.ts';
import { ActionRow } from './ActionRow.tsx';
import { benchView } from './benchView.ts';
import { useSettledJob } from './useSettledJob.ts';

export function Toolbar() {
  const { work } = useSettledJob().brief;
  const side = useApp((s) => s.side);
  const { disabled } = useActionsShown();
  const { view } = useSyncExternalStore(benchView.store.subscribe, benchView.store.getState);
  const turns = turnOf(work) !== undefined;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a toolbar has no element of its own.
    <div className="tools" role="group" aria-label="Tools of the bench">
      <p className="side-up">Side {side} up</p>
      {turns && (
        <Button onPress={() => actionBook.run('turn-sheet')} disabled={disabled.includes('turn-sheet')}>
          Turn the sheet
        </Button>
      )}
      <ActionRow names={['turn-left', 'turn-right', 'swap-faces']} label="Turn pieces" />
      <ActionRow names={['duplicate', 'step-and-repeat', 'remove']} label="Copy pieces" />
      <ActionRow names={['lay-out']} label="Lay out" />
      <div className="looking">
        <ActionRow names={['zoom-out']} label="Look from farther away" />
        <output className="zoom" aria-label="Size on the screen">
          {inPercent(view.zoom)}
        </output>
        <ActionRow names={['zoom-in', 'zoom-fit']} label="Look nearer" />
      </div>
    </div>
  );
}

/** At a hundred an inch of the sheet takes 96 px, which is an inch on a screen that keeps to the standard. */
function inPercent(zoom: number): string {
  return `${Math.round((zoom * 72 * 100) / 96)} %`;
}
