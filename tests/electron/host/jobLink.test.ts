// The code of a run sheet leads to its job, as long as the job was open here lately.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { SUPPER_BRIEF } from '../../../electron/demo/briefs.ts';
import { findLinkedJob, isJobLink } from '../../../electron/host/jobLink.ts';
import { fingerprintOf } from '../../../electron/job/fingerprint.ts';
import { writeJob } from '../../../shared/job/jobFile.ts';
import { linkTo } from '../../../shared/runSheet/jobCode.ts';
import { jobOf } from '../../kit/ticketJobs.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'turnlay-link-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const job = jobOf(SUPPER_BRIEF);
const other = jobOf({ ...SUPPER_BRIEF, title: 'Other cards' });
const put = (name: string, saved = job) => {
  writeFileSync(join(folder, name), writeJob(saved));
  return join(folder, name);
};
const linkOf = (file?: string) => linkTo({ file, fingerprint: fingerprintOf(job) });

describe('the code of a run sheet', () => {
  it('finds the job that says what it said, whatever its file is called now', async () => {
    const paths = [put('cards.turnlay', other), put('renamed.turnlay')];
    expect(await findLinkedJob(linkOf('cards.turnlay'), paths)).toEqual({ ok: true, value: paths[1] });
    expect(await findLinkedJob(linkOf(), paths)).toEqual({ ok: true, value: paths[1] });
  });

  it('finds the file of its name when the job was changed since', async () => {
    const paths = [put('first.turnlay', other), put('my cards.turnlay', other)];
    expect(await findLinkedJob(linkOf('my cards.turnlay'), paths)).toEqual({ ok: true, value: paths[1] });
  });

  it('says so where there is no such job, and passes over files that are gone', async () => {
    const found = await findLinkedJob(linkOf('cards.turnlay'), [join(folder, 'gone.turnlay')]);
    expect(found).toMatchObject({
      ok: false,
      fault: {
        code: 'job-link-unknown',
        message: 'The job of this run sheet (cards.turnlay) is not among those that were open here lately.',
      },
    });
  });

  it.each([
    'turnlay:job',
    'turnlay:job?print=xyz',
    'turnlay:other?print=0123456789abcdef',
    'https://a.example',
  ])('is not %s', async (link) => {
    expect(await findLinkedJob(link, [put('cards.turnlay')])).toMatchObject({
      ok: false,
      fault: { message: 'This link is not the code of a run sheet.' },
    });
  });

  it('is told from the path of a file', () => {
    expect([
      isJobLink('turnlay:job?print=0'),
      isJobLink('TURNLAY:job'),
      isJobLink('/a/turnlay.turnlay'),
    ]).toEqual([true, true, false]);
  });
});
