// A window to be tried by a program: the built app behind its loopback host, in a browser without a screen.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { chromium, type Page } from 'playwright';
import { startHost } from '../tests/e2e/kit/hostProcess.ts';
import { builtApp } from './builtApp.ts';
import { findBrowser } from './findBrowser.ts';

export interface TriedWindow {
  readonly page: Page;
  /** The folder of the person who works in it. */
  readonly folder: string;
  readonly end: () => Promise<void>;
}

const USUAL_SIZE = { width: 1600, height: 1000 };

/**
 * Opens the window. `files` are put into the person's folder first; of these, `asked` are opened at the start.
 *
 * @param size - of what is seen, in px
 */
export async function openWindow(
  files: Readonly<Record<string, Uint8Array | string>>,
  asked: readonly string[],
  size = USUAL_SIZE,
): Promise<TriedWindow> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error('No Chromium browser is here');
  const app = await builtApp(() => console.log('Building the app'));
  const folder = mkdtempSync(join(tmpdir(), 'turnlay-bench-'));
  for (const [name, bytes] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), bytes);
  }
  const host = await startHost(
    app,
    folder,
    asked.map((name) => join(folder, name)),
  );
  const browser = await chromium.launch({ executablePath, args: ['--js-flags=--expose-gc'] });
  const page = await browser.newPage({ viewport: size });
  // Functions that are handed to the page carry this name of the compiler with them.
  await page.addInitScript('globalThis.__name = (named) => named');
  await page.goto(host.link);
  return {
    page,
    folder,
    end: async () => {
      await browser.close();
      await host.end();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
