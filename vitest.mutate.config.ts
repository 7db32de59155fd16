// The tests that mutants of the geometry and the layout are run against.
import { defineConfig } from 'vitest/config';

/** The published instances take longer than all others together, so the score is what the others find alone. */
const TOO_LONG = 'tests/shared/layout/guillotine/knapsack.test.ts';

export default defineConfig({
  test: {
    include: ['tests/shared/{geometry,layout}/**/*.test.ts'],
    exclude: [TOO_LONG],
    testTimeout: 120_000,
  },
});
