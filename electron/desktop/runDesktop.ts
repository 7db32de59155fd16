// The desktop shell once the app is ready: the host opened, its calls answered, its window shown, and all ended in order.
import { join } from 'node:path';
import { app, dialog } from 'electron';
import type { ActionName } from '../../shared/contract/actions.ts';
import { eventChannel } from '../../shared/contract/channels.ts';
import type { Tell } from '../../shared/contract/host.ts';
import { VERSION } from '../about/version.ts';
import { isJobLink } from '../host/jobLink.ts';
import { type OpenedHost, openHost } from '../host/openHost.ts';
import { serveWindow } from '../serve/serveWindow.ts';
import { answerWindow } from './answerWindow.ts';
import { serveScheme } from './appScheme.ts';
import { desktopShell } from './desktopShell.ts';
import { refuseRequests } from './harden.ts';
import { showMenu } from './menu.ts';
import { type OpenedWindow, openWindow } from './openWindow.ts';
import { tellStarter } from './tellStarter.ts';
import { WindowState } from './windowState.ts';

export interface DesktopOptions {
  readonly home: string;
  /** The jobs that were asked for so far, by their paths. */
  readonly asked: readonly string[];
  /** The folder of the bundled main program; the preload lies beside it, the window in `../renderer`. */
  readonly here: string;
}

export interface Desktop {
  /** Brings the window to the front and has it open these jobs, which are named by paths or by links. */
  askToOpen(asked: readonly string[]): void;
}

export async function runDesktop({ home, asked, here }: DesktopOptions): Promise<Desktop> {
  let opened: OpenedWindow | undefined;
  const windowNow = () => {
    if (opened === undefined) throw new Error('The window asks before it is there');
    return opened.window;
  };
  const tell: Tell = (event, told) => {
    if (opened !== undefined && !opened.window.isDestroyed()) {
      opened.window.webContents.send(eventChannel(event), told);
    }
  };
  const choose = (action: ActionName) => tell('action', { action });
  const shell = desktopShell(windowNow, choose, () => opened?.close());
  const host = await openHost({ home, shell, tell, version: VERSION, asked });
  const windowState = new WindowState(home);
  endInOrder(() => Promise.allSettled([host.end(), windowState.settled()]));
  refuseRequests();
  serveScheme(serveWindow(join(here, '../renderer'), host));
  answerWindow(host, () => opened?.window.webContents);
  showMenu({ disabled: [], labels: {} }, process.platform === 'darwin', choose);

  const askPage = () => {
    if (host.hasWindow()) tell('closing', null);
    return host.hasWindow();
  };
  opened = await openWindow(windowState, join(here, 'preload.cjs'), askPage);
  await opened.load();
  tellStarter();
  return {
    askToOpen: (asked) => {
      const window = windowNow();
      if (window.isDestroyed()) return;
      if (window.isMinimized()) window.restore();
      window.focus();
      for (const one of asked) {
        if (isJobLink(one)) void followLink(host, one);
        else host.askToOpen(one);
      }
    },
  };
}

/** Opens the job of a run sheet, or says why it cannot. */
async function followLink(host: OpenedHost, link: string): Promise<void> {
  const followed = await host.askForLink(link);
  if (!followed.ok) dialog.showErrorBox(followed.fault.message, followed.fault.remedy);
}

/** Quits once the window is closed, and not before everything has been put in order. */
function endInOrder(putInOrder: () => Promise<unknown>): void {
  let ended = false;
  app.on('window-all-closed', () => app.quit());
  app.on('will-quit', (event) => {
    if (ended) return;
    event.preventDefault();
    putInOrder().finally(() => {
      ended = true;
      app.quit();
    });
  });
}
