// The tests that mutants of the geometry and the layout are run against.
import { defineConfig } from 'vitest/config';

/** The one published instance that takes longer than all others together; the others stand in for it here. */
const TOO_LONG = 'gcut13';

export default defineConfig({
  test: {
    include: ['tests/shared/{geometry,layout}/**/*.test.ts'],
    testNamePattern: new RegExp(`^(?!.*${TOO_LONG})`),
    testTimeout: 120_000,
  },
});
