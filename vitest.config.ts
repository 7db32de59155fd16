import { defineConfig } from 'vitest/config';

const SHARED = 'tests/shared/**/*.test.ts';

export default defineConfig({
  test: {
    testTimeout: 120_000,
    projects: [
      {
        extends: true,
        // What is pure keeps nothing between tests, so that its files need no world of their own each.
        test: { name: 'shared', include: [SHARED], isolate: false },
      },
      { extends: true, test: { name: 'house', include: ['tests/**/*.test.ts'], exclude: [SHARED] } },
    ],
  },
});
