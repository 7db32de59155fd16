// Which parts of the house mutants are made of, and the tests that each part answers to.

/** The variable that tells vitest.mutate.config.ts the tests of the area, with commas between them. */
export const AREA_TESTS = 'TURNLAY_MUTATION_TESTS';

export interface Area {
  /** The folder or file whose mutants are made. */
  readonly source: string;
  /** Globs of the tests that are run against them; a glob with ! leaves tests out. */
  readonly tests: readonly string[];
}

/** The parts that are tried when none is named. */
export const USUAL_AREAS = [
  'geometry',
  'layout',
  'proof',
  'cutting',
  'plan',
  'run',
  'runSheet',
  'ticket',
].map((part) => `shared/${part}`);

/** Tests elsewhere that an area answers to as well, since it is seen whole only there. */
const TESTS_ELSEWHERE: Readonly<Record<string, readonly string[]>> = {
  'shared/run': ['tests/shared/packingSlip/**/*.test.ts'],
};

/** Tests that take longer than all others of their area together: unless they are asked for, the score is what the others find. */
const TOO_LONG: Readonly<Record<string, readonly string[]>> = {
  'shared/layout': ['tests/shared/layout/guillotine/knapsack.test.ts'],
  'shared/cutting': ['tests/shared/cutting/simulation.test.ts'],
  'shared/runSheet': ['tests/shared/runSheet/runSheetPages.test.ts'],
};

/** The area that a folder of shared/, or a file in it, belongs to; undefined for anything else. */
export function areaOf(source: string, longTestsToo = false): Area | undefined {
  const path = source.replace(/^\.\//, '').replace(/\/+$/, '');
  const folder = /^shared\/\w+(?=\/|$)/.exec(path)?.[0];
  if (folder === undefined) return undefined;
  return {
    source: path,
    tests: [
      `tests/${folder}/**/*.test.ts`,
      ...(TESTS_ELSEWHERE[folder] ?? []),
      ...(longTestsToo ? [] : (TOO_LONG[folder] ?? [])).map((test) => `!${test}`),
    ],
  };
}
