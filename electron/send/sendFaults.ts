// What went wrong with the RIP's folder, said so that a person knows what to do.
import type { Fault, FaultCode } from '../../shared/fault/result.ts';

/** The codes with which the system refuses, by what they mean to a person. */
const MEANINGS: Readonly<Record<string, Meaning>> = {
  ENOSPC: 'full',
  EDQUOT: 'quota',
  EFBIG: 'too-big',
  EROFS: 'read-only',
  EACCES: 'read-only',
  EPERM: 'read-only',
  ENOENT: 'gone',
  ENOTDIR: 'gone',
  ENODEV: 'gone',
  ENXIO: 'gone',
  ESTALE: 'gone',
  ENAMETOOLONG: 'bad-name',
  EILSEQ: 'bad-name',
  EINVAL: 'bad-name',
  EEXIST: 'exists',
  EISDIR: 'exists',
  EBUSY: 'in-use',
  ETXTBSY: 'in-use',
};

type Meaning = 'full' | 'quota' | 'too-big' | 'read-only' | 'gone' | 'bad-name' | 'exists' | 'in-use';

const SAYINGS: Readonly<
  Record<Meaning, { code: FaultCode; message: (folder: string, name: string) => string; remedy: string }>
> = {
  full: {
    code: 'disk-full',
    message: (folder, name) => `The disk of ${folder} is full: ${name} found no room.`,
    remedy: 'Make room on it, then send again.',
  },
  quota: {
    code: 'disk-full',
    message: (folder, name) => `Your share of the disk of ${folder} is used up: ${name} found no room.`,
    remedy: 'Make room in it or ask for more, then send again.',
  },
  'too-big': {
    code: 'disk-full',
    message: (folder, name) => `The disk of ${folder} takes no file as large as ${name}.`,
    remedy: 'Choose a folder on another disk.',
  },
  'read-only': {
    code: 'folder-read-only',
    message: (folder) => `${folder} cannot be written to.`,
    remedy: 'Get the right to write there, or choose another folder.',
  },
  gone: {
    code: 'folder-missing',
    message: (folder, name) => `${folder} went away while ${name} was being sent.`,
    remedy: 'Check the disk or the network connection, then send again.',
  },
  'bad-name': {
    code: 'name-unusable',
    message: (folder, name) => `${folder} takes no file of the name ${name}.`,
    remedy: 'Choose a shorter or plainer pattern for the file names.',
  },
  exists: {
    code: 'file-exists',
    message: (folder, name) => `Something called ${name} has just appeared in ${folder}.`,
    remedy: 'Send again with overwriting allowed, or change the pattern for the file names.',
  },
  'in-use': {
    code: 'write-failed',
    message: (folder, name) => `Another program is using ${name} in ${folder}.`,
    remedy: 'Wait until it is done, then send again.',
  },
};

/** The fault for an error of the system while `name` was being sent to `folder`. */
export function faultOf(code: string, folder: string, name: string): Fault {
  const meaning = MEANINGS[code];
  if (meaning === undefined) {
    return {
      code: 'write-failed',
      message: `Sending ${name} to ${folder} failed (${code}).`,
      remedy: 'Check the disk or the network connection, then send again.',
      where: name,
    };
  }
  const saying = SAYINGS[meaning];
  return { code: saying.code, message: saying.message(folder, name), remedy: saying.remedy, where: name };
}
