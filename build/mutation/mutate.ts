// Mutation testing: changes the sources of an area one piece at a time and tells which changes no test notices.
//
//   npm run mutate -- [AREA or FILE ...] [--workers N] [--long-tests]
//
// An area is a folder of shared/ (shared/cutting); without one the usual areas are tried one after another.
// Tests that take longest are left out of it unless --long-tests asks for them.
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import { AREA_TESTS, type Area, areaOf, USUAL_AREAS } from './areas.ts';
import { isKilled, type MutantResult, mutantLine, sumOf, tallyByFile, tallyLine } from './tally.ts';

const HOUSE = join(import.meta.dirname, '../..');

/** Added to what the tests of a mutant usually take: generous, since other work may have the machine. */
const TIMEOUT_MS = 60_000;
const TIMEOUT_FACTOR = 5;
const FIRST_RUN_TIMEOUT_MINUTES = 60;

function optionsFor(area: Area, workers: number): ConstructorParameters<typeof Stryker>[0] {
  const isFolder = statSync(join(HOUSE, area.source)).isDirectory();
  return {
    testRunner: 'vitest',
    // Every test of the area is run at first, related to what is changed or not, so that one that does not load is told.
    // Not by Stryker's testFiles: with them it never changes what is worked out while a file loads.
    vitest: { configFile: 'vitest.mutate.config.ts', related: false },
    mutate: [isFolder ? `${area.source}/**/*.ts` : area.source],
    // From the root of the house, since a folder of the program may be called so too: tests that miss a file are left out unsaid.
    ignorePatterns: ['/dist', '/reports', '/coverage'],
    coverageAnalysis: 'perTest',
    concurrency: workers,
    timeoutMS: TIMEOUT_MS,
    timeoutFactor: TIMEOUT_FACTOR,
    dryRunTimeoutMinutes: FIRST_RUN_TIMEOUT_MINUTES,
    reporters: ['progress-append-only', 'json'],
    jsonReporter: { fileName: `reports/mutation/${area.source.replaceAll('/', '-')}.json` },
    tempDirName: '.stryker-tmp',
    allowConsoleColors: false,
  };
}

const LIVING: readonly MutantResult['status'][] = ['Survived', 'NoCoverage', 'Timeout'];

function report(area: Area, results: readonly MutantResult[]): void {
  const mutants = results.map((mutant) => ({ ...mutant, fileName: relative(HOUSE, mutant.fileName) }));
  const alive = mutants.filter((mutant) => LIVING.includes(mutant.status) && !isKilled(mutant));
  for (const mutant of alive) {
    console.log(mutantLine(mutant, readFileSync(join(HOUSE, mutant.fileName), 'utf8')));
  }
  const tallies = tallyByFile(mutants);
  const lines = [...tallies, sumOf(area.source, tallies)];
  const width = Math.max(...lines.map((line) => line.file.length));
  for (const line of lines) console.log(tallyLine(line, width));
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { workers: { type: 'string', default: '1' }, 'long-tests': { type: 'boolean', default: false } },
});
const workers = Number(values.workers);
const named = positionals.length === 0 ? USUAL_AREAS : positionals;
const areas = named.map((name) => areaOf(name, values['long-tests']));
const unknown = named.filter((name, i) => areas[i] === undefined || !existsSync(join(HOUSE, name)));
if (unknown.length > 0 || !Number.isInteger(workers) || workers < 1) {
  for (const name of unknown)
    console.error(`There is no ${name} in shared/. Name a folder or file as in shared/cutting.`);
  console.error('usage: npm run mutate -- [AREA or FILE ...] [--workers N] [--long-tests]');
  process.exit(2);
}
process.chdir(HOUSE);
for (const area of areas) {
  if (area === undefined) continue;
  process.env[AREA_TESTS] = area.tests.join(',');
  report(area, await new Stryker(optionsFor(area, workers)).runMutationTest());
}
