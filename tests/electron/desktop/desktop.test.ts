// The desktop shell at work: every call of the contract through the real preload and main program, and its own manners.
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { JobFiles } from '../../../electron/disk/jobFiles.ts';
import { fingerprintOf } from '../../../electron/job/fingerprint.ts';
import { CALLS, type Group } from '../../../shared/contract/calls.ts';
import { callChannel } from '../../../shared/contract/channels.ts';
import type { Events } from '../../../shared/contract/events.ts';
import type { FileEntry, FileHandle, FolderHandle } from '../../../shared/contract/handles.ts';
import type { SendNews } from '../../../shared/contract/sending.ts';
import { planRun } from '../../../shared/run/plan.ts';
import { linkTo } from '../../../shared/runSheet/jobCode.ts';
import { buildDesktop, type DesktopRig, startDesktop, TIME_TO_BUILD, until } from '../../kit/desktopRig.ts';
import { StandIn } from '../../kit/electronStandIn/standIn.ts';
import { granted } from '../../kit/granted.ts';
import { codeOf, putSupper, supperOf } from '../../kit/hostRig.ts';

let built: Awaited<ReturnType<typeof buildDesktop>>;
beforeAll(async () => {
  built = await buildDesktop();
}, TIME_TO_BUILD);
afterAll(() => built.drop());

let folder: string;
let rig: DesktopRig;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'turnlay-desk-'));
});
afterEach(async () => {
  if (!rig.electron.quitted) await rig.quit();
  rmSync(folder, { recursive: true });
});

const at = (...names: string[]) => join(folder, ...names);
const start = async (prepare?: (electron: StandIn) => void, args?: readonly string[]) => {
  rig = await startDesktop(built.app, folder, prepare, args);
  return rig;
};

