// Jobs on their way between window and disk: laid out, saved whole, opened, and never overwritten by surprise.
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ArtHandle, FileHandle } from '../../../shared/contract/handles.ts';
import { edit } from '../../../shared/job/edit.ts';
import type { Job } from '../../../shared/job/job.ts';
import { granted } from '../../kit/granted.ts';
import {
  chosen,
  codeOf,
  dropFolder,
  type HostRig,
  laySupper,
  newFolder,
  openRig,
  openSupper,
  putSupper,
  supperOf,
} from '../../kit/hostRig.ts';

let folder: string;
let rig: HostRig;
beforeEach(async () => {
  folder = newFolder();
  rig = await openRig(folder);
});
afterEach(async () => {
  await rig.end();
  dropFolder(folder);
});

const jobs = () => rig.host.handlers.job;
const retitled = (job: Job, title: string) => granted(edit(job, { do: 'retitle', title }));
const written = (...names: string[]) => JSON.parse(readFileSync(rig.at(...names), 'utf8'));

describe('a new job', () => {
  it('is laid out from a brief whose faces hold handles: four up, and its art as found', async () => {
    const { job, unsaved, art, artNames, file } = await laySupper(rig);
    expect(job.arrangement).toHaveLength(4);
    expect(job.art.map((a) => a.face)).toEqual(['front', 'back']);
    expect(unsaved).toBe(true);
    expect(file).toBeUndefined();
    expect(art.map((a) => a.state)).toEqual(['as-laid-out']);
    expect(artNames[job.brief.pieces[0]!.front.file]).toBe('supper.pdf');
    expect(JSON.stringify(job)).not.toContain(folder);
  });

  it('is refused when its art was never taken in here, even by its right path', async () => {
    await putSupper(rig.at('art', 'supper.pdf'));
    const brief = supperOf(rig.at('art', 'supper.pdf') as ArtHandle);
    expect(codeOf(await jobs().lay({ brief }))).toBe('handle-unknown');
  });

  it('is laid out from a brief in a file, its art named from where the brief lies', async () => {
    await putSupper(rig.at('orders', 'art', 'supper.pdf'));
    const brief = supperOf('art/supper.pdf' as ArtHandle);
    const plain = { ...brief, work: brief.work.style };
    const text = JSON.stringify(plain, (_key, value) => value?.typed ?? value);
    writeFileSync(rig.at('orders', 'brief.json'), text);
    const laid = granted(await jobs().layFile({ file: await chosen(rig, rig.at('orders', 'brief.json')) }));
    expect(laid.job.arrangement).toHaveLength(4);
    expect(laid.notices.join(' ')).toContain('Supper, front');
  });
});

