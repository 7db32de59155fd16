// The papers of a job in a folder: all of them, whole, and what a job cannot have is told.

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { drawSupper } from '../../../electron/demo/art.ts';
import { rebaseJob } from '../../../electron/disk/faceFiles.ts';
import { fingerprintOf } from '../../../electron/job/fingerprint.ts';
import { writeTicket } from '../../../electron/ticket/writeTicket.ts';
import type { FolderHandle } from '../../../shared/contract/handles.ts';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import type { Job } from '../../../shared/job/job.ts';
import { granted } from '../../kit/granted.ts';
import { dropFolder, newFolder, openRig, openSupper } from '../../kit/hostRig.ts';
import { readPages } from '../../kit/readPages.ts';
import { allOf, faultsOfTicket, readXml } from '../../kit/readXml.ts';
import { CARDS, jobOf } from '../../kit/ticketJobs.ts';

let folder: string;
beforeEach(() => {
  folder = newFolder();
});
afterEach(() => dropFolder(folder));

const now = new Date('2026-03-01T14:30:00Z');
const at = (...names: readonly string[]) => join(folder, ...names);
/** The job as the host has it: its art by whole paths. */
const inHost = (job: Job) => rebaseJob(job, (file) => at('art', file));
const write = (job: Job, file?: string) => writeTicket({ job: inHost(job), file, to: at('papers'), now });
/** Few large cards on a sheet, so that there is little to set. */
const LARGE = { ...CARDS, pieces: [{ ...CARDS.pieces[0]!, trim: [140, 200] }] };

/** The cards, one of them laid over another. */
function overlapping(): Job {
  const job = jobOf(LARGE);
  const [first, ...rest] = job.arrangement;
  return { ...job, arrangement: [{ ...first!, trim: rest[0]!.trim }, ...rest] };
}

describe('the papers of a job', () => {
  it('are six files in a folder that is made for them, named after the job', async () => {
    const { files, notices } = granted(await write(jobOf(LARGE), at('cards.turnlay')));
    expect(files.map(({ name }) => name)).toEqual([
      'cards-of-the-orchard_run-sheet.pdf',
      'cards-of-the-orchard_dummy.pdf',
      'cards-of-the-orchard_cutting-order.pdf',
      'cards-of-the-orchard.xjdf',
      'cards-of-the-orchard_placements.csv',
      'cards-of-the-orchard_cuts.csv',
    ]);
    expect(notices).toEqual([]);
    expect(readdirSync(at('papers')).toSorted()).toEqual(files.map(({ name }) => name).toSorted());
    const [page] = await readPages(readFileSync(at('papers', 'cards-of-the-orchard_run-sheet.pdf')));
    expect(page!.text).toContain('Job file cards.turnlay.');
    expect(page!.text).toContain('2026-03-01');
    const xml = readFileSync(at('papers', 'cards-of-the-orchard.xjdf'), 'utf8');
    expect(faultsOfTicket(xml)).toBe('');
    expect(allOf(readXml(xml), 'FileSpec')[0]!.attributes.URL).toBe('../art/orchard.pdf');
    expect(allOf(readXml(xml), 'Header')[0]!.attributes.Time).toBe('2026-03-01T14:30:00Z');
  });

  it('are the same bytes for the same job and time, and replace those written before', async () => {
    await write(jobOf(LARGE));
    const before = readdirSync(at('papers')).map((name) => readFileSync(at('papers', name)));
    await write(jobOf(LARGE));
    const after = readdirSync(at('papers')).map((name) => readFileSync(at('papers', name)));
    expect(after).toEqual(before);
  });

  it('have no cutting order where the sheet cannot be cut, and say which older one does not fit', async () => {
    await write(jobOf(LARGE));
    const { files, notices } = granted(await write(overlapping()));
    expect(files.map(({ part }) => part)).toEqual(['run-sheet', 'dummy', 'ticket', 'placements']);
    expect(notices[0]).toMatch(/^There is no cutting order\. Position 1 .* lies over position 2/);
    expect(notices.slice(1)).toEqual([
      'cards-of-the-orchard_cutting-order.pdf is of an earlier writing and does not fit any more.',
      'cards-of-the-orchard_cuts.csv is of an earlier writing and does not fit any more.',
    ]);
  });

  it('look into art only where a page has to be turned', async () => {
    const turned = jobOf({
      ...CARDS,
      pieces: [
        {
          ...CARDS.pieces[0]!,
          front: { file: 'supper.pdf', rotate: 90 },
          back: { file: 'supper.pdf', page: 2 },
        },
      ],
    });
    const without = granted(await write(turned));
    expect(without.notices).toHaveLength(1);
    expect(without.notices[0]).toMatch(/^There is no open job ticket\. .*supper\.pdf/);
    const job = rebaseJob(turned, () => at('supper.pdf'));
    writeFileSync(at('supper.pdf'), await drawSupper(now));
    const made = granted(await writeTicket({ job, file: undefined, to: at('papers'), now }));
    expect(made.notices).toEqual([]);
    expect(made.files.map(({ part }) => part)).toContain('ticket');
  });

  it('are refused where the folder cannot be, and where sheets could not be named', async () => {
    writeFileSync(at('papers'), 'a file');
    const refused = await write(jobOf(LARGE));
    expect(refused.ok ? '' : refused.fault.code).toBe('file-exists');
    const unnamed = await write(jobOf({ ...LARGE, fileNames: '{nothing}' }));
    expect(unnamed.ok ? '' : unnamed.fault.code).toBe('name-unusable');
  });
});

