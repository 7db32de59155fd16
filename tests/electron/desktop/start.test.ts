// `npm start`: the app in the browser, and the real desktop shell where Electron's binary is on this machine.
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { _electron as electron } from 'playwright';
import { afterEach, describe, expect, it } from 'vitest';
import { builtApp } from '../../../build/builtApp.ts';
import { electronBinary } from '../../../build/electronBinary.ts';
import { POLICY } from '../../../electron/serve/policy.ts';
import type { Host } from '../../../shared/contract/host.ts';
import { TIME_TO_BUILD, until } from '../../kit/desktopRig.ts';
import { testFolder } from '../../kit/folder.ts';

const house = join(import.meta.dirname, '../../..');
const binary = electronBinary(house);
const folder = testFolder();

let started: ChildProcess | undefined;
afterEach(() => {
  if (started?.pid !== undefined) process.kill(-started.pid, 'SIGTERM');
});

async function startInBrowser(): Promise<void> {
  await builtApp(() => undefined);
  let said = '';
  started = spawn('npm', ['start', '--silent', '--', '--browser', '--link-only'], {
    cwd: house,
    env: { ...process.env, TURNLAY_HOME: join(folder.path, 'home') },
    detached: true,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  started.stdout?.on('data', (chunk: Buffer) => {
    said += chunk.toString('utf8');
  });
  await until(() => said.includes('#token='));
  expect(said.trim().split('\n')).toEqual([
    expect.stringMatching(/^Turnlay is open at http:\/\/127\.0\.0\.1:\d+\/#token=\S+$/),
  ]);
  const page = await fetch(said.slice(said.indexOf('http://')).trim());
  expect(page.status).toBe(200);
  expect(page.headers.get('content-security-policy')).toBe(POLICY);
  expect(await page.text()).toContain('<div id="window">');
}

async function startOnDesktop(executablePath: string): Promise<void> {
  const built = await builtApp(() => undefined);
  const shell = await electron.launch({
    executablePath,
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      ...(process.platform === 'linux' && !process.env.DISPLAY ? ['--ozone-platform=headless'] : []),
      join(built, 'host/main.cjs'),
    ],
    env: { ...(process.env as Record<string, string>), TURNLAY_HOME: join(folder.path, 'home') },
  });
  try {
    const page = await shell.firstWindow();
    const complaints: string[] = [];
    page.on('console', (said) => {
      if (said.type() === 'error' || said.type() === 'warning') complaints.push(said.text());
    });
    await page.reload();
    expect(page.url()).toBe('app://turnlay/');
    const seen = await page.evaluate(async () => {
      const { turnlay } = globalThis as unknown as { readonly turnlay: Host };
      const outside = await fetch('https://example.invalid/').then(
        () => 'reached',
        () => 'refused',
      );
      return { shell: (await turnlay.app.begin()).shell, node: typeof globalThis.process, outside };
    });
    expect(seen).toEqual({ shell: 'desktop', node: 'undefined', outside: 'refused' });
    const own = complaints.filter((said) => !said.includes('example.invalid'));
    expect(own).toEqual([]);
  } finally {
    await shell.close();
  }
}

describe('npm start', () => {
  it('opens the app in the browser when it is asked to', startInBrowser, TIME_TO_BUILD);

  // Only where Electron's binary is; elsewhere nothing is said of Electron itself.
  if (binary !== undefined) {
    it(
      'opens the window of the real Electron, shut off as it should be',
      () => startOnDesktop(binary),
      TIME_TO_BUILD,
    );
  }
});
