// What a person reads when a file cannot be read or written: always what to do, and never a mistake of our own hidden.
import { describe, expect, it } from 'vitest';
import { readingFault, writingFault } from '../../../electron/disk/fileFaults.ts';
import { systemError } from '../../kit/faultyDisk.ts';

describe('a file that fails', () => {
  it.each([
    ['ENOENT', 'file-missing', '/jobs/a is not there.'],
    ['ENOTDIR', 'file-missing', '/jobs/a is not there.'],
    ['EISDIR', 'file-unreadable', '/jobs/a is a folder, not a file.'],
    ['EACCES', 'file-unreadable', '/jobs/a cannot be read (EACCES).'],
    ['EIO', 'file-unreadable', '/jobs/a cannot be read (EIO).'],
  ])('while it is read with %s is %s', (code, fault, message) => {
    expect(readingFault(systemError(code), '/jobs/a')).toMatchObject({
      code: fault,
      message,
      where: '/jobs/a',
    });
  });

  it.each([
    ['ENOENT', 'folder-missing'],
    ['ENOTDIR', 'folder-missing'],
    ['ENOSPC', 'disk-full'],
    ['EDQUOT', 'disk-full'],
    ['EACCES', 'folder-read-only'],
    ['EPERM', 'folder-read-only'],
    ['EROFS', 'folder-read-only'],
    ['EEXIST', 'file-exists'],
    ['ENAMETOOLONG', 'name-unusable'],
    ['EINVAL', 'name-unusable'],
    ['EIO', 'write-failed'],
  ])('while it is written with %s is %s', (code, fault) => {
    const said = writingFault(systemError(code), '/jobs/a');
    expect(said).toMatchObject({ code: fault, where: '/jobs/a' });
    expect(said.message).toContain('/jobs/a');
    expect(said.remedy).toMatch(/\.$/);
  });

  it('is thrown on when it is a mistake of our own', () => {
    const mistake = new TypeError('x is not a function');
    expect(() => readingFault(mistake, '/jobs/a')).toThrow(mistake);
    expect(() => writingFault(mistake, '/jobs/a')).toThrow(mistake);
  });
});