describe('a paper that is named', () => {
  it('is warned of where its sides differ and one form prints both', async () => {
    const stock = { name: 'Cast-coated card', sidesAlike: false, cutter: { ...ANY_CUTTER, mostStack: 144 } };
    const notices = async (job: Job) =>
      granted(await writeTicket({ job: inHost(job), file: undefined, to: at('papers'), now, stock })).notices;
    expect(await notices(jobOf(LARGE))).toEqual([
      'The two sides of Cast-coated card are not alike, and work-and-turn prints fronts and backs on either of them. Take another paper or work-and-back.',
    ]);
    expect(await notices(jobOf(LARGE, { style: 'work-and-back', turn: 'end-to-end' }))).toEqual([]);
  });
});

describe('the fingerprint of a job', () => {
  it('is the same wherever its art lies, and another for another job', () => {
    const job = jobOf(LARGE);
    const moved = rebaseJob(job, (file) => `/elsewhere/${file}`);
    expect(fingerprintOf(moved)).toBe(fingerprintOf(job));
    expect(fingerprintOf(job)).toMatch(/^[0-9a-f]{64}$/);
    expect(fingerprintOf(jobOf({ ...LARGE, title: 'Other cards' }))).not.toBe(fingerprintOf(job));
  });
});

describe('the window', () => {
  it('has the papers written into a folder that was chosen, and is told their names', async () => {
    const rig = await openRig(folder);
    try {
      const { job, file } = await openSupper(rig);
      rig.choose = [folder];
      const choice = await rig.host.handlers.choose.folder({ title: 'Papers' });
      if (choice.kind !== 'chosen') throw new Error('No folder was chosen');
      const ask = { job, folder: choice.chosen.folder, file: file!.file };
      const unknown = await rig.host.handlers.ticket.write({ ...ask, paper: 'Vellum' });
      expect(unknown.ok ? '' : unknown.fault.code).toBe('paper-unknown');
      const papers = granted(await rig.host.handlers.ticket.write({ ...ask, paper: 'Uncoated card' }));
      expect(papers.folder.place).toBe(folder);
      expect(papers.names).toContain('harvest-supper_run-sheet.pdf');
      expect(readdirSync(folder)).toEqual(expect.arrayContaining([...papers.names]));
      const [page] = await readPages(readFileSync(at('harvest-supper_run-sheet.pdf')));
      expect(page!.text).toContain('Job file start.turnlay.');
      expect(page!.text).toContain('Uncoated card');
      const lost = await rig.host.handlers.ticket.write({ job, folder: 'f'.repeat(32) as FolderHandle });
      expect(lost.ok ? '' : lost.fault.code).toBe('handle-unknown');
    } finally {
      await rig.end();
    }
  });
});
