// The published values that tests check against: each table says where it comes from, and each is used.
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const FOLDER = join(import.meta.dirname, '../reference');
const FILES = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.json'),
);
const read = (file: string) => readFileSync(join(FOLDER, file), 'utf8');

/** A source that can be looked up, or what stands in for one. */
function isSource(source: unknown): boolean {
  if (typeof source === 'string') {
    return source === 'common practice, no source' || source.startsWith('computed by another method');
  }
  const { author, title, year, place } = source as Readonly<Record<string, unknown>>;
  return (
    [author, title, place].every((part) => typeof part === 'string' && part !== '') && year !== undefined
  );
}

function sourcesOf(parsed: { readonly source?: unknown; readonly sources?: object }): readonly unknown[] {
  if (parsed.source !== undefined) return [parsed.source];
  return Object.values(parsed.sources ?? {}).flatMap((one: object | string) =>
    typeof one === 'object' && !('author' in one) ? Object.values(one) : [one],
  );
}

describe.each(FILES)('%s', (file) => {
  it('names its sources', () => {
    const sources = sourcesOf(JSON.parse(read(file)));
    expect(sources).not.toEqual([]);
    expect(sources.filter((source) => !isSource(source))).toEqual([]);
  });

  it('holds values and no notes of work', () => {
    expect(read(file)).not.toMatch(/\bREAD\b|re-checked|reproduced here|computed here|"split"|"certainty"/);
  });

  it('has no table that no test asks for', () => {
    const tables = Object.keys(JSON.parse(read(file))).filter(
      (key) => !['name', 'source', 'sources', 'computed'].includes(key) && !key.endsWith('_note'),
    );
    const tests = execFileSync('git', ['grep', '-lE', 'tests?/?.*reference|reference/'], {
      cwd: join(import.meta.dirname, '../..'),
      encoding: 'utf8',
    });
    const text = tests
      .trim()
      .split('\n')
      .filter(
        (path) => path.startsWith('tests/') && path.endsWith('.ts') && !path.endsWith('references.test.ts'),
      )
      .map((path) => readFileSync(join(import.meta.dirname, '../..', path), 'utf8'))
      .join('\n');
    expect(tables.filter((table) => !new RegExp(`\\b${table}\\b`).test(text))).toEqual([]);
  });
});
