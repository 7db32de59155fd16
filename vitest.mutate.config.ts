// The tests as mutants are tried with them.
import { defineConfig } from 'vitest/config';
import { AREA_TESTS } from './build/mutation/areas.ts';
import { LikeliestFirst } from './build/mutation/likeliestFirst.ts';
import { loadFailureReporter } from './build/mutation/loadFailures.ts';

// Globs of the area that is tried, set by build/mutation/mutate.ts; a glob with ! leaves tests out.
const globs = (process.env[AREA_TESTS] ?? 'tests/**/*.test.ts').split(',');

export default defineConfig({
  test: {
    include: globs.filter((glob) => !glob.startsWith('!')),
    exclude: globs.filter((glob) => glob.startsWith('!')).map((glob) => glob.slice(1)),
    setupFiles: ['tests/kit/drawnCases.ts'],
    testTimeout: 120_000,
    // One world for all files of a run, since loading them takes longest; every mutant is a run, and so has its own.
    isolate: false,
    sequence: { sequencer: LikeliestFirst },
    reporters: [loadFailureReporter()],
  },
});