describe('saving', () => {
  it('names the art from where the job lies, so that both can move together', async () => {
    const { job } = await openSupper(rig);
    mkdirSync(rig.at('jobs'));
    const file = await chosen(rig, rig.at('jobs', 'supper.turnlay'));
    granted(await jobs().save({ file, job }));
    expect(written('jobs', 'supper.turnlay').brief.pieces[0].front.file).toBe('../art/supper.pdf');

    mkdirSync(rig.at('moved'));
    renameSync(rig.at('jobs'), rig.at('moved', 'jobs'));
    renameSync(rig.at('art'), rig.at('moved', 'art'));
    const opened = granted(
      await jobs().open({ file: await chosen(rig, rig.at('moved', 'jobs', 'supper.turnlay')) }),
    );
    expect(opened.art.map((a) => a.state)).toEqual(['as-laid-out']);
    expect(opened.unsaved).toBe(false);
    expect(opened.job.arrangement).toEqual(job.arrangement);
  });

  it('overwrites the job that was opened, but never a file that it does not know unless told to', async () => {
    const { job } = await openSupper(rig);
    const file = await chosen(rig, rig.at('supper.turnlay'));
    granted(await jobs().save({ file, job }));
    granted(await jobs().save({ file, job: retitled(job, 'Winter supper') }));
    expect(written('supper.turnlay').brief.title).toBe('Winter supper');

    writeFileSync(rig.at('other.turnlay'), 'somebody else’s');
    const other = await chosen(rig, rig.at('other.turnlay'));
    expect(codeOf(await jobs().save({ file: other, job }))).toBe('file-exists');
    expect(readFileSync(rig.at('other.turnlay'), 'utf8')).toBe('somebody else’s');
    granted(await jobs().save({ file: other, job, replace: true }));
    expect(written('other.turnlay').brief.title).toBe('Harvest supper');
  });

  it('notices when somebody else has changed the job meanwhile', async () => {
    const { job } = await openSupper(rig);
    const file = await chosen(rig, rig.at('supper.turnlay'));
    granted(await jobs().save({ file, job }));
    const theirs = readFileSync(rig.at('supper.turnlay'), 'utf8').replace('Harvest supper', 'Their supper');
    writeFileSync(rig.at('supper.turnlay'), theirs);
    expect(codeOf(await jobs().save({ file, job }))).toBe('file-changed');
    expect(readFileSync(rig.at('supper.turnlay'), 'utf8')).toBe(theirs);
    granted(await jobs().save({ file, job, replace: true }));
  });

  it('refuses a file handle that was not issued here', async () => {
    const { job } = await openSupper(rig);
    const file = 'feedfeedfeedfeedfeedfeedfeedfeed' as FileHandle;
    expect(codeOf(await jobs().save({ file, job }))).toBe('handle-unknown');
  });

  it('says so when the folder has gone, and when it cannot be written', async () => {
    const { job } = await openSupper(rig);
    const gone = await chosen(rig, rig.at('nowhere', 'supper.turnlay'));
    expect(codeOf(await jobs().save({ file: gone, job }))).toBe('folder-missing');
    mkdirSync(rig.at('taken.turnlay'));
    const taken = await chosen(rig, rig.at('taken.turnlay'));
    expect(codeOf(await jobs().save({ file: taken, job, replace: true }))).not.toBe('ok');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe('art that came as bytes', () => {
  async function* bytesOf(path: string) {
    yield readFileSync(path);
  }

  it('is put beside the job when that is saved, and its handle means that place from then on', async () => {
    const { job } = await openSupper(rig);
    const dropped = granted(await rig.host.dropBytes('Supper 2.pdf', bytesOf(rig.at('art', 'supper.pdf'))));
    if (dropped.is !== 'art') throw new Error('No art');
    const { art } = dropped.art;
    mkdirSync(rig.at('jobs'));
    const file = await chosen(rig, rig.at('jobs', 'supper.turnlay'));
    const saved = granted(await jobs().save({ file, job: { ...job, brief: supperOf(art) } }));
    expect(saved.job.brief.pieces[0]!.front.file).toBe(art);
    expect(written('jobs', 'supper.turnlay').brief.pieces[0].front.file).toBe('supper art/Supper 2.pdf');
    expect(rig.host.artPath(art)).toBe(rig.at('jobs', 'supper art', 'Supper 2.pdf'));
    expect(readFileSync(rig.at('jobs', 'supper art', 'Supper 2.pdf'))).toEqual(
      readFileSync(rig.at('art', 'supper.pdf')),
    );
  });

  it('is refused with the reason when it is no PDF, and a job dropped without its folder is refused', async () => {
    writeFileSync(rig.at('note.txt'), 'Dear printer');
    const note = await rig.host.dropBytes('note.txt', bytesOf(rig.at('note.txt')));
    expect(codeOf(note)).toBe('art-not-pdf');
    expect(note.ok ? '' : note.fault.message).toContain('note.txt');
    expect(codeOf(await rig.host.dropBytes('a.turnlay', bytesOf(rig.at('note.txt'))))).toBe('job-invalid');
  });
});

describe('opening', () => {
  it.each([
    ['no JSON at all', 'file-unreadable or job-invalid', 'Dear printer'],
    ['JSON that is no job', 'job-invalid', '[1, 2, 3]'],
    ['a job of a later version', 'job-too-new', '{ "schema": 99 }'],
  ])('refuses %s', async (_what, code, text) => {
    writeFileSync(rig.at('bad.turnlay'), text);
    const opened = await jobs().open({ file: await chosen(rig, rig.at('bad.turnlay')) });
    expect(code.split(' or ')).toContain(codeOf(opened));
    expect(readFileSync(rig.at('bad.turnlay'), 'utf8')).toBe(text);
  });

  it('refuses a job that is not there, and a folder', async () => {
    expect(codeOf(await jobs().open({ file: await chosen(rig, rig.at('gone.turnlay')) }))).toBe(
      'file-missing',
    );
    mkdirSync(rig.at('folder.turnlay'));
    expect(codeOf(await jobs().open({ file: await chosen(rig, rig.at('folder.turnlay')) }))).toBe(
      'file-unreadable',
    );
  });

  it('remembers the jobs that were opened and saved, the latest first, and says which are gone', async () => {
    const { job } = await openSupper(rig);
    const first = await chosen(rig, rig.at('first.turnlay'));
    const second = await chosen(rig, rig.at('second.turnlay'));
    granted(await jobs().save({ file: first, job }));
    granted(await jobs().save({ file: second, job: retitled(job, 'Second') }));
    granted(await jobs().open({ file: first }));
    rmSync(rig.at('second.turnlay'));
    await rig.end();
    rig = await openRig(folder);
    const recents = await rig.host.handlers.recents.list();
    expect(recents.slice(0, 2).map(({ name, title, there }) => ({ name, title, there }))).toEqual([
      { name: 'first.turnlay', title: 'Harvest supper', there: true },
      { name: 'second.turnlay', title: 'Second', there: false },
    ]);
    const left = await rig.host.handlers.recents.forget({ file: recents[1]!.file });
    expect(left.map((r) => r.name)).toEqual(['first.turnlay', 'start.turnlay']);
  });

  it('remembers what it can of a damaged list of recent jobs', async () => {
    const good = { path: rig.at('a.turnlay'), title: 'A', at: '2026-03-01T10:00:00.000Z' };
    writeFileSync(
      rig.at('home', 'recents.json'),
      JSON.stringify({ jobs: [{ path: 7 }, good, null, { ...good, at: 'noon' }] }),
    );
    expect((await rig.host.handlers.recents.list()).map((r) => r.title)).toEqual(['A']);
  });

  it('hands the jobs asked for at the start to the first window, and later ones as they come', async () => {
    await rig.end();
    rig = await openRig(folder, 'desktop', [rig.at('a.turnlay')]);
    rig.host.askToOpen(rig.at('b.turnlay'));
    const begun = await rig.host.handlers.app.begin();
    expect(begun.asked.map((f) => f.name)).toEqual(['a.turnlay', 'b.turnlay']);
    expect(rig.told).toEqual([]);
    rig.host.askToOpen(rig.at('c.turnlay'));
    expect(rig.told).toMatchObject([{ event: 'open-job', told: { file: { name: 'c.turnlay' } } }]);
    expect((await rig.host.handlers.app.begin()).asked).toEqual([]);
  });

  it('makes nothing of its own beside the job', async () => {
    const { job } = await openSupper(rig);
    granted(await jobs().save({ file: await chosen(rig, rig.at('jobs.turnlay')), job }));
    expect(readdirSync(folder).sort()).toEqual(['art', 'home', 'jobs.turnlay', 'start.turnlay']);
    expect(existsSync(rig.at('jobs art'))).toBe(false);
  });
});
