// The tally of a mutation run: what counts as killed, what as alive, and which tests an area answers to.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { areaOf, USUAL_AREAS } from '../../build/mutation/areas.ts';
import {
  type MutantResult,
  mutantLine,
  scoreOf,
  sumOf,
  tallyByFile,
  tallyLine,
} from '../../build/mutation/tally.ts';

const HOUSE = join(import.meta.dirname, '../..');

const mutant = (fileName: string, status: MutantResult['status'], statusReason?: string): MutantResult => ({
  id: '1',
  fileName,
  status,
  mutatorName: 'EqualityOperator',
  replacement: 'a <= b',
  location: { start: { line: 2, column: 8 }, end: { line: 2, column: 13 } },
  ...(statusReason === undefined ? {} : { statusReason }),
});

const [knife, press] = tallyByFile([
  mutant('press.ts', 'NoCoverage'),
  mutant('press.ts', 'Killed'),
  mutant('knife.ts', 'Killed'),
  mutant('knife.ts', 'Survived'),
  mutant('knife.ts', 'Timeout', 'Hit limit reached (501/500)'),
  mutant('knife.ts', 'Timeout'),
  mutant('knife.ts', 'CompileError'),
  mutant(
    'knife.ts',
    'RuntimeError',
    'An error occurred outside of a test run: knife.test.ts does not load: ...',
  ),
]);

describe('the tally of a mutation run', () => {
  it('is told file by file, in the order of their names', () => {
    expect(knife).toEqual({ file: 'knife.ts', killed: 3, timedOut: 1, survived: 1, notCovered: 0 });
    expect(press).toEqual({ file: 'press.ts', killed: 1, timedOut: 0, survived: 0, notCovered: 1 });
  });

  it('scores a mutant that only ran out of time as alive, and as killed one that runs round for ever or keeps a test file from loading', () => {
    // Three of five; the one that does not compile was never a mutant.
    expect(knife && scoreOf(knife)).toBe(60);
  });

  it('adds files up to an area', () => {
    const area = sumOf(
      'shop',
      [knife, press].filter((tally) => tally !== undefined),
    );
    expect(area).toEqual({ file: 'shop', killed: 4, timedOut: 1, survived: 1, notCovered: 1 });
    expect(tallyLine(area, 4)).toBe(
      'shop      4 killed     1 timed out     1 survived     1 not covered    57.1 %',
    );
  });

  it('has no score where there was nothing to change', () => {
    expect(scoreOf(sumOf('empty', []))).toBeUndefined();
  });

  it('shows what a living mutant changed and where', () => {
    expect(mutantLine(mutant('knife.ts', 'Survived'), '// the knife\nreturn a < b;\n')).toBe(
      'knife.ts:2:8  Survived  EqualityOperator: a < b  =>  a <= b',
    );
  });
});

describe('the areas of mutation runs', () => {
  it.each(USUAL_AREAS)('%s is there, and so are its tests', (source) => {
    expect(existsSync(join(HOUSE, source))).toBe(true);
    for (const glob of areaOf(source)?.tests ?? []) {
      expect(existsSync(join(HOUSE, glob.replace(/^!/, '').replace(/\/\*\*.*$/, '')))).toBe(true);
    }
  });

  it('takes a file of shared/ with the tests of its folder', () => {
    expect(areaOf('shared/run/learn.ts')?.tests).toContain('tests/shared/run/**/*.test.ts');
    expect(areaOf('./shared/run/')?.source).toBe('shared/run');
  });

  it('knows nothing outside shared/', () => {
    expect(areaOf('electron/host')).toBeUndefined();
    expect(areaOf('shared')).toBeUndefined();
  });
});
