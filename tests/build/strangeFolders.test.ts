// What a person makes in the working copy, such as the demo's folder, is none of the checks' business.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { testFolder } from '../kit/folder.ts';

const house = join(import.meta.dirname, '../..');

/** What says how the house checks its files. */
const RULES = ['biome.json', '.gitignore', 'build/lint'];

const folder = testFolder();
let copies = 0;

/** Formats and lints a copy that has the house's rules and these files. Gives whether all was well. */
function checks(files: Readonly<Record<string, string>>): boolean {
  copies += 1;
  const copy = join(folder.path, String(copies));
  mkdirSync(copy);
  for (const name of RULES) cpSync(join(house, name), join(copy, name), { recursive: true });
  spawnSync('git', ['init', '-q'], { cwd: copy });
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(copy, name)), { recursive: true });
    writeFileSync(join(copy, name), text);
  }
  const { status } = spawnSync(join(house, 'node_modules/.bin/biome'), ['ci', '.'], {
    cwd: copy,
    shell: process.platform === 'win32',
  });
  return status === 0;
}

const OURS = { 'shared/a.ts': 'export const a = 1;\n' };
const ILL_FORMATTED = '{"title":"Harvest supper",\n"pieces":[]}';

it.each(['demo-job', 'my supper', 'out/of/order'])('a brief in the folder "%s" is left alone', (made) => {
  expect(checks({ ...OURS, [`${made}/supper.json`]: ILL_FORMATTED })).toBe(true);
});

it('a brief beside the sources is left alone', () => {
  expect(checks({ ...OURS, 'supper.json': ILL_FORMATTED })).toBe(true);
});

it('what is ours is looked at', () => {
  expect(checks({ 'shared/a.ts': 'export const a=1' })).toBe(false);
  expect(checks({ ...OURS, 'package.json': ILL_FORMATTED })).toBe(false);
});
