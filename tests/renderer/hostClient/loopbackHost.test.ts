// The window in a browser and the program for it, as they are built: the real client speaks to the real process.
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { joinLoopback } from '../../../renderer/hostClient/loopbackHost.ts';
import type { FolderEntry } from '../../../shared/contract/handles.ts';
import type { Host } from '../../../shared/contract/host.ts';
import type { SendNews } from '../../../shared/contract/sending.ts';
import { type HostProcess, startHost } from '../../e2e/kit/hostProcess.ts';
import { buildDesktop, until } from '../../kit/desktopRig.ts';
import { testFolder } from '../../kit/folder.ts';
import { granted } from '../../kit/granted.ts';
import { putSupper, supperOf } from '../../kit/hostRig.ts';

const folder = testFolder();
let built: Awaited<ReturnType<typeof buildDesktop>>;
let program: HostProcess;
beforeAll(async () => {
  built = await buildDesktop();
  program = await startHost(built.app, folder.path);
});
afterAll(async () => {
  await program.kill();
  built.drop();
});
afterEach(() => vi.unstubAllGlobals());

/** What a browser gives a page: its address, a place for a session, and requests that say where they come from. */
function browse(link: string, kept = new Map<string, string>()): { readonly shown: () => string } {
  const address = new URL(link);
  const pageFetch = globalThis.fetch;
  let cookie = '';
  vi.stubGlobal('location', address);
  vi.stubGlobal('history', {
    replaceState: (_state: unknown, _title: string, to: string) => {
      address.hash = '';
      address.pathname = to;
    },
  });
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
  });
  vi.stubGlobal('addEventListener', () => undefined);
  vi.stubGlobal('fetch', async (path: string, options: RequestInit = {}) => {
    const headers = new Headers(options.headers);
    headers.set('cookie', cookie);
    if (options.method === 'POST') headers.set('origin', address.origin);
    const response = await pageFetch(new URL(path, address.origin), { ...options, headers });
    cookie = response.headers.get('set-cookie')?.split(';')[0] ?? cookie;
    return response;
  });
  return { shown: () => address.href };
}

const fileOf = (path: string, name: string): File => new File([readFileSync(path)], name);

describe('the window in a browser', () => {
  it('takes art in, lays it out, sends it, and shows the proof', async () => {
    const kept = new Map<string, string>();
    const page = browse(program.link, kept);
    const host: Host = joinLoopback();
    const news: SendNews[] = [];
    host.on('send', (told) => news.push(told));
    expect(await host.app.begin()).toMatchObject({ shell: 'browser', kept: [] });
    expect(page.shown()).not.toContain('token');

    await putSupper(join(folder.path, 'supper.pdf'));
    const dropped = granted(await host.dropped(fileOf(join(folder.path, 'supper.pdf'), 'Café & cards.pdf')));
    if (dropped.is !== 'art') throw new Error('No art');
    expect(dropped.art.name).toBe('Café & cards.pdf');
    const { job } = granted(await host.job.lay({ brief: supperOf(dropped.art.art) }));
    expect(job.arrangement).toHaveLength(4);

    mkdirSync(join(folder.path, 'rip'));
    expect(await host.choose.folder({ title: 'RIP' })).toEqual({ kind: 'no-dialog' });
    const { folders } = granted(await host.files.list({ show: 'none' }));
    const rip = folders.find((f: FolderEntry) => f.name === 'rip');
    const { send } = granted(await host.send.start({ job, folder: rip!.folder }));
    await until(() => news.some(({ state }) => state.at === 'done' || state.at === 'failed'));
    const state = granted(await host.send.state({ send }));
    expect(state).toMatchObject({ at: 'done', sent: { is: 'sent', proof: { findings: [] } } });
    expect(readdirSync(join(folder.path, 'rip'))).toHaveLength(1);
    const picture = state.at === 'done' ? state.sent.pictures[0]?.url : undefined;
    expect((await fetch(picture!)).headers.get('content-type')).toBe('image/png');

    // Loaded anew, the page has lost its token and keeps its session.
    vi.unstubAllGlobals();
    browse(new URL(program.link).origin, kept);
    expect(await joinLoopback().settings.read()).toMatchObject({ units: 'in' });
  }, 60_000);

  it('is told in words that its link is used up, or that it has none', async () => {
    browse(program.link);
    await expect(joinLoopback().settings.read()).rejects.toThrow('The link has been used already.');
    vi.unstubAllGlobals();
    browse(new URL(program.link).origin);
    const host = joinLoopback();
    let gone = 0;
    host.on('host-gone', () => {
      gone += 1;
    });
    await expect(host.settings.read()).rejects.toThrow('without the link that the program gave');
    expect(gone).toBe(1);
  });

  it('hears no more once it has stopped listening, and is told a mistake as an error', async () => {
    const other = await startHost(built.app, join(folder.path, 'other'));
    browse(other.link);
    const host = joinLoopback();
    await expect(host.settings.change({ units: 'cubit' as 'in' })).rejects.toThrow('settings.change');
    let heard = 0;
    const stop = host.on('host-gone', () => {
      heard += 1;
    });
    stop();
    let gone = 0;
    host.on('host-gone', () => {
      gone += 1;
    });
    await other.kill();
    await until(() => gone === 1);
    expect(heard).toBe(0);
    await expect(host.settings.read()).rejects.toThrow();
  });
});

describe('the program for a browser', () => {
  it('ends in good order when it is asked to, and says so by nothing but going', async () => {
    const own = join(folder.path, 'ends');
    const ending = await startHost(built.app, own);
    expect(readdirSync(join(own, '.turnlay', 'kept')).filter((n) => n.endsWith('.alive'))).toHaveLength(1);
    await ending.end();
    expect(readdirSync(join(own, '.turnlay', 'kept'))).toEqual([]);
  });

  it('refuses options that it does not know', async () => {
    const child: ChildProcess = spawn(
      process.execPath,
      [join(built.app, 'host/loopback.mjs'), '--port', '80'],
      {
        stdio: 'ignore',
      },
    );
    const code = await new Promise((resolve) => child.on('exit', resolve));
    expect(code).not.toBe(0);
  });
});
