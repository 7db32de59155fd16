// A sending in its thread: cancelled it may put the folder in order, and where it never does, that is said.
import { describe, expect, it } from 'vitest';
import type { SendTask } from '../../../electron/job/sendTask.ts';
import { startSending } from '../../../electron/job/startSending.ts';
import { Thread } from '../../../electron/thread/thread.ts';
import { FOREVER, testThreads } from '../../kit/threads.ts';
import { CARDS, jobOf } from '../../kit/ticketJobs.ts';

const threadThat = testThreads();
const quietly = () => undefined;
const task: SendTask = {
  what: 'send',
  job: jobOf(CARDS),
  folder: '/rip',
  replace: false,
  despiteFindings: false,
};

describe('a sending that is cancelled', () => {
  it('ends as its thread says, once the folder is in order', async () => {
    const tidy = new Thread(threadThat('', 'port.postMessage({ outcome: { at: "cancelled" } });'), 512);
    expect(await startSending(task, AbortSignal.abort(), quietly, tidy)).toEqual({ at: 'cancelled' });
  });

  it('and hangs is ended, and the person told to look into the folder', async () => {
    const stuck = new Thread(threadThat(FOREVER), 512);
    const outcome = await startSending(task, AbortSignal.abort(), quietly, stuck, 0.1);
    expect(outcome).toMatchObject({ at: 'failed', fault: { code: 'write-failed', where: '/rip' } });
    expect(outcome.at === 'failed' && outcome.fault.message).toBe(
      'Sending was cancelled, did not stop within 0.1 seconds and was ended.',
    );
    expect(outcome.at === 'failed' && outcome.fault.remedy).toContain('files that begin with .turnlay');
  });
});

describe('a sending whose thread breaks down', () => {
  it('has failed, with the reason', async () => {
    const broken = new Thread(threadThat('throw new Error("out of ink");'), 512);
    const outcome = await startSending(task, new AbortController().signal, quietly, broken);
    expect(outcome.at === 'failed' && outcome.fault.message).toBe('Sending broke down (out of ink).');
  });
});
