// The history of a job: what is done can be undone and done again, and each edit is called by its name.
import { describe, expect, it } from 'vitest';
import {
  addStep,
  beginHistory,
  redoName,
  stepBack,
  stepOn,
  undoName,
} from '../../../renderer/state/history.ts';
import type { Job } from '../../../shared/job/job.ts';
import { supperJob } from '../kit/supperJob.ts';

const jobCalled = (title: string): Job => ({ ...supperJob, brief: { ...supperJob.brief, title } });

const [first, second, third] = [jobCalled('First'), jobCalled('Second'), jobCalled('Third')];

describe('the history of a job', () => {
  it('begins with nothing to undo and nothing to do again', () => {
    const history = beginHistory(first);
    expect([undoName(history), redoName(history)]).toEqual([undefined, undefined]);
    expect(stepBack(history)).toBe(history);
    expect(stepOn(history)).toBe(history);
  });

  it('leads back through every edit and on again, naming the one that lies next', () => {
    const history = addStep(addStep(beginHistory(first), second, 'Move piece'), third, 'Turn piece');
    expect([undoName(history), redoName(history)]).toEqual(['Turn piece', undefined]);
    const back = stepBack(history);
    expect(back.present).toBe(second);
    expect([undoName(back), redoName(back)]).toEqual(['Move piece', 'Turn piece']);
    const begin = stepBack(back);
    expect(begin.present).toBe(first);
    expect([undoName(begin), redoName(begin)]).toEqual([undefined, 'Move piece']);
    expect(stepOn(stepOn(begin))).toEqual(history);
  });

  it('gives up what was undone once another edit is made', () => {
    const back = stepBack(addStep(beginHistory(first), second, 'Move piece'));
    const other = addStep(back, third, 'Turn piece');
    expect(redoName(other)).toBeUndefined();
    expect(stepBack(other).present).toBe(first);
  });

  it('does not count an edit that changed nothing', () => {
    const history = beginHistory(first);
    expect(addStep(history, first, 'Move piece')).toBe(history);
  });
});
