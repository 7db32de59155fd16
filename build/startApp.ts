// A start of the app from its sources: the shell is chosen, the app built where they have changed, and run to its end.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { builtApp } from './builtApp.ts';
import { chooseShell } from './chooseShell.ts';
import { electronPackage } from './electronBinary.ts';
import { runShell } from './runShell.ts';
import { sayProgress } from './sayProgress.ts';

/** The exit code. `house` is where the package `electron` is looked for. */
export async function startApp(house: string, args: readonly string[]): Promise<number> {
  const stopping = new AbortController();
  const stop = () => stopping.abort();
  process.once('SIGINT', stop).once('SIGTERM', stop);
  const shell = await chooseShell({
    house,
    args,
    onProgress: sayProgress(`Fetching Electron ${versionIn(house)} for the desktop window, this once`),
    stop: stopping.signal,
  });
  if (stopping.signal.aborted) return 1;
  process.off('SIGINT', stop).off('SIGTERM', stop);
  const app = await builtApp(() => console.log('Building the app: its sources have changed.'));
  return runShell(shell, app, args);
}

function versionIn(house: string): string {
  const folder = electronPackage(house);
  if (folder === undefined) return '';
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')).version;
}
