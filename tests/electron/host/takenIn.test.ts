// Art that came as bytes: kept under a name that leads nowhere else, and put beside the job without hurting other art.
import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FileHashes } from '../../../electron/disk/hashes.ts';
import { TakenIn } from '../../../electron/host/takenIn.ts';
import { testFolder } from '../../kit/folder.ts';

const folder = testFolder();
const home = join(folder.path, 'home');
const takenIn = new TakenIn(home, new FileHashes());

async function* inParts(...parts: readonly string[]) {
  for (const part of parts) yield Buffer.from(part);
}

describe('art that came as bytes', () => {
  it('is kept whole, and the same bytes under the same name are kept once', async () => {
    const { path } = await takenIn.take('card.pdf', inParts('one ', 'card'));
    expect(readFileSync(path, 'utf8')).toBe('one card');
    expect((await takenIn.take('card.pdf', inParts('one card'))).path).toBe(path);
    expect((await takenIn.take('card.pdf', inParts('other card'))).path).not.toBe(path);
    expect(takenIn.holds(path)).toBe(true);
    expect(takenIn.holds(join(folder.path, 'home', 'taken-in-too', 'card.pdf'))).toBe(false);
  });

  it.each([
    ['../../../etc/passwd.pdf', 'passwd.pdf'],
    ['C:\\art\\card:1?.pdf', 'card-1-.pdf'],
    ['..', 'art'],
    ['', 'art'],
    ['.hidden.pdf', 'hidden.pdf'],
    ['note.txt', 'note.txt'],
    [`${'long '.repeat(40)}.PDF`, `${'long '.repeat(12)}.PDF`],
  ])('called %j is kept as %j, within the program’s own folder', async (given, kept) => {
    const { path } = await takenIn.take(given, inParts('x'));
    expect(basename(path)).toBe(kept);
    expect(takenIn.holds(path)).toBe(true);
  });

  it('leaves nothing behind when it breaks off', async () => {
    async function* broken() {
      yield Buffer.from('half');
      throw new Error('The window went away');
    }
    await expect(takenIn.take('half.pdf', broken())).rejects.toThrow('The window went away');
    expect(readdirSync(join(home, 'taken-in')).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe('taking art in', () => {
  /** A disk whose flushing waits until it is let go, or fails. */
  function slowDisk() {
    let release: (error?: Error) => void = () => undefined;
    const flushed = new Promise<void>((resolve, reject) => {
      release = (error) => (error === undefined ? resolve() : reject(error));
    });
    return { home: join(folder.path, 'slow'), release, flush: () => flushed };
  }
  const settled = async (work: Promise<unknown>) => {
    let is = 'pending';
    work.then(
      () => (is = 'done'),
      () => (is = 'failed'),
    );
    // Everything that is not held up has had its turn by then.
    for (let turn = 0; turn < 50; turn += 1) await new Promise((resolve) => setImmediate(resolve));
    return is;
  };

  it('does not wait for the disk, but a saved job does', async () => {
    const { home, release, flush } = slowDisk();
    const slow = new TakenIn(home, new FileHashes(), flush);
    const { path } = await slow.take('card.pdf', inParts('a card'));
    expect(readFileSync(path, 'utf8')).toBe('a card');
    const settling = slow.settle(path, join(folder.path, 'Slow.turnlay'));
    expect(await settled(settling)).toBe('pending');
    release();
    expect(readFileSync(await settling, 'utf8')).toBe('a card');
  });

  it('and a disk that fails is told to whoever would save a job with it', async () => {
    const { home, release, flush } = slowDisk();
    const failing = new TakenIn(home, new FileHashes(), flush);
    const { path } = await failing.take('card.pdf', inParts('a card'));
    release(Object.assign(new Error('full'), { code: 'ENOSPC' }));
    for (const _ of ['once', 'and again']) {
      await expect(failing.settle(path, join(folder.path, 'Full.turnlay'))).rejects.toThrow('full');
    }
    expect(existsSync(join(folder.path, 'Full art'))).toBe(false);
  });

  it('works its hash out on the way, so that its bytes are not read for that again', async () => {
    const noted = new Map<string, string>();
    class NotingHashes extends FileHashes {
      override note(path: string, sha256: string): Promise<void> {
        noted.set(path, sha256);
        return super.note(path, sha256);
      }
    }
    const hashes = new NotingHashes();
    const { path, sha256 } = await new TakenIn(home, hashes).take('hash.pdf', inParts('a', 'bc'));
    // @source FIPS 180-2, B.1: the SHA-256 of "abc".
    expect(sha256).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    expect(noted.get(path)).toBe(sha256);
    // What is noted of a file is taken for its hash: it is not read.
    await hashes.note(path, 'as noted');
    expect(await hashes.of(path)).toBe('as noted');
  });
});

describe('art that nobody has saved', () => {
  it('is thrown away after a month, unless a kept job needs it', async () => {
    const { path: old } = await takenIn.take('old.pdf', inParts('old'));
    const { path: needed } = await takenIn.take('needed.pdf', inParts('needed'));
    const { path: young } = await takenIn.take('young.pdf', inParts('young'));
    const days = (n: number) => new Date(Date.now() - n * 24 * 60 * 60 * 1000);
    for (const path of [old, needed]) utimesSync(dirname(path), days(31), days(31));
    utimesSync(dirname(young), days(29), days(29));
    await takenIn.forgetOld([needed], new Date());
    expect([old, needed, young].map((path) => existsSync(path))).toEqual([false, true, true]);
  });

  it('is no trouble where nothing was ever taken in', async () => {
    const fresh = new TakenIn(join(folder.path, 'fresh'), new FileHashes());
    await fresh.forgetOld([], new Date());
    expect(existsSync(join(folder.path, 'fresh'))).toBe(false);
  });
});

describe('putting it beside a saved job', () => {
  it('copies it into a folder named after the job, once', async () => {
    const { path } = await takenIn.take('beside.pdf', inParts('beside'));
    const job = join(folder.path, 'Wedding.turnlay');
    const place = await takenIn.settle(path, job);
    expect(place).toBe(join(folder.path, 'Wedding art', 'beside.pdf'));
    expect(readFileSync(place, 'utf8')).toBe('beside');
    expect(await takenIn.settle(path, job)).toBe(place);
    expect(readdirSync(join(folder.path, 'Wedding art'))).toEqual(['beside.pdf']);
  });

  it('never takes the place of other art of the same name', async () => {
    const { path } = await takenIn.take('card.pdf', inParts('mine'));
    mkdirSync(join(folder.path, 'Menu art'));
    writeFileSync(join(folder.path, 'Menu art', 'card.pdf'), 'theirs');
    const place = await takenIn.settle(path, join(folder.path, 'Menu.turnlay'));
    expect(basename(place)).toBe('card 2.pdf');
    expect(readFileSync(join(folder.path, 'Menu art', 'card.pdf'), 'utf8')).toBe('theirs');
  });

  it('leaves art alone that has a place of its own', async () => {
    const own = folder.save('own.pdf', 'own');
    expect(await takenIn.settle(own, join(folder.path, 'Tag.turnlay'))).toBe(own);
  });
});
