// The documents say nothing of the house that is not so: what they name is there, and what they tell people to run can be run.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const HOUSE = join(import.meta.dirname, '../..');
const PAGES = readdirSync(join(HOUSE, 'build/docs')).map((name) => `build/docs/${name}`);
const DOCUMENTS = ['README.md', 'DEVELOPERS.md', ...PAGES];
const FOLDERS = ['shared', 'electron', 'renderer', 'tests', 'build'];

/** What a document names of the house: the aims of its links, seen from where it lies, and paths between backticks. */
function namedPaths(path: string, text: string): readonly string[] {
  const links = [...text.matchAll(/\]\(([^)#\s]+)[^)]*\)/g)]
    .map(([, aim = '']) => aim)
    .filter((aim) => !/^[a-z]+:/.test(aim))
    .map((aim) => join(dirname(path), aim));
  const inText = [...text.matchAll(/`([\w./{},-]+)`/g)]
    .flatMap(([, named = '']) => spread(named))
    .filter((named) => FOLDERS.some((folder) => named.startsWith(`${folder}/`)));
  return [...links, ...inText];
}

/** `a/{b,c}.ts` names two files. */
function spread(named: string): readonly string[] {
  const found = /^(.*)\{([^}]+)\}(.*)$/.exec(named);
  if (found === null) return [named];
  const [, before = '', several = '', after = ''] = found;
  return several.split(',').map((one) => `${before}${one.trim()}${after}`);
}

/** The paths of the map in DEVELOPERS.md: what stands before two spaces at the start of its lines, under its folder. */
function mappedPaths(text: string): readonly string[] {
  const map = /## The map of the house\n\n```\n([\s\S]*?)```/.exec(text)?.[1] ?? '';
  let folder = '';
  return map.split('\n').flatMap((line) => {
    const top = /^(\w+)\//.exec(line)?.[1];
    if (top !== undefined) folder = top;
    if (top !== undefined) return [top];
    const names = /^ {2}((?:[\w-]+\/[ ,;]*)+)/.exec(line)?.[1] ?? '';
    return [...names.matchAll(/[\w-]+(?=\/)/g)].map(([name]) => `${folder}/${name}`);
  });
}

const read = (path: string) => readFileSync(join(HOUSE, path), 'utf8');
const missing = (paths: readonly string[]) => paths.filter((path) => !existsSync(join(HOUSE, path)));

describe('The documents', () => {
  it.each(DOCUMENTS)('name only what is there: %s', (path) => {
    expect(missing(namedPaths(path, read(path)))).toEqual([]);
  });

  it('would be caught naming what is not there', () => {
    const text =
      'See [it](docs/gone.md), `shared/gone.ts` and `tests/{kit,gone}`; not [them](https://example.org).';
    expect(missing(namedPaths('README.md', text))).toEqual(['docs/gone.md', 'shared/gone.ts', 'tests/gone']);
  });

  it('map every folder of the layers, and none that is gone', () => {
    const mapped = mappedPaths(read('DEVELOPERS.md'));
    const there = ['shared', 'electron', 'renderer'].flatMap((layer) =>
      readdirSync(join(HOUSE, layer), { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map((entry) => `${layer}/${entry.name}`),
    );
    expect(missing(mapped)).toEqual([]);
    expect(there.filter((path) => !mapped.includes(path))).toEqual([]);
  });

  it('are linked from the first of them, so that nobody has to find them', () => {
    const readme = namedPaths('README.md', read('README.md'));
    expect([...PAGES, 'DEVELOPERS.md'].filter((page) => !readme.includes(page))).toEqual([]);
  });

  it.each(DOCUMENTS)('tell people to run only what there is: %s', (path) => {
    const scripts = new Set([...Object.keys(JSON.parse(read('package.json')).scripts)]);
    const runs = [...read(path).matchAll(/npm run (?:-s )?([\w-]+)/g)].map(([, name = '']) => name);
    const commands = [...read(path).matchAll(/turnlay -- ([a-z]+)/g)].map(([, name = '']) => name);
    expect(runs.filter((name) => !scripts.has(name))).toEqual([]);
    const program = read('electron/cli/turnlay.ts');
    expect(commands.filter((name) => !program.includes(`.command('${name}`))).toEqual([]);
  });
});
