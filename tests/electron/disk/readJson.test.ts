// JSON that a person named: read whatever their editor put before it, and refused in words where it is none.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { JobFiles } from '../../../electron/disk/jobFiles.ts';
import { readJson } from '../../../electron/disk/readJson.ts';
import { testFolder } from '../../kit/folder.ts';
import { granted } from '../../kit/granted.ts';

/** U+FEFF, as some editors of Windows begin a text in UTF-8. @source RFC 3629, section 6 */
const BYTE_ORDER_MARK = '\uFEFF';
const folder = testFolder();
const written = readFileSync(join(import.meta.dirname, '../../samples/job-2.turnlay'), 'utf8');

describe('JSON that an editor marked as UTF-8', () => {
  it('is read as it was meant, of any kind', async () => {
    const path = folder.save('marked.json', `${BYTE_ORDER_MARK}{"title":"Supper"}`);
    expect(granted(await readJson(path, 'brief'))).toEqual({ title: 'Supper' });
  });

  it('may be a job, too', async () => {
    const plain = folder.save('plain.turnlay', written);
    const marked = folder.save('marked.turnlay', `${BYTE_ORDER_MARK}${written}`);
    const files = new JobFiles();
    expect(granted(await files.open(marked))).toEqual(granted(await files.open(plain)));
  });
});

describe('a file that is no JSON', () => {
  it('is called what it was to be, with what to do', async () => {
    const path = folder.save('torn.json', '{"title":');
    const brief = await readJson(path, 'brief');
    expect(brief).toMatchObject({ ok: false, fault: { code: 'file-unreadable', where: path } });
    expect(!brief.ok && brief.fault.message).toContain(`The brief ${path} is not JSON`);
    const job = await new JobFiles().open(path);
    expect(job).toMatchObject({ ok: false, fault: { code: 'job-invalid' } });
    expect(!job.ok && job.fault.message).toBe('torn.json is not a job file: it is not JSON.');
  });
});
