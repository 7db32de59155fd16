// Which files of the project and of others really get into what is built, as the bundlers tell it.
import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin as EsbuildPlugin } from 'esbuild';
import type { Plugin as VitePlugin } from 'vite';

/** The paths of files that ship. The builders add to it. */
export type ShippedFiles = Set<string>;

/** Notes what a bundle of the host holds; what is left out because nothing uses it is not noted. */
export function noteHost(shipped: ShippedFiles): EsbuildPlugin {
  return {
    name: 'note-host',
    setup(build) {
      const folder = build.initialOptions.absWorkingDir ?? process.cwd();
      build.initialOptions.metafile = true;
      build.onEnd(({ metafile }) => {
        for (const { inputs } of Object.values(metafile?.outputs ?? {})) {
          for (const [path, { bytesInOutput }] of Object.entries(inputs)) {
            if (bytesInOutput > 0) shipped.add(resolve(folder, path));
          }
        }
      });
    },
  };
}

/** The same for a bundle of the window or of one of its threads. */
export function noteWindow(shipped: ShippedFiles): VitePlugin {
  return {
    name: 'note-window',
    generateBundle(_options, bundle) {
      for (const part of Object.values(bundle)) {
        const modules = part.type === 'chunk' ? Object.entries(part.modules) : [];
        for (const [id, { renderedLength }] of modules) {
          if (renderedLength > 0 && !id.startsWith('\0')) shipped.add(id.replace(/\?.*$/, ''));
        }
      }
    },
  };
}

/** Notes every file of a folder that is copied whole. */
export function noteFolder(shipped: ShippedFiles, folder: string): void {
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isFile()) shipped.add(join(entry.parentPath, entry.name));
  }
}
