import { defineConfig } from '@playwright/test';
import { findBrowser } from './build/findBrowser.ts';

const browser = findBrowser();
if (browser === undefined) {
  throw new Error('No Chromium browser is here. Install one, or name it in TURNLAY_BROWSER.');
}

export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.e2e.ts',
  outputDir: 'reports/e2e',
  reporter: 'list',
  workers: 1,
  // Only what hangs is ended by these: a busy machine may take its time.
  timeout: 600_000,
  expect: { timeout: 60_000 },
  forbidOnly: true,
  // Large bundles are loaded as they are.
  build: { external: ['**/dist/**'] },
  use: {
    viewport: { width: 1280, height: 800 },
    launchOptions: { executablePath: browser },
    screenshot: 'only-on-failure',
  },
});
