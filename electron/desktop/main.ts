// The main program of the desktop shell: one instance, one window, and the host behind it.
import { homedir } from 'node:os';
import { join } from 'node:path';
import { app } from 'electron';
import { homeOf } from '../about/home.ts';
import { isJobLink, LINK_SCHEME } from '../host/jobLink.ts';
import { registerScheme } from './appScheme.ts';
import { askedAmong } from './askedFiles.ts';
import { refuseNavigation } from './harden.ts';
import { type Desktop, runDesktop } from './runDesktop.ts';

const home = homeOf({ platform: process.platform, env: process.env, userHome: homedir() });
app.setName('Turnlay');
app.setPath('userData', join(home, 'desktop'));
app.enableSandbox();
registerScheme();
refuseNavigation(app);
// Only the packed app: started from its sources, the system would note a bare Electron for these links.
if (app.isPackaged) app.setAsDefaultProtocolClient(LINK_SCHEME);

if (app.requestSingleInstanceLock()) {
  let desktop: Desktop | undefined;
  /** Jobs, and links to them, that were asked for before there was anything to open them. */
  const early = [...askedAmong(process.argv, process.cwd())];
  const open = (asked: readonly string[]) => {
    if (desktop === undefined) early.push(...asked);
    else desktop.askToOpen(asked);
  };
  // A Mac hands over the job of a double click and the code of a run sheet so, also before the app is ready.
  app.on('open-file', (event, path) => {
    event.preventDefault();
    open([path]);
  });
  app.on('open-url', (event, link) => {
    event.preventDefault();
    if (isJobLink(link)) open([link]);
  });
  app.on('second-instance', (_event, argv, folder) => open(askedAmong(argv, folder)));
  app
    .whenReady()
    .then(async () => {
      const files = early.filter((asked) => !isJobLink(asked));
      early.splice(0, early.length, ...early.filter(isJobLink));
      desktop = await runDesktop({ home, here: __dirname, asked: files });
      if (early.length > 0) desktop.askToOpen(early);
    })
    .catch((error: unknown) => {
      process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
      app.exit(1);
    });
} else {
  app.quit();
}
