// Starts a thread from its source, or from what was built of it where `TURNLAY_THREADS` names the folder: the tests start
// hundreds of threads, and each would compile the house for itself.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { register } from 'tsx/esm/api';

/** `name` is the starter's in the build, `fromSource` imports the thread's program. */
export async function startThread(name, fromSource) {
  const built = process.env.TURNLAY_THREADS;
  if (built !== undefined) {
    await import(pathToFileURL(join(built, `${name}.mjs`)).href);
    return;
  }
  // A thread does not inherit what makes its parent understand TypeScript.
  register();
  await fromSource();
}
