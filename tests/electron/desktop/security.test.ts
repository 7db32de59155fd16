// The desktop window is shut off: from Node, from the network, from other pages, and from whoever is not the window.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { POLICY } from '../../../electron/serve/policy.ts';
import { CALLS } from '../../../shared/contract/calls.ts';
import { callChannel, DROPPED_CHANNEL } from '../../../shared/contract/channels.ts';
import { buildDesktop, type DesktopRig, startDesktop, TIME_TO_BUILD } from '../../kit/desktopRig.ts';
import { Contents } from '../../kit/electronStandIn/contents.ts';

let built: Awaited<ReturnType<typeof buildDesktop>>;
let folder: string;
let rig: DesktopRig;
beforeAll(async () => {
  built = await buildDesktop();
  folder = mkdtempSync(join(tmpdir(), 'turnlay-desk-'));
  rig = await startDesktop(built.app, folder);
}, TIME_TO_BUILD);
afterAll(async () => {
  await rig.quit();
  built.drop();
  rmSync(folder, { recursive: true });
});

const HOME = 'app://turnlay/';

describe('the window', () => {
  it('has a sandboxed page in a world of its own, without Node, in one process of the lowest rights', () => {
    expect(rig.electron.sandboxed).toBe(true);
    expect(rig.window.options.webPreferences).toEqual({
      preload: join(built.app, 'host/preload.cjs'),
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
    });
  });

  it('is loaded from the program’s own scheme, and everything there carries the policy', async () => {
    expect(rig.window.webContents.url).toBe(HOME);
    expect(rig.electron.schemes).toEqual([
      {
        scheme: 'app',
        privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true, codeCache: true },
      },
    ]);
    for (const path of ['', 'index.html', 'nothing.js', `art/${'0'.repeat(32)}`]) {
      const { headers } = await rig.electron.fetch(HOME + path);
      expect(headers.get('content-security-policy')).toBe(POLICY);
    }
    expect((await rig.electron.fetch('app://elsewhere/index.html')).status).toBe(404);
    expect((await rig.electron.fetch(`${HOME}%2e%2e/host/main.cjs`)).status).toBe(404);
  });

  it('gives its page the calls of the contract, frozen, and nothing else', () => {
    const { world } = rig.window.webContents;
    expect(Object.keys(world)).toEqual(['turnlay']);
    const given = world.turnlay as Record<string, Record<string, unknown>>;
    expect(Object.keys(given).sort()).toEqual([...Object.keys(CALLS), 'dropped', 'on'].sort());
    for (const [group, calls] of Object.entries(CALLS)) {
      expect(Object.keys(given[group] ?? {})).toEqual(Object.keys(calls));
      expect(Object.isFrozen(given[group])).toBe(true);
    }
    expect(Object.isFrozen(given)).toBe(true);
  });

  it('has a small preload that needs nothing but Electron', () => {
    const preload = readFileSync(join(built.app, 'host/preload.cjs'), 'utf8');
    expect([...preload.matchAll(/require\(([^)]*)\)/g)].map(([, name]) => name)).toEqual(['"electron"']);
    expect(preload).not.toMatch(/zod|readFile|process\./i);
    expect(preload.length).toBeLessThan(10_000);
  });

  it.each([
    'https://evil.example/',
    'file:///etc/passwd',
    'app://elsewhere/',
    'app://turnlay/other.html',
    'app://turnlay.evil.example/',
    'data:text/html,x',
    'javascript:1',
  ])('does not go to %s', (url) => {
    expect(rig.window.webContents.navigate(url)).toBe(false);
  });

  it('may be loaded anew, but not within a frame of itself', () => {
    expect(rig.window.webContents.navigate(HOME)).toBe(true);
    expect(rig.window.webContents.navigate(HOME, false)).toBe(false);
  });

  it('opens no other window, holds no foreign view, follows no redirection', () => {
    const { webContents: contents } = rig.window;
    expect(contents.openHandler?.({ url: HOME })).toEqual({ action: 'deny' });
    for (const event of ['will-attach-webview', 'will-redirect']) {
      let refused = false;
      contents.emit(event, { preventDefault: () => (refused = true) }, {});
      expect(refused).toBe(true);
    }
  });

  it('is granted no permission and no device', () => {
    const { permission, check, device } = rig.electron.guards;
    for (const what of [
      'media',
      'geolocation',
      'clipboard-read',
      'notifications',
      'fileSystem',
      'openExternal',
    ]) {
      let granted: boolean | undefined;
      permission?.({}, what, (decided) => {
        granted = decided;
      });
      expect(granted).toBe(false);
    }
    expect([check?.(), device?.()]).toEqual([false, false]);
  });

  it.each([
    ['https://evil.example/x.js', true],
    ['http://127.0.0.1:80/', true],
    ['ws://127.0.0.1/', true],
    ['file:///etc/passwd', true],
    ['app://elsewhere/x', true],
    ['app://turnlay.evil.example/', true],
    ['app://turnlay/index.js', false],
    ['blob:app://turnlay/1', false],
    ['data:image/png;base64,', false],
  ])('asked to fetch %s: refused is %s', (url, refused) => {
    let cancel: boolean | undefined;
    rig.electron.guards.request?.({ url }, (answer) => {
      cancel = answer.cancel;
    });
    expect(cancel).toBe(refused);
  });
});

describe('a call', () => {
  const channel = callChannel('settings', 'read');

  it('is answered to the page of the window', async () => {
    expect(await rig.host.settings.read()).toMatchObject({ units: 'in' });
  });

  it.each([
    ['another address', { url: 'https://evil.example/', parent: null }],
    ['another page of ours', { url: 'app://turnlay/other.html', parent: null }],
    ['a frame in the page', { url: HOME, parent: { url: HOME, parent: null } }],
    ['a frame that is gone', null],
  ])('from %s is refused', async (_who, frame) => {
    const { webContents } = rig.window;
    await expect(webContents.invoke(channel, [], frame)).rejects.toThrow('Only the window itself may ask.');
    await expect(webContents.invoke(DROPPED_CHANNEL, ['/etc/passwd'], frame)).rejects.toThrow(
      'Only the window itself may ask.',
    );
  });

  it('from another page than the window’s is refused, whatever its address', async () => {
    const stranger = new Contents(rig.electron, undefined);
    await expect(stranger.invoke(channel, [], { url: HOME, parent: null })).rejects.toThrow(
      'Only the window itself may ask.',
    );
  });

  it('with a request that the contract does not allow is refused', async () => {
    await expect(rig.host.settings.change({ units: 'cubit' as 'in' })).rejects.toThrow(
      "Error invoking remote method 'turnlay:call:settings.change'",
    );
  });

  it('has a channel of its own; there is none to call or to send at will', () => {
    const channels = Object.entries(CALLS).flatMap(([group, calls]) =>
      Object.keys(calls).map((call) => callChannel(group as keyof typeof CALLS, call)),
    );
    expect([...rig.electron.handlers.keys()].sort()).toEqual([...channels, DROPPED_CHANNEL].sort());
  });

  it('cannot take in a file that was not dropped', async () => {
    const madeUp = new File(['%PDF-1.7'], '/etc/passwd');
    await expect(rig.host.dropped(madeUp)).rejects.toThrow('Nothing was dropped that has a path.');
  });

  it('cannot listen to what is no event', () => {
    expect(() => rig.host.on('quit' as 'closing', () => undefined)).toThrow('There is no event quit.');
  });
});
