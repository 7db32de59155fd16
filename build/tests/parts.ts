// The parts of the test run, the quick ones first, and what each of them counted.
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const HOUSE = join(import.meta.dirname, '../..');
const REPORTS = join(HOUSE, 'reports');

/** What a part counted. A test that did not run counts as failed: skipping is not passing. */
export interface Counted {
  readonly passed: number;
  readonly failed: number;
}

export interface Part {
  readonly name: string;
  readonly run: () => Counted;
}

/** Runs a program of the house's packages, its output shown as it comes, and says whether it went well. */
function succeeds(program: string, args: readonly string[], env: NodeJS.ProcessEnv = {}): boolean {
  const { status } = spawnSync(join(HOUSE, 'node_modules/.bin', program), args, {
    cwd: HOUSE,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });
  return status === 0;
}

const check = (name: string, program: string, ...args: readonly string[]): Part => ({
  name,
  run: () => (succeeds(program, args) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 }),
});

export const CHECKS: readonly Part[] = [
  check('tools that the tests check against', 'tsx', 'build/tests/needTools.ts'),
  check('format and lint', 'biome', 'ci', '.'),
  ...['shared', 'electron', 'renderer', 'tests'].map((layer) =>
    check(`types of ${layer}`, 'tsc', '-p', layer),
  ),
];

/** The unit tests; `filters` name the files that are run, all where there are none. */
export function unitTests(filters: readonly string[] = [], env: NodeJS.ProcessEnv = {}): Part {
  return {
    name: 'unit tests',
    run: () => {
      const report = freshReport('unit.json');
      const went = succeeds(
        'vitest',
        ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`, ...filters],
        env,
      );
      return agreeing(went, report, countUnit);
    },
  };
}

export const WINDOW_TESTS: Part = {
  name: 'window tests',
  run: () => {
    const report = freshReport('window.json');
    const went = succeeds('playwright', ['test', '--reporter=list,json'], {
      PLAYWRIGHT_JSON_OUTPUT_FILE: report,
    });
    return agreeing(went, report, countWindow);
  },
};

function freshReport(name: string): string {
  const path = join(REPORTS, name);
  rmSync(path, { force: true });
  return path;
}

/** A part that went wrong has a failure, also where its report tells of none or is not there. */
function agreeing(went: boolean, report: string, count: (report: unknown) => Counted): Counted {
  let counted: Counted = { passed: 0, failed: 0 };
  try {
    counted = count(JSON.parse(readFileSync(report, 'utf8')));
  } catch {
    return { passed: 0, failed: 1 };
  }
  const ranNothing = counted.passed + counted.failed === 0;
  return (!went || ranNothing) && counted.failed === 0 ? { ...counted, failed: 1 } : counted;
}

/** Of Vitest's JSON report: a file that could not be loaded is a failure of its own. */
export function countUnit(report: unknown): Counted {
  const { numTotalTests, numPassedTests, testResults } = report as {
    numTotalTests: number;
    numPassedTests: number;
    testResults: readonly { status: string; assertionResults: readonly unknown[] }[];
  };
  const unloaded = testResults.filter((f) => f.status === 'failed' && f.assertionResults.length === 0);
  return { passed: numPassedTests, failed: numTotalTests - numPassedTests + unloaded.length };
}

/** Of Playwright's JSON report: a test that went well only when it was tried again has failed. */
export function countWindow(report: unknown): Counted {
  const { stats, errors } = report as {
    stats: { expected: number; unexpected: number; flaky: number; skipped: number };
    errors: readonly unknown[];
  };
  return {
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky + stats.skipped + errors.length,
  };
}
