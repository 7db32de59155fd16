// The jobs that the system hands to the program: on the command line, from a second start, by a double click.
import { extname, resolve } from 'node:path';
import { JOB_ENDING } from '../host/entries.ts';
import { isJobLink } from '../host/jobLink.ts';

/** The job files and the links to jobs among the arguments of a start; relative files are named from `folder`. */
export function askedAmong(argv: readonly string[], folder: string): readonly string[] {
  return argv
    .slice(1)
    .filter((arg) => isJobLink(arg) || (!arg.startsWith('-') && extname(arg).toLowerCase() === JOB_ENDING))
    .map((arg) => (isJobLink(arg) ? arg : resolve(folder, arg)));
}
