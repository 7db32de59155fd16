// How the test run counts: nothing that failed, was skipped or never ran may pass for a success.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countUnit, countWindow } from '../../build/tests/parts.ts';
import { closingLine, summaryLine } from '../../build/tests/summary.ts';

describe('unit tests', () => {
  const file = (status: string, tests: number) => ({ status, assertionResults: Array(tests).fill({}) });

  it('are counted', () => {
    const report = { numTotalTests: 5, numPassedTests: 5, testResults: [file('passed', 5)] };
    expect(countUnit(report)).toEqual({ passed: 5, failed: 0 });
  });

  it('that fail or are skipped have failed, and so has a file that cannot be loaded', () => {
    const report = {
      numTotalTests: 5,
      numPassedTests: 3,
      testResults: [file('failed', 5), file('failed', 0)],
    };
    expect(countUnit(report)).toEqual({ passed: 3, failed: 3 });
  });
});

describe('window tests', () => {
  it('that pass at the second try only, or are skipped, have failed', () => {
    const stats = { expected: 50, unexpected: 1, flaky: 1, skipped: 1 };
    expect(countWindow({ stats, errors: [] })).toEqual({ passed: 50, failed: 3 });
  });

  it('that could not begin have failed', () => {
    const stats = { expected: 0, unexpected: 0, flaky: 0, skipped: 0 };
    expect(countWindow({ stats, errors: [{}] })).toEqual({ passed: 0, failed: 1 });
  });
});

it('all parts are told, and summed up in one line alone', () => {
  const checks = { name: 'format and lint', passed: 0, failed: 1, seconds: 4 };
  const unit = { name: 'unit tests', passed: 2543, failed: 0, seconds: 305 };
  expect([checks, unit].map(summaryLine)).toEqual([
    'FAILED  0:04  format and lint: 0 passed, 1 failed',
    'passed  5:05  unit tests: 2543 passed, 0 failed',
  ]);
  expect(closingLine([checks, unit])).toBe('2543 passed, 1 failed');
});

it('property tests draw from a seed that is set', () => {
  expect(fc.readConfigureGlobal().seed).toBe(Number(process.env.TURNLAY_SEED ?? 1));
});
