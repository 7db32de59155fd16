// Threads: what they say on the way, and how they end.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { runThread } from '../../../electron/thread/runThread.ts';

const folder = mkdtempSync(join(tmpdir(), 'turnlay-thread-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A thread that does this, with `port` and `task` at hand. */
function threadThat(name: string, does: string): URL {
  const path = join(folder, `${name}.mjs`);
  writeFileSync(
    path,
    `import { parentPort as port, workerData as task } from 'node:worker_threads';\n${does}\n`,
  );
  return pathToFileURL(path);
}

const FOREVER = 'setInterval(() => {}, 1000);';

describe('A thread', () => {
  it('is given its task, says things on the way and comes to something', async () => {
    const start = threadThat(
      'adds',
      'port.postMessage({ onTheWay: task.a }); port.postMessage({ outcome: task.a + task.b });',
    );
    const heard: number[] = [];
    const running = runThread<number, number>(
      start,
      { a: 2, b: 3 },
      { seconds: 60, onTheWay: (n) => heard.push(n) },
    );
    expect(await running.outcome).toBe(5);
    expect(heard).toEqual([2]);
  });

  it.each([
    ['that breaks down', 'throw new Error("broken");'],
    ['that ends without a word', ''],
  ])('%s comes to nothing', async (name, does) => {
    expect(
      await runThread(threadThat(name.replaceAll(' ', '-'), does), null, { seconds: 60 }).outcome,
    ).toBeUndefined();
  });

  it('that takes too long is given up', async () => {
    expect(await runThread(threadThat('idle', FOREVER), null, { seconds: 0.2 }).outcome).toBeUndefined();
  });

  it('that is stopped comes to nothing, and says no more', async () => {
    const start = threadThat('talks', `port.postMessage({ onTheWay: 1 }); ${FOREVER}`);
    const heard: number[] = [];
    const running = runThread<number, number>(start, null, {
      seconds: 60,
      onTheWay: (n) => {
        heard.push(n);
        running.stop();
      },
    });
    expect(await running.outcome).toBeUndefined();
    expect(heard).toEqual([1]);
  });
});
