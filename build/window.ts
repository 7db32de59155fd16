// How the window is built: one page and its scripts, with what pdf.js fetches beside them.
import { cpSync } from 'node:fs';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import type { InlineConfig, Plugin } from 'vite';
import { noteFolder, noteWindow, type ShippedFiles } from './licences/shippedFiles.ts';

const house = join(import.meta.dirname, '..');

/** Builds the window into a folder, for production whatever the surroundings say. What gets in is noted in `shipped`. */
export const windowBuild = (outDir: string, shipped: ShippedFiles = new Set()): InlineConfig => ({
  configFile: false,
  envDir: false,
  mode: 'production',
  define: { 'process.env.NODE_ENV': '"production"' },
  logLevel: 'warn',
  root: join(house, 'renderer'),
  base: '/',
  publicDir: false,
  plugins: [react(), pdfJsFiles(shipped), noteWindow(shipped)],
  build: {
    outDir,
    emptyOutDir: true,
    target: 'es2023',
    // The policy of the page allows no script within it and no data: URLs but for pictures and fonts.
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 4000,
    rolldownOptions: { checks: { pluginTimings: false } },
  },
  worker: {
    format: 'es',
    plugins: () => [noteWindow(shipped)],
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});

/** Lays the character maps, fonts, colour profiles and decoders of pdf.js under /pdfjs/. */
function pdfJsFiles(shipped: ShippedFiles): Plugin {
  return {
    name: 'pdfjs-files',
    writeBundle(options) {
      for (const folder of ['cmaps', 'standard_fonts', 'wasm', 'iccs']) {
        const from = join(house, 'node_modules/pdfjs-dist', folder);
        noteFolder(shipped, from);
        cpSync(from, join(options.dir ?? '', 'pdfjs', folder), {
          recursive: true,
        });
      }
    },
  };
}
