// The tests as mutants are tried with them.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/kit/drawnCases.ts'],
    testTimeout: 120_000,
    // A world of its own for every file: what a module works out when it is loaded is else kept from an earlier mutant.
    isolate: true,
  },
});
