// The licences of what ships: everything by others is told with its text, and what may not ship stops the build.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { builtApp } from '../../build/builtApp.ts';
import { collectLicences, type Licensed } from '../../build/licences/collect.ts';
import { testFolder } from '../kit/folder.ts';

const house = join(import.meta.dirname, '../..');
const TIME_TO_BUILD = 600_000;
const folder = testFolder();
let count = 0;

/** A package with these files, in a house of its own; gives the path of one of its files. */
function installed(told: object, files: Readonly<Record<string, string>>): (file: string) => string {
  count += 1;
  const at = join(folder.path, `house-${count}/node_modules/thing`);
  for (const [name, text] of Object.entries({ ...files, 'package.json': JSON.stringify(told) })) {
    mkdirSync(dirname(join(at, name)), { recursive: true });
    writeFileSync(join(at, name), text);
  }
  return (file) => join(at, file);
}
const THING = { name: 'thing', version: '1.0.0', license: 'MIT' };
const WORDS = { LICENSE: 'Permission is granted' };

describe('a package that ships', () => {
  it('is told with its version, its licence and all texts of it, its own and those beside its files', () => {
    const at = installed(THING, {
      ...WORDS,
      'lib/code.js': '',
      'lib/package.json': '{ "type": "module" }',
      'fonts/LICENSE_FONT': 'The font is free',
      'fonts/a.ttf': '',
    });
    expect(collectLicences([at('lib/code.js'), at('fonts/a.ttf'), '/elsewhere/own.ts'])).toEqual([
      { name: 'thing', version: '1.0.0', licence: 'MIT', text: 'Permission is granted\nThe font is free' },
    ]);
  });

  it.each([
    'GPL-3.0-only',
    'AGPL-3.0-or-later',
    'LGPL-2.1-or-later',
    'MIT OR GPL-3.0-or-later',
    'MIT AND GPL-2.0-only',
    'UNLICENSED',
    'SEE LICENSE IN LICENSE',
  ])('stops the build when its licence is %s', (license) => {
    const at = installed({ ...THING, license }, { ...WORDS, 'index.js': '' });
    expect(() => collectLicences([at('index.js')])).toThrow(
      `thing may not ship under its licence, ${license}`,
    );
  });

  it('stops the build when it names no licence, or has no text of it', () => {
    const none = installed({ name: 'thing', version: '1.0.0' }, { ...WORDS, 'index.js': '' });
    expect(() => collectLicences([none('index.js')])).toThrow('thing 1.0.0 ships and names no licence');
    const bare = installed(THING, { 'index.js': '' });
    expect(() => collectLicences([bare('index.js')])).toThrow('ships without the text of its licence');
  });

  it('stops the build when nobody has noted what a program of it holds', () => {
    const at = installed(THING, { ...WORDS, 'dist/engine.wasm': '' });
    expect(() => collectLicences([at('dist/engine.wasm')])).toThrow('noted what engine.wasm holds');
  });
});

describe('the built app', () => {
  let app: string;
  let told: readonly Licensed[];
  beforeAll(async () => {
    app = await builtApp(() => undefined);
    told = JSON.parse(readFileSync(join(app, 'renderer/licences.json'), 'utf8'));
  }, TIME_TO_BUILD);

  /** What the project depends on and only the command line and its start from the sources use. */
  const FOR_THE_COMMAND_LINE = ['commander', 'tsx'];

  it('tells every package that the project says its program depends on', () => {
    const { dependencies } = JSON.parse(readFileSync(join(house, 'package.json'), 'utf8'));
    const names = told.map(({ name, version }) => `${name} ${version}`);
    for (const dependency of Object.keys(dependencies)) {
      if (FOR_THE_COMMAND_LINE.includes(dependency)) continue;
      const path = join(house, 'node_modules', dependency, 'package.json');
      const { name, version } = JSON.parse(readFileSync(path, 'utf8'));
      expect(names).toContain(`${name} ${version}`);
    }
  });

  it('tells what the programs in WebAssembly hold, and the fonts and profiles of the pictures', () => {
    const text = readFileSync(join(app, 'THIRD-PARTY-LICENCES.txt'), 'utf8');
    for (const name of [
      'PDFium',
      'FreeType',
      'OpenJPEG',
      'Little CMS',
      'Anti-Grain Geometry',
      'qpdf',
      'zlib',
    ]) {
      expect(
        told.some((one) => one.name === name),
        name,
      ).toBe(true);
    }
    expect(text).toContain('This software is based in part on the work of the Independent JPEG Group.');
    expect(text).toContain('SIL OPEN FONT LICENSE');
    expect(text).toContain('Bitstream Vera Fonts Copyright');
    for (const { name, version, licence, text: own } of told) {
      expect(own.trim().length, name).toBeGreaterThan(100);
      expect(text).toContain(`${name} ${version} (${licence})`);
      expect(licence).not.toMatch(/GPL/);
    }
    const wasm = readdirSync(app, { recursive: true, encoding: 'utf8' }).filter((n) => n.endsWith('.wasm'));
    expect(wasm.map((name) => name.split(/[\\/]/).at(-1)).sort()).toEqual([
      'highs.wasm',
      'jbig2.wasm',
      'openjpeg.wasm',
      'pdfium.wasm',
      'qcms_bg.wasm',
      'qpdf.wasm',
    ]);
  });
});
