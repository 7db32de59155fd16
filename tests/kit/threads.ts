// Threads of a test's own, in plain JavaScript: `port` and, once it has come, `task` are at hand.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll } from 'vitest';

/** Keeps a thread alive that says nothing more. */
export const FOREVER = 'setInterval(() => {}, 1000);';

/** Makes starters of threads: of one that does this with its task, and, if wanted, that when it is cancelled. */
export function testThreads(): (does: string, whenCancelled?: string) => URL {
  const folder = mkdtempSync(join(tmpdir(), 'turnlay-thread-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  let made = 0;
  return (does, whenCancelled = '') => {
    made += 1;
    const path = join(folder, `${made}.mjs`);
    writeFileSync(
      path,
      `import { parentPort as port } from 'node:worker_threads';
port.on('message', async ({ task, cancel }) => {
  if (cancel) { ${whenCancelled} } else { ${does} }
});
`,
    );
    return pathToFileURL(path);
  };
}
