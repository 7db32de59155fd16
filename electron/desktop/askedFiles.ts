// The jobs that the system hands to the program: on the command line, from a second start, by a double click.
import { extname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { JOB_ENDING } from '../disk/endings.ts';
import { isJobLink } from '../host/jobLink.ts';

/**
 * The job files and the links to jobs among the arguments of a start. Relative files are named from `folder`; desktops of
 * Linux hand over an address (`file:///...`) instead of a path.
 */
export function askedAmong(argv: readonly string[], folder: string): readonly string[] {
  return argv.slice(1).flatMap((arg) => {
    if (isJobLink(arg)) return [arg];
    const path = arg.startsWith('file:') ? pathOf(arg) : arg;
    if (path === undefined || path.startsWith('-')) return [];
    return extname(path).toLowerCase() === JOB_ENDING ? [resolve(folder, path)] : [];
  });
}

/** The path of a file's address; `undefined` for one that names no file of this machine. */
function pathOf(address: string): string | undefined {
  try {
    return fileURLToPath(address);
  } catch {
    return undefined;
  }
}
