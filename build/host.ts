// How the host is bundled: the program of each shell, the preload of the desktop window, and the threads they start.
import { copyFile, mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type BuildOptions, build } from 'esbuild';
import { besideBundle } from './besideBundle.ts';
import { noteHost, type ShippedFiles } from './licences/shippedFiles.ts';

const house = join(import.meta.dirname, '..');

/** The threads, by the names that their starters have in the source. */
const THREADS = {
  startArtWorker: join(house, 'electron/art/artWorker.ts'),
  startCoverageWorker: join(house, 'electron/coverage/coverageWorker.ts'),
  startGangWorker: join(house, 'electron/gang/gangWorker.ts'),
  startSendWorker: join(house, 'electron/job/sendWorker.ts'),
  startTicketWorker: join(house, 'electron/ticket/ticketWorker.ts'),
};

/** The program for a browser, and its threads. */
const MODULES = { loopback: join(house, 'electron/loopback/main.ts'), ...THREADS };

/** The command line, and its threads. */
const CLI_MODULES = { turnlay: join(house, 'electron/cli/turnlay.ts'), ...THREADS };

/** Where the main program looks for what lies beside it: outside the archive when packed, for threads start there. */
const BUNDLE_URL = String.raw`const bundleUrl = require('node:url').pathToFileURL(__filename.replace(/app\.asar(?=[\\/])/, 'app.asar.unpacked')).href;`;

/** Libraries that are read as modules may ask for these, which only scripts have. */
const SCRIPT_NAMES = { __dirname: 'import.meta.dirname', __filename: 'import.meta.filename' };
const PRODUCTION = { 'process.env.NODE_ENV': '"production"' };

/** Node as it is in Electron, and at least the one that the browser's program needs. */
const COMMON = {
  absWorkingDir: house,
  bundle: true,
  define: PRODUCTION,
  platform: 'node',
  target: 'node20',
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

/**
 * Bundles everything of the host into a folder. The window is looked for in `../renderer` from there. What gets in is noted
 * in `shipped`.
 */
export async function buildHost(folder: string, shipped: ShippedFiles = new Set()): Promise<void> {
  await mkdir(folder, { recursive: true });
  const plugins = [besideBundle(house, folder, shipped), noteHost(shipped)];
  await build({
    ...COMMON,
    entryPoints: [join(house, 'electron/desktop/main.ts')],
    outfile: join(folder, 'main.cjs'),
    format: 'cjs',
    plugins,
    define: { ...PRODUCTION, 'import.meta.url': 'bundleUrl' },
    banner: { js: BUNDLE_URL },
  });
  await buildModules(MODULES, folder, shipped);
  await buildPreload(join(folder, 'preload.cjs'));
}

/** Bundles the command line into a folder: `turnlay.mjs`, what its commands load, and their threads. */
export const buildCli = (folder: string, shipped: ShippedFiles): Promise<void> =>
  buildModules(CLI_MODULES, folder, shipped, { splitting: true, chunkNames: 'part-[hash]' });

/** Bundles the threads alone into a folder, as the tests start them. */
export const buildThreads = (folder: string): Promise<void> => buildModules(THREADS, folder, new Set());

/** Bundles programs that are modules; split, what several of them load, or load later, lies in files of its own. */
async function buildModules(
  entryPoints: Readonly<Record<string, string>>,
  folder: string,
  shipped: ShippedFiles,
  split: Pick<BuildOptions, 'splitting' | 'chunkNames'> = {},
): Promise<void> {
  await mkdir(folder, { recursive: true });
  await build({
    ...COMMON,
    ...split,
    entryPoints,
    outdir: folder,
    outExtension: { '.js': '.mjs' },
    format: 'esm',
    plugins: [besideBundle(house, folder, shipped), noteHost(shipped)],
    define: { ...PRODUCTION, ...SCRIPT_NAMES },
    banner: {
      js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);",
    },
  });
  // PDFium's library looks for this file beside the script that it is in.
  const pdfium = createRequire(join(house, 'package.json')).resolve('@hyzyla/pdfium/pdfium.wasm');
  await copyFile(pdfium, join(folder, 'pdfium.wasm'));
  shipped.add(pdfium);
}
