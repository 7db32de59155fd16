// `npm run pack`: the desktop app in one folder, dist/packed; with `-- --installers` what people of this system install.
import { join } from 'node:path';
import { builtApp } from './builtApp.ts';
import { electronDist } from './electronBinary.ts';
import { fetchElectron } from './fetchElectron.ts';
import { packApp } from './packApp.ts';
import { sayProgress } from './sayProgress.ts';

const house = join(import.meta.dirname, '..');
const into = join(house, 'dist/packed');

const fetched =
  electronDist(house) === undefined
    ? await fetchElectron({ house, onProgress: sayProgress('Fetching Electron, this once') })
    : undefined;
const electron = electronDist(house);
if (electron === undefined) {
  const because = fetched?.ok === false ? ` (${fetched.because})` : '';
  console.error(
    `The app cannot be packed without Electron, which could not be fetched${because}. Try again with a network.`,
  );
  process.exitCode = 1;
} else {
  const app = await builtApp(() => console.log('Building the app: its sources have changed.'));
  const as = process.argv.includes('--installers') ? 'installers' : 'folder';
  await packApp({ app, electron, into, as });
  console.log(`Packed into ${into}`);
}
