// The jobs that the system hands to the program: on the command line, from a second start, by a double click.
import { extname, resolve } from 'node:path';
import { JOB_ENDING } from '../host/entries.ts';

/** The job files among the arguments of a start; relative ones are named from `folder`. */
export function jobsAmong(argv: readonly string[], folder: string): readonly string[] {
  return argv
    .slice(1)
    .filter((arg) => !arg.startsWith('-') && extname(arg).toLowerCase() === JOB_ENDING)
    .map((arg) => resolve(folder, arg));
}
