// Saving a file whole or not at all.
import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { saveWhole } from '../../../electron/disk/saveWhole.ts';
import { testFolder } from '../../kit/folder.ts';

const folder = testFolder();
const bytes = (text: string) => Buffer.from(text);
const inside = (name: string) => join(folder.path, name);

describe('saving a file whole', () => {
  it('writes it, and leaves nothing else behind', async () => {
    mkdirSync(inside('new'));
    await saveWhole(inside('new/job'), bytes('one'), false);
    expect(readFileSync(inside('new/job'), 'utf8')).toBe('one');
    expect(readdirSync(inside('new'))).toEqual(['job']);
  });

  it('replaces what is there only when it may', async () => {
    const path = folder.save('there', 'old');
    await expect(saveWhole(path, bytes('new'), false)).rejects.toMatchObject({ code: 'EEXIST' });
    expect(readFileSync(path, 'utf8')).toBe('old');
    await saveWhole(path, bytes('new'), true);
    expect(readFileSync(path, 'utf8')).toBe('new');
  });

  it('leaves a link a link, and replaces what it leads to', async () => {
    const real = folder.save('real', 'old');
    symlinkSync(real, inside('link'));
    await saveWhole(inside('link'), bytes('new'), true);
    expect(readFileSync(real, 'utf8')).toBe('new');
    writeFileSync(real, 'newer');
    expect(readFileSync(inside('link'), 'utf8')).toBe('newer');
  });

  it('leaves the old file and nothing half written when it fails', async () => {
    mkdirSync(inside('full/taken'), { recursive: true });
    await expect(saveWhole(inside('full/taken'), bytes('new'), true)).rejects.toMatchObject({
      code: expect.stringMatching(/^E/),
    });
    expect(readdirSync(inside('full'))).toEqual(['taken']);
  });

  it('keeps the rights of the file that it replaces', async () => {
    const path = folder.save('own', 'old');
    chmodSync(path, 0o640);
    await saveWhole(path, bytes('new'), true);
    expect(statSync(path).mode & 0o777).toBe(0o640);
  });

  it('keeps what is private from everybody else, also where an earlier file was open to them', async () => {
    await saveWhole(inside('secret'), bytes('one'), false, true);
    expect(statSync(inside('secret')).mode & 0o777).toBe(0o600);
    chmodSync(inside('secret'), 0o644);
    await saveWhole(inside('secret'), bytes('two'), true, true);
    expect(statSync(inside('secret')).mode & 0o777).toBe(0o600);
  });
});
