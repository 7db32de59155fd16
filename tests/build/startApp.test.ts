// A start from the sources: Electron is fetched once, and whatever keeps its window away, the app opens in the browser.
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { builtApp } from '../../build/builtApp.ts';
import { until } from '../kit/desktopRig.ts';
import { ElectronMirror, houseWithElectron } from '../kit/electronMirror.ts';
import { testFolder } from '../kit/folder.ts';

const repository = join(import.meta.dirname, '../..');
const TIME_TO_BUILD = 300_000;

/** A program in Electron's place that says what it is asked to run, and ends as it is told to. */
const ELECTRON = `#!/usr/bin/env node
console.log('desktop', ...process.argv.slice(2));
const [how] = (process.env.ENDS ?? 'shown 0').split(' ');
if (how === 'shown') process.send('window-shown', () => end());
else end();
function end() { process.exit(Number(process.env.ENDS?.split(' ')[1] ?? 0)); }
`;
/** What opens links on this system, in their place. */
const OPENER = `#!/bin/sh\necho "$1" > "$OPENED"\n`;

const folder = testFolder();
const mirror = new ElectronMirror(ELECTRON);
let address: string;
let app: string;
let house: string;
let started: ChildProcess | undefined;
let count = 0;

beforeAll(async () => {
  address = await mirror.open();
  app = await builtApp(() => undefined);
  mkdirSync(join(folder.path, 'bin'));
  for (const name of ['xdg-open', 'open']) {
    writeFileSync(join(folder.path, 'bin', name), OPENER, { mode: 0o755 });
  }
}, TIME_TO_BUILD);
afterAll(() => mirror.close());
beforeEach(() => {
  count += 1;
  house = join(folder.path, `house-${count}`);
  houseWithElectron(house);
  mirror.manner = 'whole';
  mirror.asked.length = 0;
});
afterEach(() => {
  // With whatever it has started.
  if (started?.exitCode === null && started.pid !== undefined) process.kill(-started.pid, 'SIGKILL');
});

/** Starts; gives what it has said so far, and its end. */
function start(args: readonly string[] = [], more: Readonly<Record<string, string | undefined>> = {}) {
  const env: NodeJS.ProcessEnv = {
    ...process.env,
    DISPLAY: ':99',
    WAYLAND_DISPLAY: undefined,
    HTTP_PROXY: undefined,
    http_proxy: undefined,
    HTTPS_PROXY: undefined,
    https_proxy: undefined,
    ELECTRON_MIRROR: address,
    electron_config_cache: join(house, 'cache'),
    electron_use_remote_checksums: '1',
    TURNLAY_HOME: join(house, 'home'),
    OPENED: join(house, 'opened'),
    PATH: `${join(folder.path, 'bin')}${delimiter}${process.env.PATH}`,
    ...more,
  };
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', join(repository, 'tests/kit/startIn.ts'), house, ...args],
    { cwd: repository, env, stdio: ['ignore', 'pipe', 'inherit'], detached: true },
  );
  started = child;
  const said = { text: '' };
  child.stdout.on('data', (chunk: Buffer) => {
    said.text += chunk.toString('utf8');
  });
  const ended = new Promise<number | null>((resolve) => child.on('close', (code) => resolve(code)));
  return { said, ended, child };
}

/** Waits for the browser to be opened, looks at the page there, and ends the app; gives the lines that were said. */
async function seenInBrowser({ said, ended, child }: ReturnType<typeof start>): Promise<string[]> {
  await until(() => existsSync(join(house, 'opened')) && said.text.includes('#token='));
  const link = readFileSync(join(house, 'opened'), 'utf8').trim();
  expect(said.text).toContain(`Turnlay is open at ${link}\n`);
  expect(await (await fetch(link)).text()).toContain('<div id="window">');
  child.kill('SIGTERM');
  expect(await ended).toBe(0);
  return said.text.trim().split('\n');
}

const OPEN = expect.stringMatching(/^Turnlay is open at http:\/\/127\.0\.0\.1:\d+\/#token=\S+$/);
const told = (because: string) =>
  `${because}, so the app opens in your browser; npm start -- --browser goes there at once.`;

describe('a start', () => {
  it('fetches Electron with progress, opens the desktop window, and fetches nothing the next time', async () => {
    const first = start(['job.turnlay']);
    expect(await first.ended).toBe(0);
    const lines = first.said.text.trim().split('\n');
    expect(lines.at(-1)).toBe(`desktop ${join(app, 'host/main.cjs')} job.turnlay`);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines.slice(0, -1)) {
      expect(line).toMatch(/^Fetching Electron 45\.5\.0 for the desktop window, this once: \d+ of \d+ MB$/);
    }
    mirror.asked.length = 0;
    const second = start();
    expect(await second.ended).toBe(0);
    expect(second.said.text).toBe(`desktop ${join(app, 'host/main.cjs')}\n`);
    expect(mirror.asked).toEqual([]);
  });

  it('opens the app in the browser with one sentence where Electron cannot be had', async () => {
    mirror.manner = 'missing';
    expect(await seenInBrowser(start())).toEqual([
      told('Electron could not be fetched (the server answers 404 Not Found)'),
      OPEN,
    ]);
  });

  it('opens the app in the browser where Electron ends before its window is there', async () => {
    await start().ended;
    expect(await seenInBrowser(start([], { ENDS: 'early 5' }))).toEqual([
      expect.stringMatching(/^desktop /),
      told('Electron ended before its window was there (code 5)'),
      OPEN,
    ]);
  });

  it('ends as Electron ends once its window was there', async () => {
    const { said, ended } = start([], { ENDS: 'shown 7' });
    expect(await ended).toBe(7);
    expect(said.text).not.toContain('browser');
  });

  it('goes to the browser at once when it is asked to, and asks no server', async () => {
    expect(await seenInBrowser(start(['--browser']))).toEqual([OPEN]);
    expect(mirror.asked).toEqual([]);
  });

  it('that is stopped while it fetches ends, and leaves nothing behind', async () => {
    mirror.manner = 'stalling';
    const { said, ended, child } = start();
    await until(() => said.text.includes('Fetching'));
    child.kill('SIGINT');
    expect(await ended).toBe(1);
    expect(existsSync(join(house, 'node_modules/electron/dist'))).toBe(false);
    expect(said.text).not.toContain('browser');
  });

  if (process.platform === 'linux') {
    it('fetches nothing where there is no screen', async () => {
      expect(await seenInBrowser(start([], { DISPLAY: undefined }))).toEqual([
        told('There is no screen here for a desktop window'),
        OPEN,
      ]);
      expect(mirror.asked).toEqual([]);
    });
  }
});
