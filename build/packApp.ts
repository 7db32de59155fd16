// The desktop app packed: what was built and Electron's binary, in one folder or as what people of this system install.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build, type Configuration, Platform } from 'electron-builder';
import { LICENCES_FILE } from './licences/writeLicences.ts';

const house = join(import.meta.dirname, '..');

export interface Packing {
  /** The folder with the built app. */
  readonly app: string;
  /** The folder with Electron's binary. */
  readonly electron: string;
  readonly into: string;
  /** One folder that runs where it lies, or installers. */
  readonly as: 'folder' | 'installers';
  readonly afterPack?: Configuration['afterPack'];
}

export async function packApp({ app, electron, into, as, afterPack }: Packing): Promise<void> {
  await build({
    targets: Platform.current().createTarget(as === 'folder' ? 'dir' : await installers()),
    publish: 'never',
    projectDir: house,
    config: {
      extends: join(house, 'build/electron-builder.yml'),
      electronDist: electron,
      directories: { app, output: into },
      extraFiles: [
        { from: join(app, LICENCES_FILE), to: LICENCES_FILE },
        { from: join(house, 'LICENSE'), to: 'LICENSE.turnlay.txt' },
      ],
      ...(afterPack === undefined ? {} : { afterPack }),
    },
  });
}

/**
 * The kinds of installers of this system; `null` for those of the configuration. A Debian package names a homepage and
 * somebody who answers for it, so there is one only where package.json does: neither is made up.
 */
async function installers(): Promise<string[] | null> {
  if (process.platform !== 'linux') return null;
  const { homepage, author } = JSON.parse(await readFile(join(house, 'package.json'), 'utf8'));
  const answers = typeof author === 'object' ? author?.email : /<[^<>@\s]+@[^<>@\s]+>/.test(author ?? '');
  return homepage && answers ? ['AppImage', 'deb'] : ['AppImage'];
}
