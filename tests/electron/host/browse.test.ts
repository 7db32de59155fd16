// The window's own chooser: what it is shown of folders, and what it may make in them.
import { existsSync, mkdirSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { listFolder, makeFolderIn, newFileIn } from '../../../electron/host/browse.ts';
import { Entries } from '../../../electron/host/entries.ts';
import type { FolderHandle } from '../../../shared/contract/handles.ts';
import { granted } from '../../kit/granted.ts';
import { codeOf, dropFolder, type HostRig, newFolder, openRig } from '../../kit/hostRig.ts';

let folder: string;
let rig: HostRig;
beforeEach(async () => {
  folder = newFolder();
  rig = await openRig(folder);
});
afterEach(async () => {
  await rig.end();
  dropFolder(folder);
});

const entries = new Entries();
const list = async (show: Parameters<typeof listFolder>[2]) =>
  granted(await listFolder(entries, folder, show));

describe('a folder that is listed', () => {
  it('shows its folders and the files of a kind, by name, and hides what is hidden', async () => {
    for (const name of ['Card 10.pdf', 'Card 9.PDF', 'a.turnlay', 'order.json', '.secret.pdf']) {
      writeFileSync(rig.at(name), 'x');
    }
    mkdirSync(rig.at('2026'));
    mkdirSync(rig.at('art.pdf'));
    symlinkSync(rig.at('nowhere'), rig.at('dangling.pdf'));
    const art = await list('art');
    expect(art.files.map((f) => f.name)).toEqual(['Card 9.PDF', 'Card 10.pdf']);
    expect(art.folders.map((f) => f.name)).toEqual(['2026', 'art.pdf', 'home']);
    expect(art.files[0]).toMatchObject({
      bytes: 1,
      changed: statSync(rig.at('Card 9.PDF')).mtime.toISOString(),
    });
    expect((await list('job')).files.map((f) => f.name)).toEqual(['a.turnlay']);
    expect((await list('brief')).files.map((f) => f.name)).toEqual(['order.json']);
    expect((await list('none')).files).toEqual([]);
  });

  it('leads up, until there is nothing above', async () => {
    const { up } = await list('none');
    expect(up?.place).toBe(rig.at('..'));
    expect(granted(await listFolder(entries, '/', 'none')).up).toBeUndefined();
  });

  it('begins with the person’s own folder, and goes where its handles lead and nowhere else', async () => {
    const first = granted(await rig.host.handlers.files.list({ show: 'none' }));
    expect(first.folder.place).toBe('~');
    const up = granted(await rig.host.handlers.files.list({ show: 'none', folder: first.up!.folder }));
    expect(up.folder.folder).toBe(first.up!.folder);
    for (const madeUp of ['/etc', '../..', '0'.repeat(32)]) {
      expect(
        codeOf(await rig.host.handlers.files.list({ show: 'none', folder: madeUp as FolderHandle })),
      ).toBe('handle-unknown');
    }
  });

  it('says so when it is gone', async () => {
    expect(codeOf(await listFolder(entries, rig.at('gone'), 'none'))).toBe('file-missing');
  });

  it('is not shown at all where the shell has dialogs of its own', async () => {
    const desktop = await openRig(folder, 'desktop');
    const handle = '0'.repeat(32) as FolderHandle;
    const { list: listing, newFile, newFolder: make } = desktop.host.handlers.files;
    expect(codeOf(await listing({ show: 'art' }))).toBe('browsing-off');
    expect(codeOf(await newFile({ folder: handle, name: 'a' }))).toBe('browsing-off');
    expect(codeOf(await make({ folder: handle, name: 'a' }))).toBe('browsing-off');
    await desktop.end();
  });
});

describe('a name that is typed', () => {
  it('becomes a job file with its ending', () => {
    expect(granted(newFileIn(entries, folder, 'Supper')).name).toBe('Supper.turnlay');
    expect(granted(newFileIn(entries, folder, 'Supper.Turnlay')).name).toBe('Supper.Turnlay');
  });

  it('becomes a folder, once', async () => {
    expect(granted(await makeFolderIn(entries, folder, 'To the RIP')).name).toBe('To the RIP');
    expect(existsSync(rig.at('To the RIP'))).toBe(true);
    expect(codeOf(await makeFolderIn(entries, folder, 'To the RIP'))).toBe('file-exists');
  });

  it.each(['', '   ', '..', '../up', 'a/b', 'a\\b', 'a:b', 'what?', 'tab\there', '.hidden'])(
    'is refused when it is %j',
    async (name) => {
      expect(codeOf(newFileIn(entries, folder, name))).toBe('name-unusable');
      expect(codeOf(await makeFolderIn(entries, folder, name))).toBe('name-unusable');
    },
  );

  it('is refused when it is an ending alone, which would be a hidden file or folder', async () => {
    expect(codeOf(newFileIn(entries, folder, '.turnlay'))).toBe('name-unusable');
    expect(codeOf(await makeFolderIn(entries, folder, '.turnlay'))).toBe('name-unusable');
    expect(existsSync(rig.at('.turnlay'))).toBe(false);
  });
});

describe('a dialog of the system', () => {
  it('gives what was chosen, nothing when cancelled, and says when there is none', async () => {
    const { files, newFile, folder: choose } = rig.host.handlers.choose;
    rig.choose = [rig.at('a.turnlay'), rig.at('b.turnlay')];
    expect(await files({ kind: 'job', many: true })).toMatchObject({
      kind: 'chosen',
      chosen: [{ name: 'a.turnlay', place: folder }, { name: 'b.turnlay' }],
    });
    expect(await newFile({ name: 'a' })).toMatchObject({ kind: 'chosen', chosen: { name: 'a.turnlay' } });
    expect(await choose({ title: 'RIP' })).toMatchObject({ kind: 'chosen', chosen: { name: 'a.turnlay' } });
    rig.choose = [];
    expect(await files({ kind: 'job', many: true })).toEqual({ kind: 'cancelled' });
    expect(await choose({ title: 'RIP' })).toEqual({ kind: 'cancelled' });
    rig.choose = 'no-dialog';
    expect(await newFile({ name: 'a' })).toEqual({ kind: 'no-dialog' });
  });
});
