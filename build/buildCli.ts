// Builds the command line where its sources have changed, and says on one line where it lies.
import { builtCli } from './builtApp.ts';

console.log(await builtCli(() => console.error('Building the command line: its sources have changed.')));
