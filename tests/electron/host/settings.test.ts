// The settings: remembered, written whole, and patient with damage.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { FolderHandle } from '../../../shared/contract/handles.ts';
import { USUAL_FILE_NAMES } from '../../../shared/job/fileNames.ts';
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

const usual = { units: 'in', theme: 'as-system', fileNames: USUAL_FILE_NAMES, marks: true };
const settings = () => rig.host.handlers.settings;
const restart = async () => {
  await rig.end();
  rig = await openRig(folder);
};

describe('the settings', () => {
  it('are the usual ones at first', async () => {
    expect(await settings().read()).toEqual(usual);
  });

  it('are remembered from one start to the next, the RIP folder too', async () => {
    rig.choose = [rig.at('rip')];
    const choice = await rig.host.handlers.choose.folder({ title: 'RIP folder' });
    if (choice.kind !== 'chosen') throw new Error('No folder was chosen');
    const ripFolder = choice.chosen.folder;
    granted(await settings().change({ units: 'mm', theme: 'dark', ripFolder, marks: false }));
    await restart();
    expect(await settings().read()).toMatchObject({
      units: 'mm',
      theme: 'dark',
      marks: false,
      fileNames: USUAL_FILE_NAMES,
      ripFolder: { name: 'rip', place: rig.at('rip') },
    });
    granted(await settings().change({ ripFolder: null }));
    await restart();
    expect((await settings().read()).ripFolder).toBeUndefined();
    expect((await settings().read()).units).toBe('mm');
  });

  it('refuse a folder that was not chosen, and a pattern that makes no name', async () => {
    const madeUp = '0123456789abcdef0123456789abcdef' as FolderHandle;
    expect(codeOf(await settings().change({ ripFolder: madeUp }))).toBe('handle-unknown');
    expect(codeOf(await settings().change({ fileNames: '{colour}.pdf' }))).toBe('name-unusable');
    expect(await settings().read()).toEqual(usual);
  });

  it('stay usable when their file is damaged: one field falls back to the usual, the others stay', async () => {
    mkdirSync(rig.home, { recursive: true });
    writeFileSync(
      rig.at('home', 'settings.json'),
      JSON.stringify({ units: 'cubit', theme: 'light', marks: 7 }),
    );
    await restart();
    expect(await settings().read()).toEqual({ ...usual, theme: 'light' });
  });

  it.each(['', '{ "units": "mm"', '[1, 2]', 'null', '"mm"'])(
    'set a file aside that holds %j',
    async (text) => {
      writeFileSync(rig.at('home', 'settings.json'), text);
      await restart();
      expect(await settings().read()).toEqual(usual);
      expect(readFileSync(rig.at('home', 'settings.damaged-1.json'), 'utf8')).toBe(text);
    },
  );

  it('are written whole: many changes at once leave one good file and nothing beside it', async () => {
    await Promise.all(
      Array.from({ length: 20 }, (_, i) =>
        settings().change({ marks: i % 2 === 0, units: i < 10 ? 'mm' : 'pt' }),
      ),
    );
    const written = JSON.parse(readFileSync(rig.at('home', 'settings.json'), 'utf8'));
    expect(written).toMatchObject({ marks: false, units: 'pt' });
    expect(readdirSync(rig.home).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('keep what a later version of the program may have written beside them', async () => {
    mkdirSync(rig.home, { recursive: true });
    writeFileSync(
      rig.at('home', 'settings.json'),
      JSON.stringify({ schema: 1, theme: 'light', ruler: 'long' }),
    );
    await restart();
    granted(await settings().change({ units: 'mm' }));
    expect(JSON.parse(readFileSync(rig.at('home', 'settings.json'), 'utf8'))).toMatchObject({
      theme: 'light',
      units: 'mm',
      ruler: 'long',
    });
  });

  it('are taken back from their copy when the file was damaged', async () => {
    granted(await settings().change({ units: 'mm', theme: 'dark' }));
    await rig.end();
    writeFileSync(rig.at('home', 'settings.json'), '{');
    rig = await openRig(folder);
    expect(await settings().read()).toEqual(usual);
    expect(granted(await settings().takeBack())).toMatchObject({ units: 'mm', theme: 'dark' });
    await restart();
    expect(await settings().read()).toMatchObject({ units: 'mm', theme: 'dark' });
  });

  it('are usable and unchanged where their file cannot be read', async () => {
    await rig.end();
    mkdirSync(rig.at('home', 'settings.json'), { recursive: true });
    rig = await openRig(folder);
    expect(await settings().read()).toEqual(usual);
    expect(codeOf(await settings().change({ units: 'mm' }))).toBe('file-unreadable');
  });
});
