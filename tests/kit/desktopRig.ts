// The desktop shell as it is built, started on the stand-in, with a person's folder of its own.
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { builtApp } from '../../build/builtApp.ts';
import type { Host } from '../../shared/contract/host.ts';
import { StandIn } from './electronStandIn/standIn.ts';
import type { Window } from './electronStandIn/window.ts';

/** So long a build may take, in ms, on a machine that has much else to do. */
export const TIME_TO_BUILD = 600_000;

/** The built host beside a page of nothing; gives the folder and a way to be rid of it. */
export async function buildDesktop(): Promise<{ readonly app: string; drop(): void }> {
  const app = mkdtempSync(join(tmpdir(), 'turnlay-built-'));
  mkdirSync(join(app, 'renderer'));
  writeFileSync(join(app, 'renderer', 'index.html'), '<!doctype html>');
  cpSync(join(await builtApp(() => undefined), 'host'), join(app, 'host'), { recursive: true });
  return { app, drop: () => rmSync(app, { recursive: true, force: true }) };
}

export interface DesktopRig {
  readonly electron: StandIn;
  readonly window: Window;
  /** The host as the page has it: through the real preload and the real main program. */
  readonly host: Host;
  /** Quits, and waits until everything is in order. */
  quit(): Promise<void>;
}

/** Starts the built main program for the person of this folder. `prepare` sets the stand-in up before. */
export async function startDesktop(
  app: string,
  folder: string,
  prepare: (electron: StandIn) => void = () => undefined,
  args: readonly string[] = [],
): Promise<DesktopRig> {
  const electron = new StandIn();
  prepare(electron);
  const { argv } = process;
  process.argv = ['electron', join(app, 'host/main.cjs'), ...args];
  process.env.TURNLAY_HOME = join(folder, 'home');
  try {
    electron.run(join(app, 'host/main.cjs'));
  } finally {
    process.argv = argv;
    delete process.env.TURNLAY_HOME;
  }
  await until(() => electron.quitted || electron.windows[0]?.webContents.world.turnlay !== undefined);
  const [window] = electron.windows;
  if (window === undefined) throw new Error('The desktop shell opened no window');
  return {
    electron,
    window,
    host: window.webContents.world.turnlay as Host,
    quit: async () => {
      window.webContents.crashed = true;
      electron.quit();
      await until(() => electron.quitted);
    },
  };
}

/** Waits until something is so. Only what hangs takes longer than this. */
export async function until(isSo: () => boolean): Promise<void> {
  for (let waited = 0; !isSo(); waited += 10) {
    if (waited > 100_000) throw new Error(`It never was: ${isSo}`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}
