// Papers that are written in a thread: given up in a sentence when they take too long.
import { describe, expect, it } from 'vitest';
import { Thread } from '../../../electron/thread/thread.ts';
import { writeInThread } from '../../../electron/ticket/writeInThread.ts';
import { FOREVER, testThreads } from '../../kit/threads.ts';
import { CARDS, jobOf } from '../../kit/ticketJobs.ts';

const threadThat = testThreads();
const ask = { job: jobOf(CARDS), file: undefined, to: '/papers', now: new Date('2026-03-01T14:30:00Z') };
const refusal = (message: string) => ({
  ok: false,
  fault: {
    code: 'write-failed',
    message,
    remedy: 'Look into the folder, then write them again. If it happens once more, look through the job.',
    where: '/papers',
  },
});

describe('the writing of papers', () => {
  it('that never ends is given up', async () => {
    const stuck = new Thread(threadThat(FOREVER), 512);
    expect(await writeInThread(ask, stuck, 0.2)).toEqual(
      refusal('Writing the papers took longer than 0.2 seconds and was given up.'),
    );
  });

  it('that breaks down says why', async () => {
    const broken = new Thread(threadThat('throw new Error("no paper");'), 512);
    expect(await writeInThread(ask, broken)).toEqual(refusal('Writing the papers broke down (no paper).'));
  });
});
