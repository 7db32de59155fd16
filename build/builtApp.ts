// The built app: made when the sources have changed, found again when they have not, and the same whoever asks for it.
import { join } from 'node:path';
import { buildApart, type Product } from './buildApart.ts';
import { built } from './built.ts';
import { stampOf } from './stamp.ts';

const house = join(import.meta.dirname, '..');

/** Builds the app into a folder: the window into `renderer/`, its host into `host/`, and what it is called. */
export const buildApp = (folder: string): Promise<void> => buildApart('app', folder);

/** The folder with the app built from the sources as they are now. `onBuild` is told when it has to be built first. */
export const builtApp = (onBuild: () => void): Promise<string> => builtOf('app', onBuild);

/** The same of the command line, which begins in its `turnlay.mjs`. */
export const builtCli = (onBuild: () => void): Promise<string> => builtOf('cli', onBuild);

function builtOf(what: Product, onBuild: () => void): Promise<string> {
  return built(join(house, 'dist'), what, stampOf(house), async (folder) => {
    onBuild();
    await buildApart(what, folder);
  });
}