describe('every call of the contract', () => {
  it('is answered through the real preload and the real main program', async () => {
    const { host, electron, window } = await start();
    const news: SendNews[] = [];
    host.on('send', (told) => news.push(told));
    expect(await host.app.begin()).toMatchObject({ shell: 'desktop', kept: [], recents: [], asked: [] });

    // The art is dropped, a job laid out and saved, where the dialogs of the system say.
    await putSupper(at('supper.pdf'));
    const file = new File([], 'supper.pdf');
    electron.paths.set(file, at('supper.pdf'));
    const dropped = granted(await host.dropped(file));
    if (dropped.is !== 'art') throw new Error('No art');
    const { art } = dropped.art;
    expect(granted(await host.art.look({ art })).sha256).toBe(dropped.art.sha256);
    const asked = { art, page: 1, trim: { w: 360, h: 504 }, bleed: 9 };
    expect(granted(await host.art.findTrim(asked)).trim).toEqual({ x: 9, y: 9, w: 360, h: 504 });
    const laid = granted(await host.job.lay({ brief: supperOf(art) }));
    expect(laid.job.arrangement).toHaveLength(4);
    expect(granted(await host.art.check({ job: laid.job })).map((a) => a.state)).toEqual(['as-laid-out']);

    electron.save = { canceled: false, filePath: at('supper') };
    const place = await host.choose.newFile({ name: 'Harvest supper' });
    expect(electron.dialogs.at(-1)).toMatchObject({
      kind: 'save',
      options: { defaultPath: 'Harvest supper.turnlay', filters: [{ extensions: ['turnlay'] }] },
    });
    if (place.kind !== 'chosen') throw new Error('No place was chosen');
    expect(place.chosen.name).toBe('supper.turnlay');
    granted(await host.job.keep({ job: laid.job, file: place.chosen.file }));
    granted(await host.job.save({ file: place.chosen.file, job: laid.job }));
    expect((await host.recents.list()).map((r) => r.title)).toEqual(['Harvest supper']);
    expect(
      await host.app.show({ title: 'Harvest supper', unsaved: true, disabled: [], labels: {} }),
    ).toBeNull();
    expect([window.title, window.edited]).toEqual(['• Harvest supper – Turnlay', true]);

    // It is opened again, kept, and sent.
    electron.open = { canceled: false, filePaths: [at('supper.turnlay')] };
    const chosen = await host.choose.files({ kind: 'job', many: false });
    if (chosen.kind !== 'chosen') throw new Error('No job was chosen');
    const opened = granted(await host.job.open({ file: chosen.chosen[0]!.file }));
    electron.open = { canceled: false, filePaths: [at('rip')] };
    mkdirSync(at('rip'));
    const rip = await host.choose.folder({ title: 'The folder of the RIP' });
    expect(electron.dialogs.at(-1)?.options).toMatchObject({
      title: 'The folder of the RIP',
      properties: ['openDirectory', 'createDirectory'],
    });
    if (rip.kind !== 'chosen') throw new Error('No folder was chosen');
    const { folder: into } = rip.chosen;
    expect(granted(await host.settings.change({ ripFolder: into })).ripFolder?.place).toBe(at('rip'));
    expect((await host.settings.read()).ripFolder?.folder).toBe(into);
    expect(granted(await host.settings.takeBack()).ripFolder?.place).toBe(at('rip'));
    expect(granted(await host.send.plan({ job: opened.job, folder: into })).files).toHaveLength(1);
    const sending = granted(await host.send.start({ job: opened.job, folder: into }));
    await until(() => news.some(({ state }) => state.at === 'done'));
    const done = granted(await host.send.state(sending));
    if (done.at !== 'done') throw new Error(JSON.stringify(done));
    expect(done.sent).toMatchObject({ is: 'sent', proof: { findings: [] } });
    expect(readdirSync(at('rip'))).toHaveLength(1);
    const picture = await electron.fetch(`app://turnlay${done.sent.pictures[0]?.url}`);
    expect([picture.status, picture.headers.get('content-type')]).toEqual([200, 'image/png']);
    const bytes = await electron.fetch(`app://turnlay/art/${art}`);
    expect(Buffer.from(await bytes.arrayBuffer())).toEqual(readFileSync(at('supper.pdf')));
    const proving = granted(await host.send.prove({ job: opened.job, folder: into }));
    granted(await host.send.cancel(proving));
    await until(() => news.some(({ send, state }) => send === proving.send && state.at !== 'under-way'));

    // It is planned with the studio's library, which goes out to others and comes back.
    const library = await host.library.read();
    expect(granted(await host.library.change({ library })).printers).toHaveLength(3);
    expect(granted(await host.library.takeBack())).toEqual(library);
    const written = granted(await host.library.export({ folder: into, name: 'studio' }));
    expect(granted(await host.library.import({ file: written.file })).currency).toBe(library.currency);
    const inks = granted(await host.ink.coverage({ job: opened.job }));
    expect(inks.map(({ face }) => face)).toEqual(['front', 'back']);
    expect(inks.every(({ coverage }) => coverage.grey > 0 && coverage.grey < 1)).toBe(true);
    const [piece] = opened.job.brief.pieces;
    const twoDesigns = { ...opened.job.brief, pieces: [piece!, { ...piece!, name: 'Other', quantity: 40 }] };
    const ganged = await host.gang.solve({ brief: twoDesigns, sheetCost: 1, formCost: 5, seconds: 5 });
    expect(granted(ganged).pieces.map(({ leftOver }) => leftOver >= 0)).toEqual([true, true]);
    expect(await host.gang.stop()).toBeNull();

    // Its papers are written, and its run is counted.
    const { file: jobFile } = chosen.chosen[0]!;
    expect(
      granted(await host.ticket.write({ job: opened.job, folder: into, file: jobFile })).names,
    ).toContain('harvest-supper_run-sheet.pdf');
    granted(await host.run.record({ file: jobFile, event: { kind: 'begun', plan: planRun(opened.job) } }));
    granted(await host.run.record({ file: jobFile, event: { kind: 'loaded', sheets: 33 } }));
    expect(granted(await host.run.read({ file: jobFile })).book.runs).toHaveLength(1);
    expect(codeOf(await host.run.packingSlip({ file: jobFile, job: opened.job, delivery: 2 }))).toBe(
      'count-refused',
    );
    expect(await host.run.all()).toHaveLength(1);

    // Kept jobs are taken up or let go.
    granted(await host.job.keep({ job: opened.job }));
    const [kept] = (await host.app.begin()).kept;
    expect(granted(await host.job.takeUp({ kept: kept!.kept })).unsaved).toBe(true);
    granted(await host.job.letGo({ kept: kept!.kept }));
    expect(await host.job.close()).toBeNull();
    expect(await host.recents.forget({ file: chosen.chosen[0]!.file })).toEqual([]);

    // What a stranger's handle gets, and what the desktop does not offer.
    const stranger = 'f'.repeat(32);
    expect(codeOf(await host.job.layFile({ file: stranger as FileHandle }))).toBe('handle-unknown');
    expect(codeOf(await host.art.takeIn({ file: stranger as FileHandle }))).toBe('handle-unknown');
    expect(codeOf(await host.files.list({ show: 'art' }))).toBe('browsing-off');
    const typed = { folder: stranger as FolderHandle, name: 'a' };
    expect(codeOf(await host.files.newFile(typed))).toBe('browsing-off');
    expect(codeOf(await host.files.newFolder(typed))).toBe('browsing-off');
    expect(await host.app.close()).toBeNull();
    expect(window.destroyed).toBe(true);

    const all = (Object.keys(CALLS) as Group[]).flatMap((group) =>
      Object.keys(CALLS[group]).map((call) => callChannel(group, call)),
    );
    expect(all.filter((channel) => !electron.invoked.has(channel))).toEqual([]);
  }, 60_000);
});

