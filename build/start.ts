// `npm start`: the desktop app where Electron's binary is there or can be fetched, else the very same app in the browser.
import { join, resolve } from 'node:path';
import { startApp } from './startApp.ts';

/** Files are named from where the person is, not from the house. */
const from = process.env.INIT_CWD ?? process.cwd();
const args = process.argv.slice(2).map((arg) => (arg.startsWith('-') ? arg : resolve(from, arg)));

process.exitCode = await startApp(join(import.meta.dirname, '..'), args);
