// Starts the app as `npm start` does, for a house in which Electron's package is: `startIn.ts HOUSE [ARGUMENTS]`.
import { startApp } from '../../build/startApp.ts';

const [house = '', ...args] = process.argv.slice(2);
process.exitCode = await startApp(house, args);
