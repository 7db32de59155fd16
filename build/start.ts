// `npm start`: the desktop app where Electron's binary is there, else the very same app in the browser of this machine.
import { spawn } from 'node:child_process';
import { join, resolve } from 'node:path';
import { builtApp } from './builtApp.ts';
import { electronBinary } from './electronBinary.ts';

const house = join(import.meta.dirname, '..');
/** Files are named from where the person is, not from the house. */
const from = process.env.INIT_CWD ?? process.cwd();
const args = process.argv.slice(2).map((arg) => (arg.startsWith('-') ? arg : resolve(from, arg)));

const app = await builtApp(() => console.log('Building the app: its sources have changed.'));
const electron = electronBinary(house);
if (electron === undefined) {
  console.log(
    "Electron's binary is not here (npx install-electron fetches it), so the app opens in your browser.",
  );
}
const started = spawn(
  electron ?? process.execPath,
  [join(app, 'host', electron === undefined ? 'loopback.mjs' : 'main.cjs'), ...args],
  { stdio: 'inherit' },
);

// Control+C reaches what was started by itself; it ends in good order, and this with it.
process.on('SIGINT', () => undefined);
process.on('SIGTERM', () => started.kill('SIGTERM'));
started.on('error', (error) => {
  console.error(`The app could not be started: ${error.message}`);
  process.exitCode = 1;
});
started.on('exit', (code) => {
  process.exitCode = code ?? 1;
});
