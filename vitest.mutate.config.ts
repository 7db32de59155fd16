// The tests that mutants of the geometry and the layout are run against.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['tests/shared/{geometry,layout}/**/*.test.ts'], testTimeout: 120_000 },
});
