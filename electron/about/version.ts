// The version of the program, as its package says.
import { version } from '../../package.json';

export const VERSION: string = version;
