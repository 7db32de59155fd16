// How the desktop app is bundled: its main program, the preload of its window, and the threads that it starts.
import { copyFile, mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type BuildOptions, build } from 'esbuild';
import { besideBundle } from './besideBundle.ts';

const house = join(import.meta.dirname, '..');

/** The threads, by the names that their starters have in the source. */
const THREADS = {
  startArtWorker: join(house, 'electron/art/artWorker.ts'),
  startSendWorker: join(house, 'electron/host/sendWorker.ts'),
};

/** Where the main program looks for what lies beside it: outside the archive when packed, for threads start there. */
const BUNDLE_URL = String.raw`const bundleUrl = require('node:url').pathToFileURL(__filename.replace(/app\.asar(?=[\\/])/, 'app.asar.unpacked')).href;`;

/** Node as it is in Electron. */
const COMMON = {
  bundle: true,
  platform: 'node',
  target: 'node22',
  external: ['electron'],
  legalComments: 'linked',
  logLevel: 'warning',
} as const satisfies BuildOptions;

/** The preload alone; a sandboxed one must be a CommonJS script and may import nothing but `electron`. */
export async function buildPreload(outfile: string): Promise<void> {
  await build({
    ...COMMON,
    entryPoints: [join(house, 'electron/desktop/preload.ts')],
    outfile,
    format: 'cjs',
    platform: 'browser',
  });
}

/** Bundles the whole desktop app into a folder. */
export async function buildDesktop(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  const plugins = [besideBundle(house, folder)];
  await build({
    ...COMMON,
    entryPoints: [join(house, 'electron/desktop/main.ts')],
    outfile: join(folder, 'main.cjs'),
    format: 'cjs',
    plugins,
    define: { 'import.meta.url': 'bundleUrl' },
    banner: { js: BUNDLE_URL },
  });
  await build({
    ...COMMON,
    entryPoints: THREADS,
    outdir: folder,
    outExtension: { '.js': '.mjs' },
    format: 'esm',
    plugins,
    banner: {
      js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);",
    },
  });
  await buildPreload(join(folder, 'preload.cjs'));
  // PDFium's library looks for this file beside the script that it is in.
  const pdfium = createRequire(join(house, 'package.json')).resolve('@hyzyla/pdfium/pdfium.wasm');
  await copyFile(pdfium, join(folder, 'pdfium.wasm'));
}