describe('the window', () => {
  it('is shown when its page is ready, and comes back where and as it was', async () => {
    await start();
    expect(rig.window.visible).toBe(true);
    expect(rig.window.bounds).toMatchObject({ width: 1280, height: 800 });
    Object.assign(rig.window.bounds, { x: 300, y: 200, width: 1400, height: 900 });
    rig.window.maximized = true;
    await rig.quit();
    await start();
    expect(rig.window.bounds).toEqual({ x: 300, y: 200, width: 1400, height: 900 });
    expect(rig.window.maximized).toBe(true);
    await rig.quit();
    // The second screen is gone, and the window with it was on that.
    await start((electron) => {
      electron.displays = [{ workArea: { x: -1920, y: 0, width: 1920, height: 1080 } }];
    });
    expect(rig.window.bounds).toEqual({ x: 100, y: 100, width: 1400, height: 900 });
    await rig.quit();
    // Only the small screen of a laptop is left.
    await start((electron) => {
      electron.displays = [{ workArea: { x: 0, y: 0, width: 1366, height: 728 } }];
    });
    expect(rig.window.bounds).toEqual({ x: 100, y: 100, width: 1366, height: 728 });
  });

  it('is remembered on the disk by the time the program has ended', async () => {
    await start();
    // A slow disk: each place waits for the one before it to be written.
    for (let x = 1; x <= 200; x += 1) {
      rig.window.bounds.x = x;
      rig.window.emit('close', { preventDefault: () => undefined });
    }
    await rig.quit();
    expect(JSON.parse(readFileSync(at('home', 'window.json'), 'utf8'))).toMatchObject({ x: 200 });
    expect(readdirSync(at('home')).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('is told of to a starter that listens, and to nobody else', async () => {
    const told: unknown[] = [];
    const send = vi.spyOn(process, 'send').mockImplementation((message) => told.push(message) > 0);
    try {
      await start();
      await new Promise(setImmediate);
      expect(told).toEqual([]);
      await rig.quit();
      process.env.TURNLAY_STARTER_LISTENS = '1';
      await start();
      await until(() => told.length > 0);
      expect(told).toEqual(['window-shown']);
      expect(rig.window.visible).toBe(true);
    } finally {
      delete process.env.TURNLAY_STARTER_LISTENS;
      send.mockRestore();
    }
  });

  it('asks its page before it is closed, and closes when that has nothing left to save', async () => {
    const { host, window, electron } = await start();
    let asked = 0;
    host.on('closing', () => {
      asked += 1;
    });
    await host.app.begin();
    window.close();
    await until(() => asked === 1);
    expect(window.destroyed).toBe(false);
    electron.quit();
    await until(() => asked === 2);
    expect(electron.quitted).toBe(false);
    await host.app.close();
    expect(window.destroyed).toBe(true);
    await until(() => electron.quitted);
    expect(readdirSync(at('home', 'kept'))).toEqual([]);
  });

  it('closes at once when there is no page that could answer', async () => {
    const { window, host } = await start();
    window.close();
    expect(window.destroyed).toBe(true);
    await until(() => rig.electron.quitted);
    for (const trouble of ['unresponsive', 'crash']) {
      await start();
      await rig.host.app.begin();
      if (trouble === 'crash') rig.window.webContents.crashed = true;
      else rig.window.emit('unresponsive');
      rig.window.close();
      expect(rig.window.destroyed).toBe(true);
      await until(() => rig.electron.quitted);
    }
    expect(host).toBeDefined();
  });

  it('loads its page anew when that goes down, but not again and again', async () => {
    const { window, electron } = await start();
    const before = window.webContents.world.turnlay;
    window.webContents.crashed = true;
    window.webContents.emit('render-process-gone', {}, { reason: 'oom' });
    await until(() => window.webContents.world.turnlay !== before && !window.webContents.crashed);
    window.webContents.emit('render-process-gone', {}, { reason: 'crashed' });
    expect(electron.errors.join()).toContain('again and again');
    expect(window.destroyed).toBe(true);
  });
});

describe('jobs that the system hands over', () => {
  const names = (entries: readonly FileEntry[]) => entries.map((entry) => entry.name);

  it('at the start, before the window is there, and while it is there, all reach the window', async () => {
    await start(
      (electron) => {
        electron.app.on('web-contents-created', () => {
          electron.app.emit('open-file', { preventDefault: () => undefined }, at('early.turnlay'));
        });
      },
      [at('first.turnlay'), '--flag', at('not-a-job.txt')],
    );
    const told: FileEntry[] = [];
    rig.host.on('open-job', ({ file }: Events['open-job']) => told.push(file));
    const begun = await rig.host.app.begin();
    expect([...names(begun.asked), ...names(told)].sort()).toEqual(['early.turnlay', 'first.turnlay']);

    rig.window.minimized = true;
    const focused = rig.window.focused;
    rig.electron.app.emit('second-instance', {}, ['electron', 'main', 'later.turnlay'], folder);
    await until(() => told.some((file) => file.name === 'later.turnlay'));
    expect(told.find((file) => file.name === 'later.turnlay')?.place).toBe(folder);
    expect([rig.window.minimized, rig.window.focused > focused]).toEqual([false, true]);

    let prevented = false;
    const event = { preventDefault: () => (prevented = true) };
    rig.electron.app.emit('open-file', event, at('clicked.turnlay'));
    await until(() => told.some((file) => file.name === 'clicked.turnlay'));
    expect(prevented).toBe(true);
  });

  it('are opened by the code of their run sheet; a code of a job that is not known is told', async () => {
    await start((electron) => {
      electron.packed = true;
    });
    expect(rig.electron.protocolClient).toEqual(['turnlay']);
    const told: FileEntry[] = [];
    rig.host.on('open-job', ({ file }: Events['open-job']) => told.push(file));
    await rig.host.app.begin();
    await putSupper(at('supper.pdf'));
    const file = new File([], 'supper.pdf');
    rig.electron.paths.set(file, at('supper.pdf'));
    const dropped = granted(await rig.host.dropped(file));
    if (dropped.is !== 'art') throw new Error('No art');
    const { job } = granted(await rig.host.job.lay({ brief: supperOf(dropped.art.art) }));
    rig.electron.save = { canceled: false, filePath: at('supper.turnlay') };
    const place = await rig.host.choose.newFile({ name: 'supper' });
    if (place.kind !== 'chosen') throw new Error('No place was chosen');
    granted(await rig.host.job.save({ file: place.chosen.file, job }));

    const event = { preventDefault: () => undefined };
    const saved = granted(await new JobFiles().open(at('supper.turnlay')));
    rig.electron.app.emit(
      'open-url',
      event,
      linkTo({ file: 'supper.turnlay', fingerprint: fingerprintOf(saved) }),
    );
    await until(() => told.length === 1);
    expect(names(told)).toEqual(['supper.turnlay']);
    const stranger = linkTo({ file: 'stranger.turnlay', fingerprint: 'f'.repeat(64) });
    rig.electron.app.emit('second-instance', {}, ['electron', stranger], folder);
    await until(() => rig.electron.errors.length === 1);
    expect(rig.electron.errors).toEqual(['Open it from where it is saved.']);
  });

  it('may come as addresses of files, as desktops of Linux hand them over', async () => {
    const job = join(folder, 'Über 100 % job.turnlay');
    await start(undefined, [pathToFileURL(job).href, 'file://elsewhere/share/far.turnlay']);
    expect(rig.electron.protocolClient).toEqual([]);
    const begun = await rig.host.app.begin();
    expect(begun.asked.map(({ name, place }) => [name, place])).toEqual([['Über 100 % job.turnlay', folder]]);
  });

  it('go to the instance that is there already: a second one ends at once', async () => {
    await start();
    const second = new StandIn();
    second.locked = true;
    process.env.TURNLAY_HOME = at('second');
    second.run(join(built.app, 'host/main.cjs'));
    delete process.env.TURNLAY_HOME;
    expect(second.quitted).toBe(true);
    expect(second.windows).toEqual([]);
    expect(existsSync(at('second'))).toBe(false);
  });
});

describe('the native menu', () => {
  const item = (id: string) => rig.electron.menu.flatMap((m) => m.submenu ?? []).find((i) => i.id === id);

  it('does what is chosen in it, and stands as the window stands', async () => {
    await start();
    const actions: string[] = [];
    rig.host.on('action', ({ action }: Events['action']) => actions.push(action));
    await rig.host.app.begin();
    item('undo')?.click?.();
    await until(() => actions.length === 1);
    expect(actions).toEqual(['undo']);
    const labels = { undo: 'Undo Move piece' };
    await rig.host.app.show({ title: '', unsaved: false, disabled: ['redo'], labels });
    expect(item('undo')).toMatchObject({ label: 'Undo Move piece', enabled: true });
    expect(item('redo')).toMatchObject({ label: 'Redo', enabled: false });
    expect([rig.window.title, rig.window.edited]).toEqual(['Turnlay', false]);
  });

  it('stops telling a page that has stopped listening', async () => {
    await start();
    const actions: string[] = [];
    const stop = rig.host.on('action', ({ action }: Events['action']) => actions.push(action));
    stop();
    let later = 0;
    rig.host.on('action', () => {
      later += 1;
    });
    item('redo')?.click?.();
    await until(() => later === 1);
    expect(actions).toEqual([]);
  });
});
