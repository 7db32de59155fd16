// Threads: what they say on the way, how they end, and what is said of those that come to nothing.
import { describe, expect, it } from 'vitest';
import { SpareThread } from '../../../electron/thread/spareThread.ts';
import { Thread } from '../../../electron/thread/thread.ts';
import { type ThreadFailure, threadFault } from '../../../electron/thread/threadFailure.ts';
import type { Result } from '../../../shared/fault/result.ts';
import { FOREVER, testThreads } from '../../kit/threads.ts';

const threadThat = testThreads();
const MEGABYTES = 512;
const WORK = { code: 'write-failed', work: 'Folding', remedy: 'Fold again.' } as const;

/** Why it came to nothing, as a person reads it. */
function sentenceOf(came: Result<unknown, ThreadFailure>): string {
  if (came.ok) throw new Error('It came to something');
  return threadFault(came.fault, WORK).message;
}

const heldUp = (does: string) => new Thread(threadThat(does), MEGABYTES);

describe('A thread', () => {
  it('is given its task, says things on the way and comes to something', async () => {
    const thread = heldUp(
      'port.postMessage({ onTheWay: { step: "add", done: 1, of: 2 } }); port.postMessage({ outcome: task.a + task.b });',
    );
    const heard: unknown[] = [];
    const came = await thread.run<number, unknown>({ a: 2, b: 3 }, { onTheWay: (said) => heard.push(said) });
    expect(came).toEqual({ ok: true, value: 5 });
    expect(heard).toEqual([{ step: 'add', done: 1, of: 2 }]);
  });

  it('is handed buffers, not copies of them', async () => {
    const bytes = new Uint8Array([1, 2, 3]);
    const thread = heldUp('port.postMessage({ outcome: task.bytes.length });');
    const came = await thread.run<number>({ bytes }, { moved: [bytes.buffer] });
    expect(came).toEqual({ ok: true, value: 3 });
    expect(bytes.length).toBe(0);
  });

  it.each([
    ['that breaks down', 'throw new Error("the fold is torn");', 'Folding broke down (the fold is torn).'],
    ['that ends without a word', 'process.exit(0);', 'Folding broke down (it ended early).'],
  ])('%s says why', async (_name, does, said) => {
    expect(sentenceOf(await heldUp(does).run(null))).toBe(said);
  });

  it('that never answers is given up when its time is over', async () => {
    expect(sentenceOf(await heldUp(FOREVER).run(null, { seconds: 0.2 }))).toBe(
      'Folding took longer than 0.2 seconds and was given up.',
    );
  });

  it.each([
    ['on its own heap', 'const held = []; for (;;) held.push(new Array(1000).fill(held.length));'],
    [
      'beside its heap',
      'const held = []; setInterval(() => held.push(new Uint8Array(1e6).fill(held.length)), 1);',
    ],
  ])('that takes more memory than it may, %s, is given up', async (_where, does) => {
    const thread = new Thread(threadThat(does), 64);
    expect(sentenceOf(await thread.run(null))).toBe(
      'Folding needed more than 64 MB of memory and was given up.',
    );
  });
});

describe('A thread that is cancelled', () => {
  it('is ended though it never would, and says no more', async () => {
    const cancel = new AbortController();
    const heard: number[] = [];
    const came = await heldUp('for (let n = 1; ; n += 1) port.postMessage({ onTheWay: n });').run<
      never,
      number
    >(null, {
      signal: cancel.signal,
      onTheWay: (n) => {
        heard.push(n);
        cancel.abort();
      },
    });
    expect(sentenceOf(came)).toBe('Folding was cancelled.');
    expect(heard).toEqual([1]);
  });

  it('before it has begun is ended, too', async () => {
    expect(sentenceOf(await heldUp(FOREVER).run(null, { signal: AbortSignal.abort() }))).toBe(
      'Folding was cancelled.',
    );
  });

  it('may leave all in order, and says how it ended', async () => {
    const start = threadThat('', 'port.postMessage({ outcome: "unfolded again" });');
    const came = await new Thread(start, MEGABYTES).run(null, {
      signal: AbortSignal.abort(),
      tidySeconds: 600,
    });
    expect(came).toEqual({ ok: true, value: 'unfolded again' });
  });

  it('is ended where it does not come to an end of tidying up', async () => {
    const came = await heldUp(FOREVER).run(null, { signal: AbortSignal.abort(), tidySeconds: 0.1 });
    expect(sentenceOf(came)).toBe('Folding was cancelled, did not stop within 0.1 seconds and was ended.');
  });
});

describe('A spare thread', () => {
  it('does the one task, and there is another for the next', async () => {
    const start = threadThat('port.postMessage({ outcome: task });');
    const spare = new SpareThread(() => new Thread(start, MEGABYTES));
    spare.prepare();
    const [first, second] = [spare.take(), spare.take()];
    expect(first).not.toBe(second);
    expect(await Promise.all([first.run('one'), second.run('two')])).toEqual([
      { ok: true, value: 'one' },
      { ok: true, value: 'two' },
    ]);
    await spare.end();
  });
});
