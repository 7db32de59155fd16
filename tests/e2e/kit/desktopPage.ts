// The desktop shell with a real page: the built main program on the stand-in, the built window and preload in a browser.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { type DesktopRig, startDesktop } from '../../kit/desktopRig.ts';

/** Where the browser believes the window to be; everything there is answered by the program's own scheme. */
const ORIGIN = 'https://turnlay.test';

/** Shows the window of a desktop shell, started for the person of this folder, in a page. */
export async function openDesktopPage(page: Page, app: string, folder: string): Promise<DesktopRig> {
  const rig = await startDesktop(app, folder);
  const { electron, window } = rig;
  const { webContents } = window;
  await page.route(`${ORIGIN}/**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    const answer = await electron.fetch(`app://turnlay${pathname}`);
    await route.fulfill({
      status: answer.status,
      headers: Object.fromEntries(answer.headers),
      body: Buffer.from(await answer.arrayBuffer()),
    });
  });
  await page.exposeFunction('invokeMain', (channel: string, args: unknown[]) =>
    webContents.invoke(channel, args, { url: webContents.url, parent: null }),
  );
  webContents.on('sent', (channel: string, args: unknown[]) => {
    page
      .evaluate(([c, a]) => (globalThis as unknown as Heard).hearMain(c, a), [channel, args] as const)
      .catch(() => undefined);
  });
  const preload = readFileSync(join(app, 'host/preload.cjs'), 'utf8');
  await page.addInitScript(
    `(function (require, module, exports) {${preload}\n})((${makeRequire})(), { exports: {} }, {});`,
  );
  await page.goto(`${ORIGIN}/`);
  return rig;
}

interface Heard {
  hearMain(channel: string, args: readonly unknown[]): void;
}

/** What the preload may require in the page: nothing but Electron's half for a page. */
function makeRequire(): (name: string) => unknown {
  type Listener = (...args: unknown[]) => void;
  const world = globalThis as unknown as Record<string, unknown>;
  const listeners = new Map<string, Set<Listener>>();
  world.hearMain = (channel: string, args: readonly unknown[]) => {
    for (const listener of listeners.get(channel) ?? []) listener({}, ...args);
  };
  const electron = {
    contextBridge: {
      exposeInMainWorld: (key: string, api: unknown) => {
        world[key] = api;
      },
    },
    ipcRenderer: {
      invoke: (channel: string, ...args: unknown[]) =>
        (world.invokeMain as (channel: string, args: unknown[]) => Promise<unknown>)(channel, args),
      on: (channel: string, listener: Listener) => {
        listeners.set(channel, (listeners.get(channel) ?? new Set()).add(listener));
      },
      off: (channel: string, listener: Listener) => {
        listeners.get(channel)?.delete(listener);
      },
    },
    webUtils: { getPathForFile: () => '' },
  };
  const require = (name: string) => {
    if (name !== 'electron') throw new Error(`module not found: ${name}`);
    return electron;
  };
  return require;
}
