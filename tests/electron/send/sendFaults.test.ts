import { describe, expect, it } from 'vitest';
import { systemCode } from '../../../electron/disk/systemCode.ts';
import { faultOf } from '../../../electron/send/sendFaults.ts';
import { systemError } from '../../kit/faultyDisk.ts';

describe('what the system refuses', () => {
  it.each([
    ['ENOSPC', 'disk-full', 'The disk of /rip is full: a.pdf found no room.'],
    ['EDQUOT', 'disk-full', 'Your share of the disk of /rip is used up: a.pdf found no room.'],
    ['EFBIG', 'disk-full', 'The disk of /rip takes no file as large as a.pdf.'],
    ['EROFS', 'folder-read-only', '/rip cannot be written to.'],
    ['EACCES', 'folder-read-only', '/rip cannot be written to.'],
    ['EPERM', 'folder-read-only', '/rip cannot be written to.'],
    ['ENOENT', 'folder-missing', '/rip went away while a.pdf was being sent.'],
    ['ENOTDIR', 'folder-missing', '/rip went away while a.pdf was being sent.'],
    ['ENODEV', 'folder-missing', '/rip went away while a.pdf was being sent.'],
    ['ENXIO', 'folder-missing', '/rip went away while a.pdf was being sent.'],
    ['ESTALE', 'folder-missing', '/rip went away while a.pdf was being sent.'],
    ['ENAMETOOLONG', 'name-unusable', '/rip takes no file of the name a.pdf.'],
    ['EILSEQ', 'name-unusable', '/rip takes no file of the name a.pdf.'],
    ['EINVAL', 'name-unusable', '/rip takes no file of the name a.pdf.'],
    ['EEXIST', 'file-exists', 'Something called a.pdf has just appeared in /rip.'],
    ['EISDIR', 'file-exists', 'Something called a.pdf has just appeared in /rip.'],
    ['EBUSY', 'write-failed', 'Another program is using a.pdf in /rip.'],
    ['ETXTBSY', 'write-failed', 'Another program is using a.pdf in /rip.'],
    ['EIO', 'write-failed', 'Sending a.pdf to /rip failed (EIO).'],
    ['ETIMEDOUT', 'write-failed', 'Sending a.pdf to /rip failed (ETIMEDOUT).'],
  ])('with %s is %s, in one sentence', (code, kind, message) => {
    const fault = faultOf(code, '/rip', 'a.pdf');
    expect(fault).toMatchObject({ code: kind, message, where: 'a.pdf' });
    expect(fault.remedy).toMatch(/^[A-Z].*\.$/);
  });

  it('is told from a mistake of our own', () => {
    expect(systemCode(systemError('EIO'))).toBe('EIO');
    expect(systemCode(new TypeError('mistake'))).toBeUndefined();
    expect(systemCode(Object.assign(new Error('mistake'), { code: 'ERR_INVALID_ARG_TYPE' }))).toBeUndefined();
    expect(systemCode(Object.assign(new Error('mistake'), { code: 7 }))).toBeUndefined();
    expect(systemCode('EIO')).toBeUndefined();
  });
});
