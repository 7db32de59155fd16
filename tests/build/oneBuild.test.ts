// There is one build, the same whoever makes it: what a person tries is what was tested, and what ships.
import { createHash } from 'node:crypto';
import { appendFileSync, cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { built } from '../../build/built.ts';
import { buildApp, builtApp } from '../../build/builtApp.ts';
import { stampOf } from '../../build/stamp.ts';
import { TIME_TO_BUILD } from '../kit/desktopRig.ts';
import { testFolder } from '../kit/folder.ts';

const folder = testFolder();
const HOUSE = join(import.meta.dirname, '../..');

/** Every file of a folder, with the hash of its bytes. */
function filesIn(root: string): Readonly<Record<string, string>> {
  const files = readdirSync(root, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
  const hash = (path: string) => createHash('sha256').update(readFileSync(path)).digest('hex');
  return Object.fromEntries(paths.map((path) => [path.slice(root.length + 1), hash(path)]));
}

describe('the build', () => {
  const mode = process.env.NODE_ENV;
  afterEach(() => {
    process.env.NODE_ENV = mode;
  });

  it.each(['test', 'development', undefined])(
    'has the same bytes and the same stamp where NODE_ENV is %s',
    { timeout: TIME_TO_BUILD },
    async (surroundings) => {
      if (surroundings === undefined) delete process.env.NODE_ENV;
      else process.env.NODE_ENV = surroundings;
      const own = join(folder.path, String(surroundings));
      const stamp = stampOf(HOUSE);
      await buildApp(own);
      const shared = await builtApp(() => undefined);
      expect(shared.endsWith(`app-${stamp}`)).toBe(true);
      expect(filesIn(own)).toEqual(filesIn(shared));
    },
  );

  it('is for production: React without its development half, lists without their test mode', {
    timeout: TIME_TO_BUILD,
  }, async () => {
    const assets = join(await builtApp(() => undefined), 'renderer/assets');
    const scripts = readdirSync(assets).filter((name) => name.endsWith('.js'));
    const text = scripts.map((name) => readFileSync(join(assets, name), 'utf8')).join('\n');
    // The words of React's own builds, and the variable by which react-aria's test mode is left again.
    expect(text.includes('Minified React error')).toBe(true);
    const forbidden = ['react_stack_bottom_frame', 'React DevTools', 'jsxDEV', 'VIRT_ON', 'process.env'];
    expect(forbidden.filter((word) => text.includes(word))).toEqual([]);
  });
});

describe('the stamp', () => {
  /** A small house of the kind that is built. */
  function smallHouse(name: string): string {
    const house = join(folder.path, name);
    for (const part of ['build/bench', 'build/pictures', 'electron', 'renderer', 'shared', 'node_modules']) {
      mkdirSync(join(house, part), { recursive: true });
      writeFileSync(join(house, part, 'a.ts'), part);
    }
    for (const file of [
      'package.json',
      'package-lock.json',
      'tsconfig.base.json',
      'node_modules/.package-lock.json',
    ]) {
      writeFileSync(join(house, file), '{}');
    }
    return house;
  }

  it('is the same for a copy elsewhere, whenever its files were written', () => {
    const house = smallHouse('first');
    const copy = join(folder.path, 'copy');
    cpSync(house, copy, { recursive: true });
    expect(stampOf(copy)).toBe(stampOf(house));
  });

  it.each([
    'electron/a.ts',
    'renderer/a.ts',
    'shared/a.ts',
    'package.json',
    'package-lock.json',
    'tsconfig.base.json',
    'node_modules/.package-lock.json',
  ])('changes with %s', (file) => {
    const house = smallHouse(`with-${file.replaceAll('/', '-')}`);
    const before = stampOf(house);
    appendFileSync(join(house, file), ' ');
    expect(stampOf(house)).not.toBe(before);
  });

  it('does not change with what has no part in the build', () => {
    const house = smallHouse('apart');
    const before = stampOf(house);
    for (const file of ['build/bench/a.ts', 'build/pictures/a.ts', 'node_modules/a.ts']) {
      appendFileSync(join(house, file), ' ');
    }
    expect(stampOf(house)).toBe(before);
  });
});

describe('what was built', () => {
  it('is built once, however many ask for it at once', async () => {
    let times = 0;
    const ask = () =>
      built(folder.path, 'thing', 'one', async (made) => {
        times += 1;
        await new Promise((resolve) => setTimeout(resolve, 50));
        writeFileSync(join(made, 'thing.txt'), 'made');
      });
    const folders = await Promise.all([ask(), ask(), ask()]);
    expect(times).toBe(1);
    expect(new Set(folders).size).toBe(1);
    expect(readFileSync(join(await ask(), 'thing.txt'), 'utf8')).toBe('made');
    expect(times).toBe(1);
  });

  it('is not taken where building it failed or was broken off', async () => {
    const failing = built(folder.path, 'thing', 'two', async () => {
      throw new Error('no room');
    });
    await expect(failing).rejects.toThrow('no room');
    // What a process that was killed leaves behind: its lock, with a number that no process has.
    writeFileSync(join(folder.path, 'building-thing-two'), String(2 ** 30));
    const made = await built(folder.path, 'thing', 'two', async (path) =>
      writeFileSync(join(path, 'a'), 'b'),
    );
    expect(readdirSync(made)).toEqual(['a']);
    expect(readdirSync(folder.path).filter((name) => /^(building|unfinished)-thing/.test(name))).toEqual([]);
  });
});
