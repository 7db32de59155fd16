// Saving a file whole or not at all.
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
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
});
