// The store of the window: edits, gestures and what is chosen.
import { beforeEach, describe, expect, it } from 'vitest';
import { isUnsaved } from '../../../renderer/state/deskState.ts';
import { redoName, undoName } from '../../../renderer/state/history.ts';
import { shownJob } from '../../../renderer/state/jobState.ts';
import { createAppStore } from '../../../renderer/state/store.ts';
import type { FileHandle } from '../../../shared/contract/handles.ts';
import { edit } from '../../../shared/job/edit.ts';
import type { Job } from '../../../shared/job/job.ts';
import { supperJob } from '../kit/supperJob.ts';

const job = supperJob;
let store = createAppStore();
const state = () => store.getState();
const leftOf = (shown: Job | undefined) => shown?.arrangement[0]?.trim.x ?? Number.NaN;
const start = leftOf(job);
const nudge = { do: 'move', positions: [0], dx: 2, dy: 0 } as const;

beforeEach(() => {
  store = createAppStore();
  state().beginJob(job);
});

describe('an edit', () => {
  it('changes the job, is named, and can be undone and done again', () => {
    const edited = state().perform(nudge);
    expect(edited.ok && leftOf(edited.value)).toBe(start + 2);
    expect(leftOf(shownJob(state()))).toBe(start + 2);
    expect(undoName(state().history)).toBe('Move piece');
    state().undo();
    expect(shownJob(state())).toBe(job);
    expect(redoName(state().history)).toBe('Move piece');
    state().redo();
    expect(leftOf(shownJob(state()))).toBe(start + 2);
  });

  it('that is refused leaves the job as it was and says why', () => {
    const refused = state().perform({ ...nudge, dx: -9000 });
    expect(refused.ok).toBe(false);
    expect(state().history?.present).toBe(job);
    expect(state().history?.past).toEqual([]);
    expect(state().fault?.message).toBe('Position 1 would run off the sheet.');
    state().perform(nudge);
    expect(state().fault).toBeUndefined();
  });

  it('without a job on the table is refused', () => {
    state().endJob();
    const refused = state().perform(nudge);
    expect(refused.ok || refused.fault.message).toBe('No job is open.');
    state().undo();
    state().redo();
    expect(state().history).toBeUndefined();
  });
});

describe('a gesture', () => {
  const moved = (dx: number) => {
    const result = edit(job, { ...nudge, dx });
    if (!result.ok) throw new Error(result.fault.message);
    return result.value;
  };

  it('shows where a piece would lie without an edit being made', () => {
    state().preview(moved(1));
    state().preview(moved(5));
    expect(leftOf(shownJob(state()))).toBe(start + 5);
    expect(state().history?.present).toBe(job);
    expect(undoName(state().history)).toBeUndefined();
  });

  it('ends in one edit, however far it went about', () => {
    for (const dx of [1, 2, 3, 4]) state().preview(moved(dx));
    state().commit({ ...nudge, dx: 4 });
    expect(state().previewed).toBeUndefined();
    expect(leftOf(shownJob(state()))).toBe(start + 4);
    expect(state().history?.past.map((s) => s.edit)).toEqual(['Move piece']);
  });

  it('that is let go leaves everything where it began', () => {
    state().preview(moved(5));
    state().cancel();
    expect(shownJob(state())).toBe(job);
    expect(state().history?.past).toEqual([]);
  });

  it('that ends in a refused edit goes back to where it began', () => {
    state().preview(moved(5));
    state().commit({ ...nudge, dx: 9000 });
    expect(shownJob(state())).toBe(job);
  });

  it('is let go when something is undone meanwhile', () => {
    state().perform(nudge);
    state().preview(moved(5));
    state().undo();
    expect(shownJob(state())).toBe(job);
  });
});

describe('an opened job', () => {
  const opened = { job: { ...job }, unsaved: false, art: [], artNames: {}, notices: [] };

  it('is at no moment taken for one with changes that its file does not hold', () => {
    const seen: boolean[] = [];
    store.subscribe((now, before) => {
      if (now.history !== before.history) seen.push(isUnsaved(now));
    });
    state().lay(opened);
    expect(seen).toEqual([false]);
  });

  it('that comes back from a crash is unsaved, and its file is known at once', () => {
    const file = { file: 'f' as FileHandle, name: 'supper.turnlay', place: '~' };
    const seen: unknown[] = [];
    store.subscribe((now, before) => {
      if (now.history !== before.history) seen.push([isUnsaved(now), now.file]);
    });
    state().lay({ ...opened, unsaved: true, file });
    expect(seen).toEqual([[true, file]]);
  });
});

describe('what is chosen', () => {
  it('is kept apart from history', () => {
    state().perform(nudge);
    state().select([3, 1, 3]);
    state().showSide(2);
    state().goTo('light-table');
    state().undo();
    expect(state()).toMatchObject({ selection: [1, 3], side: 2, stage: 'light-table' });
  });

  it('is let go when the position is no longer on the sheet', () => {
    state().select([0, 3]);
    state().takeInHand(3);
    state().perform({ do: 'remove', positions: [3] });
    expect(state()).toMatchObject({ selection: [0], inHand: undefined });
  });

  it('is let go when another job is laid on the table', () => {
    state().select([0]);
    state().takeInHand(0);
    state().showSide(2);
    state().beginJob(job);
    expect(state()).toMatchObject({ selection: [], inHand: undefined, side: 1 });
  });

  it('in hand stays in hand while other pieces are moved', () => {
    state().takeInHand(2);
    state().perform(nudge);
    expect(state().inHand).toBe(2);
  });
});

describe('a fault', () => {
  it('is shown until it is put away', () => {
    state().report({ code: 'folder-missing', message: 'No folder.', remedy: 'Choose one.' });
    expect(state().fault?.message).toBe('No folder.');
    state().putFaultAway();
    expect(state().fault).toBeUndefined();
  });
});
