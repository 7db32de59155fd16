// The library of printers and papers: kept from one start to the next, read from files and written for others.
import { readFileSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { FolderHandle } from '../../../shared/contract/handles.ts';
import { writeLibrary } from '../../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
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

const library = () => rig.host.handlers.library;
const restart = async () => {
  await rig.end();
  rig = await openRig(folder);
};
const folderHere = async (): Promise<FolderHandle> => {
  rig.choose = [folder];
  const choice = await rig.host.handlers.choose.folder({ title: 'Where to' });
  if (choice.kind !== 'chosen') throw new Error('No folder was chosen');
  return choice.chosen.folder;
};
const fileHere = async (name: string) => {
  rig.choose = [rig.at(name)];
  const choice = await rig.host.handlers.choose.files({ kind: 'library', many: false });
  if (choice.kind !== 'chosen') throw new Error('No file was chosen');
  const [entry] = choice.chosen;
  if (entry === undefined) throw new Error('No file was chosen');
  return entry.file;
};
const dearer = { ...startingLibrary(), currency: '€' };

describe('the library of printers and papers', () => {
  it('is the one to begin with until it is changed, and is remembered from then on', async () => {
    expect(await library().read()).toEqual(startingLibrary());
    expect(granted(await library().change({ library: dearer }))).toEqual(dearer);
    await restart();
    expect(await library().read()).toEqual(dearer);
  });

  it('goes into a file for others and comes back the same, without being kept by that', async () => {
    granted(await library().change({ library: dearer }));
    const entry = granted(await library().export({ folder: await folderHere(), name: 'Our printers' }));
    expect(entry.name).toBe('Our printers.json');
    granted(await library().change({ library: startingLibrary() }));
    expect(granted(await library().import({ file: await fileHere('Our printers.json') }))).toEqual(dearer);
    expect(await library().read()).toEqual(startingLibrary());
  });

  it('replaces no file of the same name unless it may', async () => {
    writeFileSync(rig.at('mine.json'), 'mine');
    const ask = { folder: await folderHere(), name: 'mine.json' };
    expect(codeOf(await library().export(ask))).toBe('file-exists');
    expect(readFileSync(rig.at('mine.json'), 'utf8')).toBe('mine');
    granted(await library().export({ ...ask, replace: true }));
    expect(JSON.parse(readFileSync(rig.at('mine.json'), 'utf8')).schema).toBe(1);
    expect(codeOf(await library().export({ ...ask, name: '../elsewhere' }))).toBe('name-unusable');
  });

  it('is not taken from a file that holds something else, or one of a later version', async () => {
    writeFileSync(rig.at('a.json'), JSON.stringify({ ...JSON.parse(writeLibrary(dearer)), printers: 3 }));
    const damaged = await library().import({ file: await fileHere('a.json') });
    expect(codeOf(damaged)).toBe('library-invalid');
    if (!damaged.ok) expect(damaged.fault.message).toContain('printers: must be a list of printers');
    writeFileSync(rig.at('b.json'), '{"schema": 99}');
    expect(codeOf(await library().import({ file: await fileHere('b.json') }))).toBe('library-too-new');
    expect(codeOf(await library().import({ file: await fileHere('missing.json') }))).toBe('file-missing');
  });

  it('is set aside when its own file is damaged, and begins anew', async () => {
    granted(await library().change({ library: dearer }));
    const text = readFileSync(rig.at('home', 'library.json'), 'utf8').replace('"€"', '7');
    await rig.end();
    writeFileSync(rig.at('home', 'library.json'), text);
    rig = await openRig(folder);
    expect(await library().read()).toEqual(startingLibrary());
    expect(readFileSync(rig.at('home', 'library.json.damaged'), 'utf8')).toBe(text);
  });
});
