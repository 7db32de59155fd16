// The keys of the bench itself: arrows nudge what is chosen, Page Up and Page Down choose the piece before or after.

import { shownJob } from '../state/jobState.ts';
import { app } from '../state/store.ts';
import { nudge } from './gesture/nudge.ts';

export interface PressedKey {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** Does what the key means on the bench, and says whether it meant anything. */
export function pressKey(pressed: PressedKey, openMenu: () => void): boolean {
  const { selection, side, perform } = app.getState();
  const job = shownJob(app.getState());
  if (job === undefined || pressed.ctrlKey || pressed.metaKey || pressed.altKey) return false;
  if (pressed.key === 'ContextMenu' || (pressed.key === 'F10' && pressed.shiftKey)) {
    openMenu();
    return true;
  }
  if (pressed.key === 'PageDown' || pressed.key === 'PageUp') {
    chooseNext(job.arrangement.length, pressed.key === 'PageDown' ? 1 : -1);
    return true;
  }
  const command = nudge(job, side, selection, pressed.key, pressed.shiftKey);
  if (command === undefined) return false;
  perform(command);
  return true;
}

/** Chooses the position after (1) or before (-1) the one that is chosen, round and round. */
function chooseNext(count: number, step: 1 | -1): void {
  if (count === 0) return;
  const { selection, select } = app.getState();
  const from = step === 1 ? selection.at(-1) : selection[0];
  const next = from === undefined ? (step === 1 ? 0 : count - 1) : (from + step + count) % count;
  select([next]);
}
