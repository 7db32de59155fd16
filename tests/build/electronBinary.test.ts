// Whether Electron's binary is on a machine, found out without asking the package, which would try to fetch it.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { electronBinary } from '../../build/electronBinary.ts';
import { testFolder } from '../kit/folder.ts';

const folder = testFolder();
afterEach(() => {
  delete process.env.ELECTRON_OVERRIDE_DIST_PATH;
});

/** A house with the package of Electron, as it is installed, and these files in it. */
function houseWith(name: string, files: Readonly<Record<string, string>>): string {
  const house = join(folder.path, name);
  const electron = join(house, 'node_modules/electron');
  mkdirSync(join(electron, 'dist'), { recursive: true });
  writeFileSync(join(house, 'package.json'), '{}');
  writeFileSync(join(electron, 'package.json'), '{ "name": "electron" }');
  for (const [file, text] of Object.entries(files)) writeFileSync(join(electron, file), text);
  return house;
}

describe("Electron's binary", () => {
  it('is where the package says, once it has been fetched', () => {
    const house = houseWith('whole', { 'path.txt': 'electron\n', 'dist/electron': '' });
    expect(electronBinary(house)).toBe(join(house, 'node_modules/electron/dist/electron'));
  });

  it('is not there when only the package is, or when what the package names has gone', () => {
    expect(electronBinary(houseWith('bare', {}))).toBeUndefined();
    expect(electronBinary(houseWith('gone', { 'path.txt': 'electron' }))).toBeUndefined();
  });

  it('is not there without the package', () => {
    const house = join(folder.path, 'empty');
    mkdirSync(house);
    expect(electronBinary(house)).toBeUndefined();
  });

  it('is taken from elsewhere when the person says so', () => {
    const house = houseWith('elsewhere', {});
    const dist = join(folder.path, 'own-electron');
    mkdirSync(dist);
    writeFileSync(join(dist, 'electron'), '');
    process.env.ELECTRON_OVERRIDE_DIST_PATH = dist;
    expect(electronBinary(house)).toBe(join(dist, 'electron'));
  });
});
