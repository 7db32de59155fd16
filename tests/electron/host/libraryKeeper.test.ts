// The library of printers and papers: kept from one start to the next, read from files and written for others.
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
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
});

describe('the file of the library', () => {
  const stored = () => rig.at('home', 'library.json');
  const troubles = async () => (await rig.host.handlers.app.begin()).troubles;
  /** Starts the program again after its file was changed behind its back. */
  const restartWith = async (text: string) => {
    await rig.end();
    writeFileSync(stored(), text);
    rig = await openRig(folder);
  };

  it('is kept under a number of its own when it is damaged, the copy before it taken back on demand', async () => {
    granted(await library().change({ library: dearer }));
    expect(await troubles()).toEqual([]);
    const damage = readFileSync(stored(), 'utf8').replace('"€"', '7');
    for (const kept of ['library.damaged-1.json', 'library.damaged-2.json']) {
      await restartWith(damage);
      expect(await library().read()).toEqual(startingLibrary());
      const [trouble, ...others] = await troubles();
      expect(others).toEqual([]);
      expect(trouble).toMatchObject({
        file: 'library',
        fault: {
          code: 'own-file-damaged',
          message: `The file of the printers and papers was damaged. It is kept as ${kept}.`,
        },
      });
      expect(Date.parse(trouble?.copyOf ?? '')).toBeGreaterThan(Date.now() - 3_600_000);
      expect(readFileSync(rig.at('home', kept), 'utf8')).toBe(damage);
    }
    expect(granted(await library().takeBack())).toEqual(dearer);
    expect(await troubles()).toEqual([]);
    await restart();
    expect(await library().read()).toEqual(dearer);
  });

  it('is set aside once, however many ask for it at the start', async () => {
    granted(await library().change({ library: dearer }));
    await restartWith('{');
    const [begun] = await Promise.all([troubles(), library().read(), library().read()]);
    expect(begun).toMatchObject([{ fault: { code: 'own-file-damaged' } }]);
    expect(await troubles()).toEqual(begun);
  });

  it('is taken back from its copy when it is gone, unless a person begins anew', async () => {
    granted(await library().change({ library: dearer }));
    await rig.end();
    rmSync(stored());
    rig = await openRig(folder);
    expect(await library().read()).toEqual(startingLibrary());
    expect(await troubles()).toMatchObject([{ file: 'library', fault: { code: 'file-missing' } }]);
    expect(granted(await library().takeBack())).toEqual(dearer);
    rmSync(stored());
    await restart();
    granted(await library().change({ library: { ...dearer, currency: 'kr' } }));
    await restart();
    expect(await troubles()).toEqual([]);
    expect((await library().read()).currency).toBe('kr');
  });

  it('is left alone by a program that cannot read it, whatever is asked of it', async () => {
    await rig.end();
    mkdirSync(stored(), { recursive: true });
    writeFileSync(rig.at('home', 'library.json', 'mine'), 'mine');
    rig = await openRig(folder);
    expect(await library().read()).toEqual(startingLibrary());
    expect(await troubles()).toMatchObject([{ file: 'library', fault: { code: 'file-unreadable' } }]);
    expect(codeOf(await library().change({ library: dearer }))).toBe('file-unreadable');
    expect(codeOf(await library().takeBack())).toBe('file-missing');
    expect(readFileSync(rig.at('home', 'library.json', 'mine'), 'utf8')).toBe('mine');
  });

  it('stays unread until the next start when it could not be read: what the window holds is not the person’s', async () => {
    granted(await library().change({ library: dearer }));
    const text = readFileSync(stored(), 'utf8');
    await rig.end();
    renameSync(stored(), rig.at('aside'));
    mkdirSync(stored());
    rig = await openRig(folder);
    await library().read();
    rmdirSync(stored());
    renameSync(rig.at('aside'), stored());
    expect(codeOf(await library().change({ library: startingLibrary() }))).toBe('file-unreadable');
    expect(readFileSync(stored(), 'utf8')).toBe(text);
    await restart();
    expect(await library().read()).toEqual(dearer);
  });

  it.each([
    ['the library', { library: { schema: 99 } }, 'library-too-new'],
    ['its own file', { schema: 99 }, 'own-file-too-new'],
  ])('is left alone where a later version of %s was written', async (_of, later, code) => {
    const text = JSON.stringify(later);
    await restartWith(text);
    expect(await troubles()).toMatchObject([{ file: 'library', fault: { code } }]);
    expect(codeOf(await library().change({ library: dearer }))).toBe(code);
    expect(readFileSync(stored(), 'utf8')).toBe(text);
    expect(readdirSync(rig.home).filter((name) => name.includes('damaged'))).toEqual([]);
  });

  it('is kept in its last ten good versions, for the person alone', async () => {
    for (let number = 1; number <= 12; number += 1) {
      granted(await library().change({ library: { ...dearer, currency: `C${number}` } }));
      // Copies are named by the time they were written, to the millisecond.
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
    const copies = rig.at('home', 'copies', 'library');
    const held = readdirSync(copies)
      .toSorted()
      .map((name) => JSON.parse(readFileSync(join(copies, name), 'utf8')).library.currency);
    expect(held).toEqual(Array.from({ length: 10 }, (_, i) => `C${i + 3}`));
    for (const path of [stored(), ...readdirSync(copies).map((name) => join(copies, name))]) {
      expect(statSync(path).mode & 0o077).toBe(0);
    }
  });
});
