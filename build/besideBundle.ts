// Lets the bundles of the host find the files of libraries beside themselves, so that they need no node_modules.
import { copyFile, mkdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, join } from 'node:path';
import type { Plugin } from 'esbuild';
import type { ShippedFiles } from './licences/shippedFiles.ts';

/** How our own code asks for a file of a library, as an address or as a path. */
const ASKED = /(import\.meta|require)\.resolve\(\s*'([^']+)'\s*\)/g;

/** Each asked file is copied to `folder`, where the bundles lie, noted in `shipped`, and asked for there. */
export function besideBundle(house: string, folder: string, shipped: ShippedFiles): Plugin {
  const resolve = createRequire(join(house, 'package.json')).resolve;
  return {
    name: 'beside-bundle',
    setup(build) {
      build.onLoad({ filter: /[\\/]electron[\\/].*\.ts$/ }, async ({ path }) => {
        const text = await readFile(path, 'utf8');
        const files = [...text.matchAll(ASKED)].map(([, , file = '']) => file);
        await mkdir(folder, { recursive: true });
        for (const path of files.map((file) => resolve(file))) {
          await copyFile(path, join(folder, basename(path)));
          shipped.add(path);
        }
        const contents = text.replace(ASKED, (_whole, by: string, file: string) => {
          const address = `new URL('./${basename(resolve(file))}', import.meta.url)`;
          return by === 'require'
            ? `process.getBuiltinModule('node:url').fileURLToPath(${address})`
            : `${address}.href`;
        });
        return { contents, loader: 'ts' };
      });
    },
  };
}
