// Starts the program for a browser of this machine: opens the host and its server, and says where the window is.
import { spawn } from 'node:child_process';
import { homedir } from 'node:os';
import { resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { homeOf } from '../about/home.ts';
import { VERSION } from '../about/version.ts';
import { openLoopback } from './openLoopback.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    /** Opens no browser: the link is only said. */
    'link-only': { type: 'boolean', default: false },
  },
});

const loopback = await openLoopback({
  home: homeOf({ platform: process.platform, env: process.env, userHome: homedir() }),
  folder: fileURLToPath(new URL('../renderer', import.meta.url)),
  version: VERSION,
  asked: positionals.map((path) => resolve(path)),
});

/** Ends once, in good order, however often it is asked for. */
let isEnding = false;
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  process.on(signal, () => {
    if (isEnding) return;
    isEnding = true;
    loopback.end().then(() => process.exit(0));
  });
}

/** Says the link, and opens it where a browser can be opened. */
function offer(): void {
  const link = loopback.newLink();
  process.stdout.write(`Turnlay is open at ${link}\n`);
  if (!values['link-only']) openBrowser(link);
}

offer();
if (process.stdin.isTTY) {
  process.stdout.write('The link works once. Press Enter for a new one, Control+C to end.\n');
  createInterface({ input: process.stdin }).on('line', offer);
}

/** Opens the link as this system opens links; where that fails the person opens it. */
function openBrowser(link: string): void {
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open', link]
      : process.platform === 'win32'
        ? ['rundll32', 'url.dll,FileProtocolHandler', link]
        : ['xdg-open', link];
  if (command === undefined) return;
  spawn(command, args, { stdio: 'ignore', detached: true })
    .on('error', () => undefined)
    .unref();
}
