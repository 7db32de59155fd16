// What the window may not do, whatever is loaded in it: go elsewhere, open windows, ask for devices, fetch from outside.
import { type App, type Session, session, type WebContents } from 'electron';
import { HOME } from './appScheme.ts';

/** Holds for every web contents that the app will ever have. Call it before the first window. */
export function refuseNavigation(app: App): void {
  app.on('web-contents-created', (_event, contents) => refuseNavigationOf(contents));
}

function refuseNavigationOf(contents: WebContents): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.on('will-frame-navigate', (event) => {
    // The page may only be loaded anew, and only as the window itself.
    if (event.url !== HOME || !event.isMainFrame) event.preventDefault();
  });
  contents.on('will-redirect', (event) => event.preventDefault());
}

/** Refuses every permission, device and connection. Call it when the app is ready. */
export function refuseRequests(of: Session = session.defaultSession): void {
  of.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  of.setPermissionCheckHandler(() => false);
  of.setDevicePermissionHandler(() => false);
  of.webRequest.onBeforeRequest((details, decide) => decide({ cancel: !isOwn(details.url) }));
}

/** The window's own address, what it makes in memory, and the tools for looking into it. */
function isOwn(url: string): boolean {
  return url.startsWith(HOME) || /^(blob|data|devtools):/.test(url);
}
