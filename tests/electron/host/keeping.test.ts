// Nothing is lost on a crash: the open job is kept, found by the next host, and only once nobody works on it.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { unfinishedName } from '../../../electron/disk/unfinished.ts';
import { edit } from '../../../shared/job/edit.ts';
import type { Job } from '../../../shared/job/job.ts';
import { deadProgram } from '../../kit/deadProgram.ts';
import { granted } from '../../kit/granted.ts';
import {
  chosen,
  codeOf,
  dropFolder,
  type HostRig,
  newFolder,
  openRig,
  openSupper,
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

const retitled = (job: Job, title: string) => granted(edit(job, { do: 'retitle', title }));
const begin = () => rig.host.handlers.app.begin();
const keptNames = () => readdirSync(rig.at('home', 'kept')).filter((name) => name.endsWith('.kept.json'));

it('what dead hosts left that is of no use is gone after the next start; what living ones have stays', async () => {
  await rig.end();
  const dead = deadProgram();
  const part = unfinishedName().replace(`-${process.pid}-`, `-${dead}-`);
  const kept = (name: string) => rig.at('home', 'kept', name);
  writeFileSync(rig.at('home', part), '');
  writeFileSync(kept(part), '');
  writeFileSync(kept('gone.alive'), `${dead}`);
  writeFileSync(kept('lives.alive'), `${process.pid}`);
  rig = await openRig(folder);
  const left = [...readdirSync(rig.home), ...readdirSync(rig.at('home', 'kept'))];
  expect(left).not.toContain(part);
  expect(left).not.toContain('gone.alive');
  expect(left).toContain('lives.alive');
});

describe('a job that is kept', () => {
  it('comes back whole with the next start, still belonging to its file, and unsaved', async () => {
    const { job, file } = await openSupper(rig);
    const changed = retitled(job, 'Winter supper');
    granted(await rig.host.handlers.job.keep({ job: changed, file: file!.file }));
    await rig.end();
    rig = await openRig(folder);
    const { kept } = await begin();
    expect(kept.map(({ title, file: from }) => ({ title, from: from?.name }))).toEqual([
      { title: 'Winter supper', from: 'start.turnlay' },
    ]);
    const back = granted(await rig.host.handlers.job.takeUp({ kept: kept[0]!.kept }));
    expect(back.unsaved).toBe(true);
    expect(back.file?.name).toBe('start.turnlay');
    expect(back.job.brief.title).toBe('Winter supper');
    expect(back.job.arrangement).toEqual(changed.arrangement);
    expect(back.art.map((a) => a.state)).toEqual(['as-laid-out']);
    granted(await rig.host.handlers.job.save({ file: back.file!.file, job: back.job }));
    expect((await begin()).kept).toEqual([]);
  });

  it('does not overwrite what somebody else has saved since', async () => {
    const { job, file } = await openSupper(rig);
    granted(await rig.host.handlers.job.keep({ job: retitled(job, 'Mine'), file: file!.file }));
    await rig.end();
    writeFileSync(rig.at('start.turnlay'), '{}');
    rig = await openRig(folder);
    const back = granted(await rig.host.handlers.job.takeUp({ kept: (await begin()).kept[0]!.kept }));
    expect(codeOf(await rig.host.handlers.job.save({ file: back.file!.file, job: back.job }))).toBe(
      'file-changed',
    );
  });

  it('is thrown away when its job is saved, closed, or let go', async () => {
    const { job } = await openSupper(rig);
    const { keep, save, close, letGo } = rig.host.handlers.job;
    granted(await keep({ job }));
    granted(await save({ file: await chosen(rig, rig.at('a.turnlay')), job }));
    expect(keptNames()).toEqual([]);
    granted(await keep({ job }));
    await close();
    expect(keptNames()).toEqual([]);
    granted(await keep({ job }));
    granted(await letGo({ kept: (await begin()).kept[0]!.kept }));
    expect(keptNames()).toEqual([]);
  });

  it('is offered again after the window was only loaded anew', async () => {
    const { job } = await openSupper(rig);
    granted(await rig.host.handlers.job.keep({ job: retitled(job, 'Reloaded') }));
    expect((await begin()).kept.map((k) => k.title)).toEqual(['Reloaded']);
    granted(await rig.host.handlers.job.takeUp({ kept: (await begin()).kept[0]!.kept }));
    expect((await begin()).kept.map((k) => k.title)).toEqual(['Reloaded']);
  });

  it('is not offered to a second host while the first one lives', async () => {
    const { job } = await openSupper(rig);
    granted(await rig.host.handlers.job.keep({ job }));
    const second = await openRig(folder);
    expect((await second.host.handlers.app.begin()).kept).toEqual([]);
    await second.end();
  });

  it('is offered when its host has been silent for a minute, though its number runs again', async () => {
    const { job } = await openSupper(rig);
    granted(await rig.host.handlers.job.keep({ job }));
    const alive = readdirSync(rig.at('home', 'kept')).find((name) => name.endsWith('.alive'))!;
    const before = new Date(Date.now() - 61_000);
    utimesSync(rig.at('home', 'kept', alive), before, before);
    const second = await openRig(folder);
    expect((await second.host.handlers.app.begin()).kept).toHaveLength(1);
    await second.end();
  });

  it('does not keep others from coming back when it is damaged', async () => {
    const { job } = await openSupper(rig);
    granted(await rig.host.handlers.job.keep({ job }));
    writeFileSync(rig.at('home', 'kept', 'torn.kept.json'), '{ "title": "Torn", "jo');
    writeFileSync(rig.at('home', 'kept', 'odd.kept.json'), '{ "title": "Odd", "at": "noon" }');
    expect((await begin()).kept.map((k) => k.title)).toEqual(['Harvest supper']);
  });

  it('is the last of many changes made in quick succession', async () => {
    const { job } = await openSupper(rig);
    const titles = Array.from({ length: 30 }, (_, i) => `Supper ${i + 1}`);
    await Promise.all(titles.map((title) => rig.host.handlers.job.keep({ job: retitled(job, title) })));
    expect((await begin()).kept.map((k) => k.title)).toEqual(['Supper 30']);
  });
});

describe('a host that is killed', () => {
  it('loses nothing of what it had kept, and the next one finds it at once', async () => {
    await openSupper(rig);
    const child = spawn(
      process.execPath,
      ['--import', 'tsx', join(import.meta.dirname, '../../kit/keepAndWait.ts'), folder],
      { stdio: ['ignore', 'pipe', 'inherit'] },
    );
    const [said] = (await once(child.stdout, 'data')) as [Buffer];
    expect(said.toString('utf8')).toContain('kept');
    expect((await begin()).kept).toEqual([]);
    child.kill('SIGKILL');
    await once(child, 'exit');
    const { kept } = await begin();
    expect(kept.map((k) => k.title)).toEqual(['Kept before the blow']);
    const back = granted(await rig.host.handlers.job.takeUp({ kept: kept[0]!.kept }));
    expect(back.job.arrangement).toHaveLength(4);
  });
});
