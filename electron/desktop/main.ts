// The main program of the desktop shell: one instance, one window, and the host behind it.
import { homedir } from 'node:os';
import { join } from 'node:path';
import { app } from 'electron';
import { homeOf } from '../host/home.ts';
import { registerScheme } from './appScheme.ts';
import { jobsAmong } from './askedFiles.ts';
import { refuseNavigation } from './harden.ts';
import { type Desktop, runDesktop } from './runDesktop.ts';

const home = homeOf({ platform: process.platform, env: process.env, userHome: homedir() });
app.setName('Turnlay');
app.setPath('userData', join(home, 'desktop'));
app.enableSandbox();
registerScheme();
refuseNavigation(app);

if (app.requestSingleInstanceLock()) {
  let desktop: Desktop | undefined;
  /** Jobs that were asked for before there was anything to open them. */
  const early = [...jobsAmong(process.argv, process.cwd())];
  const open = (paths: readonly string[]) => {
    if (desktop === undefined) early.push(...paths);
    else desktop.askToOpen(paths);
  };
  // A Mac hands over the job of a double click in this way, also before the app is ready.
  app.on('open-file', (event, path) => {
    event.preventDefault();
    open([path]);
  });
  app.on('second-instance', (_event, argv, folder) => open(jobsAmong(argv, folder)));
  app
    .whenReady()
    .then(async () => {
      desktop = await runDesktop({ home, here: __dirname, asked: early.splice(0) });
      if (early.length > 0) desktop.askToOpen(early);
    })
    .catch((error: unknown) => {
      process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
      app.exit(1);
    });
} else {
  app.quit();
}
