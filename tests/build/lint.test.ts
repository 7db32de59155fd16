// The trade knows no clock and no chance: what is planted in shared/ is caught by the linter, and let be elsewhere.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { testFolder } from '../kit/folder.ts';

const house = join(import.meta.dirname, '../..');
const BIOME = join(house, 'node_modules/@biomejs/biome/bin/biome');
const TIME_TO_LINT = 60_000;
const folder = testFolder();

const CHANCE = 'shared/ makes no random numbers: take them as values.';
const banned = (global: string) => `Do not use the global variable ${global}.`;

/** What the house's own rules say of these files, in a house of their own: `file: sentence`. */
function lint(files: Readonly<Record<string, string>>): readonly string[] {
  for (const own of ['biome.json', '.gitignore', 'build/lint']) {
    cpSync(join(house, own), join(folder.path, own), { recursive: true });
  }
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder.path, name)), { recursive: true });
    writeFileSync(join(folder.path, name), text);
  }
  const ran = spawnSync(process.execPath, [BIOME, 'lint', '--reporter=github', '.'], {
    cwd: folder.path,
    encoding: 'utf8',
    timeout: TIME_TO_LINT,
  });
  if (ran.error !== undefined) throw ran.error;
  const found = [...ran.stdout.matchAll(/^::error .*file=(.+?),line=.*?::(.+)$/gm)];
  return found.map(([, file = '', says = '']) => `${file.replace(`${folder.path}/`, '')}: ${says}`);
}

it(
  'the linter bans the clock and random numbers in shared/, however they are come by',
  () => {
    const planted: readonly (readonly [text: string, says: string])[] = [
      ['export const planted = Math.random();\n', CHANCE],
      ['export const planted = [1, 2].map(Math.random);\n', CHANCE],
      ['export const planted = Math[`random`]();\n', CHANCE],
      ['export const { random } = Math;\n', CHANCE],
      ['const other = Math;\nexport const planted = other.random();\n', CHANCE],
      ['export const planted = crypto.randomUUID();\n', banned('crypto')],
      ['export const planted = globalThis.Math.random();\n', banned('globalThis')],
      ['export const planted = Date.now();\n', banned('Date')],
      ['export const planted = new Date();\n', banned('Date')],
      ['export const planted = performance.now();\n', banned('performance')],
    ];
    const files = planted.flatMap(([text], i) => [
      [`shared/geometry/planted${i}.ts`, text],
      [`electron/host/planted${i}.ts`, text],
    ]);
    const innocent = { 'shared/geometry/innocent.ts': 'export const most = Math.max(1, Math.PI);\n' };
    const said = lint({ ...Object.fromEntries(files), ...innocent });
    const own = said.filter((line) => planted.some(([, says]) => line.endsWith(says)));
    expect(own.toSorted()).toEqual(planted.map(([, says], i) => `shared/geometry/planted${i}.ts: ${says}`));
  },
  TIME_TO_LINT,
);
