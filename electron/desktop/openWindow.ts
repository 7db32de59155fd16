// The window of the desktop shell: shut off from Node, opened where it was, closed only when nothing is left to save.
import { BrowserWindow, dialog } from 'electron';
import { HOME } from './appScheme.ts';
import type { WindowState } from './windowState.ts';

/** Neutral grey of middle lightness: what is seen for a moment before the page is there. */
const BEFORE_PAGE = '#808080';

/** A page that goes down again so soon is not loaded once more, in ms. */
const MIN_LIFE_MS = 10_000;

export interface OpenedWindow {
  readonly window: BrowserWindow;
  /** Loads the page. */
  load(): Promise<void>;
  /** Closes without asking the page. */
  close(): void;
}

/** Makes the window, still without its page. `askPage` tells the page that it is about to be closed; `false` where there is no page to ask. */
export async function openWindow(
  state: WindowState,
  preload: string,
  askPage: () => boolean,
): Promise<OpenedWindow> {
  const { at, size, maximized } = await state.read();
  const window = new BrowserWindow({
    ...at,
    ...size,
    minWidth: 800,
    minHeight: 600,
    show: false,
    title: 'Turnlay',
    backgroundColor: BEFORE_PAGE,
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  });
  let mayClose = false;
  let hangs = false;
  const close = () => {
    mayClose = true;
    window.close();
  };
  window.once('ready-to-show', () => {
    if (maximized) window.maximize();
    window.show();
  });
  window.on('page-title-updated', (event) => event.preventDefault());
  window.on('unresponsive', () => {
    hangs = true;
  });
  window.on('responsive', () => {
    hangs = false;
  });
  window.on('close', (event) => {
    state.remember(window).catch(() => undefined);
    const answers = !hangs && !window.webContents.isCrashed();
    if (!mayClose && answers && askPage()) event.preventDefault();
  });
  const load = () => window.loadURL(HOME);
  let wentDown = Number.NEGATIVE_INFINITY;
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit') return;
    const now = Date.now();
    if (now - wentDown < MIN_LIFE_MS) {
      dialog.showErrorBox(
        'Turnlay',
        'The window goes down again and again. What was kept comes back with the next start.',
      );
      close();
    } else {
      wentDown = now;
      load().catch(() => undefined);
    }
  });
  return { window, load, close };
}
