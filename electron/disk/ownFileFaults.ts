// What is wrong with a file of the program's own, in words. `called` is what a person calls it: `settings`.
import type { Fault } from '../../shared/fault/result.ts';

export function unreadable(called: string, code: string, path: string): Fault {
  return {
    code: 'file-unreadable',
    message: `The file of the ${called} (${path}) cannot be read (${code}).`,
    remedy:
      'It is left as it is, and nothing is changed in it. Get the right to read it or check the disk, then start the program again.',
    where: path,
  };
}

/** What it holds is not what it should hold; whether it was damaged there is nobody to say yet. */
export function unusable(called: string): Fault {
  return {
    code: 'own-file-damaged',
    message: `This is no file of the ${called}.`,
    remedy: 'Begin anew.',
  };
}

/** `aside` is the name under which it is kept. */
export function damaged(called: string, aside: string, hasCopy: boolean): Fault {
  return {
    code: 'own-file-damaged',
    message: `The file of the ${called} was damaged. It is kept as ${aside}.`,
    remedy: hasCopy
      ? 'Take the last good copy back, or begin anew.'
      : 'No copy of it was kept, so the program begins anew with the usual ones.',
  };
}

/** Damaged, and not to be moved out of the way. */
export function damagedForGood(called: string, path: string): Fault {
  return {
    code: 'own-file-damaged',
    message: `The file of the ${called} (${path}) is damaged and cannot be set aside.`,
    remedy:
      'It is left as it is, and nothing is changed in it. Get the right to change its folder, then start the program again.',
    where: path,
  };
}

/** Gone, though copies of it were kept. */
export function missing(called: string, path: string): Fault {
  return {
    code: 'file-missing',
    message: `The file of the ${called} (${path}) is not there any more.`,
    remedy: 'Take the last good copy back, or begin anew.',
    where: path,
  };
}

export function noCopy(called: string): Fault {
  return {
    code: 'file-missing',
    message: `No good copy of the ${called} was kept.`,
    remedy: 'Begin anew, or read them from a file that you exported.',
  };
}
