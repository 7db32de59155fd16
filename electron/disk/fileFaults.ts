// What goes wrong with files that a person opens and saves, said so that they know what to do.
import type { Fault } from '../../shared/fault/result.ts';
import { systemCode } from './systemCode.ts';

/** The fault for an error of the system while a file was read. Throws what is a mistake of our own. */
export function readingFault(error: unknown, path: string): Fault {
  switch (codeOf(error)) {
    case 'ENOENT':
    case 'ENOTDIR':
      return {
        code: 'file-missing',
        message: `${path} is not there.`,
        remedy: 'Look where it has been moved to, or connect the disk it is on.',
        where: path,
      };
    case 'EISDIR':
      return {
        code: 'file-unreadable',
        message: `${path} is a folder, not a file.`,
        remedy: 'Choose a file in it.',
        where: path,
      };
    default:
      return {
        code: 'file-unreadable',
        message: `${path} cannot be read (${codeOf(error)}).`,
        remedy: 'Get the right to read it, or check the disk it is on.',
        where: path,
      };
  }
}

/** The fault for an error of the system while a file was written. Throws what is a mistake of our own. */
export function writingFault(error: unknown, path: string): Fault {
  const fault = (code: Fault['code'], message: string, remedy: string): Fault => ({
    code,
    message,
    remedy,
    where: path,
  });
  switch (codeOf(error)) {
    case 'ENOENT':
    case 'ENOTDIR':
      return fault('folder-missing', `The folder of ${path} is not there.`, 'Save in another folder.');
    case 'ENOSPC':
    case 'EDQUOT':
      return fault(
        'disk-full',
        `The disk is full: ${path} found no room.`,
        'Make room and save again, or save on another disk. What was there before is untouched.',
      );
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return fault(
        'folder-read-only',
        `${path} cannot be written.`,
        'Save in a folder that you may write to.',
      );
    case 'EEXIST':
      return fault(
        'file-exists',
        `${path} is there already.`,
        'Choose another name, or allow it to be replaced.',
      );
    case 'ENAMETOOLONG':
    case 'EINVAL':
      return fault(
        'name-unusable',
        `${path} cannot be the name of a file here.`,
        'Choose a shorter, plainer name.',
      );
    default:
      return fault(
        'write-failed',
        `${path} could not be written (${codeOf(error)}).`,
        'Check the disk, or save on another one. What was there before is untouched.',
      );
  }
}

function codeOf(error: unknown): string {
  const code = systemCode(error);
  if (code === undefined) throw error;
  return code;
}
