import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { JOB_SCHEMA, type Job } from '../../../shared/job/job.ts';
import { readJob, writeJob } from '../../../shared/job/jobFile.ts';
import { migrate } from '../../../shared/job/migrate.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { supperWith } from '../../kit/briefs.ts';

function supperJob(brief: unknown = supperWith({ gutter: '6 mm' }, { trim: '5 x 7in', bleed: '1/8' })): Job {
  const read = readBrief(brief);
  if (!read.ok) throw new Error(read.fault.message);
  return {
    schema: JOB_SCHEMA,
    brief: read.value,
    art: [
      {
        piece: 'Supper',
        face: 'front',
        sha256: 'ab'.repeat(32),
        trim: { x: 9, y: 9, w: 360, h: 504 },
        said: 'its TrimBox',
      },
    ],
    arrangement: [{ piece: 'Supper', face: 'front', trim: { x: 27, y: 99, w: 360, h: 504 }, head: 0 }],
  };
}

const faultOf = (json: unknown) => {
  const read = readJob(json);
  if (read.ok) throw new Error('The job was taken');
  return read.fault;
};

describe('the job file', () => {
  it('comes back as it was saved, lengths as they were typed', () => {
    const job = supperJob();
    const text = writeJob(job);
    expect(readJob(JSON.parse(text))).toEqual({ ok: true, value: job });
    const written = JSON.parse(text);
    expect(written.brief.gutter).toBe('6 mm');
    expect(written.brief.pieces[0].trim).toEqual(['5 in', '7in']);
    expect(written.brief.pieces[0].bleed).toBe('1/8 in');
    expect(written.brief.work).toBe('work-and-turn');
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('keeps the turn of a two-form style', () => {
    for (const turn of ['side-to-side', 'end-to-end'] as const) {
      const job = supperJob(supperWith({ work: 'work-and-back', turn }));
      expect(readJob(JSON.parse(writeJob(job)))).toEqual({ ok: true, value: job });
    }
  });

  it('keeps everything that may be said of a face', () => {
    const job = supperJob(
      supperWith({}, { front: { file: 'a.pdf', page: 2, rotate: 270, trimAt: '1 x 2 mm' } }),
    );
    expect(readJob(JSON.parse(writeJob(job)))).toEqual({ ok: true, value: job });
  });

  it('names the field that is damaged', () => {
    const written = JSON.parse(writeJob(supperJob()));
    expect(faultOf({ ...written, arrangement: [{ ...written.arrangement[0], head: 45 }] })).toMatchObject({
      code: 'job-invalid',
      where: 'arrangement.0.head',
    });
    expect(faultOf({ ...written, art: [{ ...written.art[0], sha256: 'none' }] }).message).toBe(
      'The job file is damaged. art.0.sha256: must be a SHA-256 in hex.',
    );
    expect(faultOf({ ...written, brief: { ...written.brief, title: '' } }).code).toBe('brief-invalid');
  });

  it('refuses pieces that the brief does not have', () => {
    const written = JSON.parse(writeJob(supperJob()));
    const ghost = { ...written.arrangement[0], piece: 'Ghost' };
    expect(faultOf({ ...written, arrangement: [written.arrangement[0], ghost] })).toMatchObject({
      code: 'job-invalid',
      where: 'arrangement.1.piece',
      message: 'The job file is damaged. arrangement.1.piece: "Ghost" is not a piece of the brief.',
    });
    expect(faultOf({ ...written, art: [{ ...written.art[0], piece: 'Ghost' }] }).where).toBe('art.0.piece');
  });

  it('refuses what is no job file', () => {
    for (const other of [null, 'job', [], 3]) {
      expect(faultOf(other)).toMatchObject({
        code: 'job-invalid',
        message: 'This is not a job file. It is not a JSON object.',
      });
    }
    for (const schema of [undefined, 'one', 0, 1.5]) {
      expect(faultOf({ schema }).message).toContain('It does not say which version of the job file it is');
    }
  });

  it('refuses a job saved by a later version, and says that nothing was changed', () => {
    const fault = faultOf({ schema: JOB_SCHEMA + 1 });
    expect(fault.code).toBe('job-too-new');
    expect(fault.message).toContain(`job file ${JOB_SCHEMA + 1}; this program reads up to ${JOB_SCHEMA}`);
    expect(fault.remedy).toContain('The file has not been changed.');
  });
});

describe('a job file of every version there has been', () => {
  it.each(Array.from({ length: JOB_SCHEMA }, (_n, i) => i + 1))('is opened: version %i', (version) => {
    const sample = new URL(`../../samples/job-${version}.turnlay`, import.meta.url);
    const read = readJob(JSON.parse(readFileSync(sample, 'utf8')));
    if (!read.ok) throw new Error(read.fault.message);
    expect(read.value.schema).toBe(JOB_SCHEMA);
    expect(read.value.brief.title).toBe('Harvest supper');
    expect(read.value.arrangement).toHaveLength(4);
  });
});

describe('migration', () => {
  const steps = [
    (file: Readonly<Record<string, unknown>>) => ({ ...file, schema: 2, second: true }),
    (file: Readonly<Record<string, unknown>>) => ({ ...file, schema: 3, third: file.second }),
  ];

  it('takes an old file through every version between', () => {
    expect(migrate({ schema: 1 }, steps, 3)).toEqual({
      ok: true,
      value: { schema: 3, second: true, third: true },
    });
    expect(migrate({ schema: 2, second: 7 }, steps, 3)).toEqual({
      ok: true,
      value: { schema: 3, second: 7, third: 7 },
    });
    expect(migrate({ schema: 3 }, steps, 3)).toEqual({ ok: true, value: { schema: 3 } });
  });

  it('has a step for every version before the present one', () => {
    expect(migrate({ schema: JOB_SCHEMA })).toEqual({ ok: true, value: { schema: JOB_SCHEMA } });
  });
});
