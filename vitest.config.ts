import { defineConfig } from 'vitest/config';

const SHARED = 'tests/shared/**/*.test.ts';

export default defineConfig({
  test: {
    setupFiles: ['tests/kit/drawnCases.ts'],
    // Only what hangs is ended by it: a busy machine may take its time.
    testTimeout: 900_000,
    hookTimeout: 900_000,
    // Most files of the host wait for a thread of their own: one less than there are processors leaves half of two idle.
    maxWorkers: '100%',
    projects: [
      {
        extends: true,
        // What is pure keeps nothing between tests, so that its files need no world of their own each.
        test: { name: 'shared', include: [SHARED], isolate: false },
      },
      {
        extends: true,
        test: {
          name: 'house',
          include: ['tests/**/*.test.ts'],
          exclude: [SHARED],
          globalSetup: ['tests/kit/builtThreads.ts'],
        },
      },
    ],
  },
});
