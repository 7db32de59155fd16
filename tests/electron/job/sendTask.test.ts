// Sending and proving as one task: how it ends, whatever happens on the way, and that nothing half written stays.
import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { JobFiles } from '../../../electron/disk/jobFiles.ts';
import { doSendTask, type SendTask } from '../../../electron/job/sendTask.ts';
import { progressInWords, type SendProgress } from '../../../shared/contract/sendProgress.ts';
import type { Job } from '../../../shared/job/job.ts';
import { otherFace } from '../../../shared/layout/position.ts';
import { granted } from '../../kit/granted.ts';
import { dropFolder, type HostRig, newFolder, openRig, openSupper } from '../../kit/hostRig.ts';

let folder: string;
let rig: HostRig;
let job: Job;
beforeEach(async () => {
  folder = newFolder();
  rig = await openRig(folder);
  await openSupper(rig);
  job = granted(await new JobFiles().open(rig.at('start.turnlay')));
  mkdirSync(rig.at('rip'));
});
afterEach(async () => {
  await rig.end();
  dropFolder(folder);
});

const task = (changes: Partial<SendTask> = {}): SendTask => ({
  what: 'send',
  job,
  folder: rig.at('rip'),
  replace: false,
  despiteFindings: false,
  ...changes,
});
const never = new AbortController().signal;
const quietly = () => undefined;
const inRip = () => readdirSync(rig.at('rip'));

/** One position shows its other face, and its partner does not follow: a front will lie behind a front. */
function spoil(whole: Job): Job {
  const arrangement = whole.arrangement.map((p, i) => (i === 0 ? { ...p, face: otherFace(p.face) } : p));
  return { ...whole, arrangement };
}

describe('a sending', () => {
  it('holds a sheet back that the proof finds fault with', async () => {
    const held = await doSendTask(task({ job: spoil(job) }), never, quietly);
    if (held.at !== 'done') throw new Error(held.at);
    expect(held.is).toBe('held');
    expect(held.proof.findings.map((f) => f.kind)).toContain('wrong-face');
    expect(held.pictures).toHaveLength(4);
    expect(inRip()).toEqual([]);
  });

  it('says what to do when the folder has gone, and leaves nothing', async () => {
    rmSync(rig.at('rip'), { recursive: true });
    const outcome = await doSendTask(task(), never, quietly);
    expect(outcome).toMatchObject({ at: 'failed', fault: { code: 'folder-missing' } });
    expect(existsSync(rig.at('rip'))).toBe(false);
  });

  it('cancelled in the middle of the proof leaves nothing behind', async () => {
    const cancel = new AbortController();
    const said: SendProgress[] = [];
    const outcome = await doSendTask(task(), cancel.signal, (progress) => {
      said.push(progress);
      if (progress.step === 'prove') cancel.abort();
    });
    expect(outcome).toEqual({ at: 'cancelled' });
    expect(said.map(({ step }) => step)).toEqual(['read-art', 'write-sheets', 'write-files', 'prove']);
    expect(progressInWords(said.at(-1)!)).toBe('Proving what was written: 1 of 8 faces');
    expect(inRip()).toEqual([]);
  });

  it('cancelled before it began does not even look at the art', async () => {
    rmSync(rig.at('art'), { recursive: true });
    expect(await doSendTask(task(), AbortSignal.abort(), quietly)).toEqual({ at: 'cancelled' });
  });
});

describe('a proving', () => {
  it('finds what was sent, right or wrong, and says how far it is; and nothing where nothing was sent', async () => {
    const proving = task({ what: 'prove', job: spoil(job) });
    const nothing = await doSendTask(proving, never, quietly);
    expect(nothing).toMatchObject({ at: 'failed', fault: { code: 'sheet-missing' } });
    await doSendTask(task({ job: spoil(job), despiteFindings: true }), never, quietly);
    expect(inRip()).toHaveLength(1);
    const heard: SendProgress[] = [];
    const outcome = await doSendTask(proving, never, (progress) => heard.push(progress));
    expect(outcome).toMatchObject({ at: 'done', is: 'proved', notices: [] });
    expect(outcome.at === 'done' && outcome.proof.findings.map((f) => f.kind)).toContain('wrong-face');
    expect(heard).toEqual([
      { step: 'find-files', done: 0, of: 1 },
      ...[1, 2, 3, 4, 5, 6, 7, 8].map((done) => ({ step: 'prove', done, of: 8 })),
    ]);
  });
});
