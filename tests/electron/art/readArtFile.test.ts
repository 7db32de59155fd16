import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readArtFile } from '../../../electron/art/readArtFile.ts';
import { testFolder } from '../../kit/folder.ts';

const folder = testFolder();

it('gives the bytes of a file and the mark by which it is known again', async () => {
  const bytes = new Uint8Array([1, 2, 3]);
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  const read = await readArtFile(folder.save('supper.pdf', bytes));
  expect(read).toEqual({ ok: true, value: { name: 'supper.pdf', bytes, sha256 } });
  // The mark of an empty file is published: FIPS 180-4, test vectors for SHA-256.
  expect(await readArtFile(folder.save('empty.pdf', ''))).toMatchObject({
    value: { sha256: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855' },
  });
});

it('says where a missing file should be', async () => {
  const path = join(folder.path, 'gone.pdf');
  expect(await readArtFile(path)).toEqual({
    ok: false,
    fault: {
      code: 'art-missing',
      message: `gone.pdf is not where the brief says: there is no ${path}.`,
      remedy:
        'Put the file there, or correct its name in the brief; files are named from where the brief lies.',
      where: path,
    },
  });
  const beneathAFile = join(folder.save('file.pdf', ''), 'gone.pdf');
  expect(await readArtFile(beneathAFile)).toMatchObject({ fault: { code: 'art-missing' } });
});

it('takes neither a folder nor a name that no file can have', async () => {
  expect(await readArtFile(folder.path)).toMatchObject({
    fault: {
      code: 'file-unreadable',
      message: expect.stringMatching(/ is a folder or something else that is no file\.$/),
      remedy: 'Name the PDF itself in the brief.',
    },
  });
  const path = join(folder.path, 'a\0b.pdf');
  expect(await readArtFile(path)).toMatchObject({
    fault: { code: 'file-unreadable', message: 'a\0b.pdf cannot be read.', where: path },
  });
});
