// The starters of threads: from the source where nothing is said, from what was built where its folder is named.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { afterAll, expect, it } from 'vitest';

const START = new URL('../../../electron/gang/startGangWorker.mjs', import.meta.url);
const folder = mkdtempSync(join(tmpdir(), 'turnlay-starter-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** What the gang thread says last when its environment has these. An order with fewer places than designs is refused. */
function lastWord(env: Readonly<Record<string, string>>): Promise<unknown> {
  const { TURNLAY_THREADS: _built, ...own } = process.env;
  const thread = new Worker(START, {
    env: { ...own, ...env },
    execArgv: [],
  });
  thread.postMessage({
    task: {
      order: { quantities: [1, 1, 1], slots: 1, sheetCost: 1, formCost: 1, mostForms: 2 },
      seconds: 1,
    },
  });
  let last: unknown;
  thread.on('message', (said) => {
    last = said;
  });
  return new Promise((resolve, reject) => thread.on('exit', () => resolve(last)).on('error', reject));
}

it('a thread starts from its source', async () => {
  expect(await lastWord({})).toMatchObject({ outcome: { fault: { code: 'gang-impossible' } } });
});

it('a thread starts from what was built of it', async () => {
  writeFileSync(
    join(folder, 'startGangWorker.mjs'),
    "import { parentPort } from 'node:worker_threads';\nparentPort.postMessage('built');\n",
  );
  expect(await lastWord({ TURNLAY_THREADS: folder })).toBe('built');
});
