// The Chromium browser that the window is tried in: the one that is named, Playwright's own, or one of this machine.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright';

const COMMANDS = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];

/** Where the programs lie that have no command of their name. */
const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** The path of a browser, or `undefined` where there is none. `TURNLAY_BROWSER` names one and is believed. */
export function findBrowser(): string | undefined {
  const named = process.env.TURNLAY_BROWSER;
  if (named !== undefined) return existsSync(named) ? named : undefined;
  const own = chromium.executablePath();
  return existsSync(own)
    ? own
    : (COMMANDS.map(pathOf).find((path) => path !== '') ?? PLACES.find(existsSync));
}

function pathOf(command: string): string {
  if (process.platform === 'win32') return '';
  return spawnSync('sh', ['-c', `command -v ${command}`], { encoding: 'utf8' }).stdout.trim();
}
