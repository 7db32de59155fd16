// Art that moved or changed on the disk is reported, never silently replaced.
import { appendFileSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { FileHashes } from '../../../electron/disk/hashes.ts';
import { ArtStates } from '../../../electron/host/artStates.ts';
import { ArtWatch } from '../../../electron/host/artWatch.ts';
import { Entries } from '../../../electron/host/entries.ts';
import type { ArtState } from '../../../shared/contract/art.ts';
import { rebaseArt } from '../../../shared/job/rebase.ts';
import { granted } from '../../kit/granted.ts';
import {
  chosen,
  codeOf,
  dropFolder,
  type HostRig,
  heard,
  newFolder,
  openRig,
  openSupper,
  putSupper,
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

const supper = () => rig.at('art', 'supper.pdf');
const faultOf = (state: ArtState | undefined) =>
  state === undefined || state.state === 'as-laid-out' ? undefined : state.fault;

describe('the art of a job', () => {
  it('is as it was laid out with, however new the file is', async () => {
    const { job } = await openSupper(rig);
    await putSupper(supper());
    expect(granted(await rig.host.handlers.art.check({ job })).map((a) => a.state)).toEqual(['as-laid-out']);
  });

  it('has changed when one byte differs', async () => {
    const { job } = await openSupper(rig);
    await putSupper(supper(), new Date('2026-09-02T12:00:00Z'));
    const [state] = granted(await rig.host.handlers.art.check({ job }));
    expect(state?.state).toBe('changed');
    expect(faultOf(state)).toMatchObject({ code: 'art-changed', where: supper() });
    expect(faultOf(state)?.message).toContain('supper.pdf has changed');
  });

  it('has moved when the very same file lies near by, under whatever name', async () => {
    const { job, file } = await openSupper(rig);
    mkdirSync(rig.at('final'));
    writeFileSync(rig.at('final', 'supper.pdf'), 'another file of that name');
    renameSync(supper(), rig.at('final', 'supper FINAL.PDF'));
    const [state] = granted(await rig.host.handlers.art.check({ job, file: file!.file }));
    if (state?.state !== 'moved') throw new Error(`It is ${state?.state}`);
    expect(state.found).toMatchObject({ name: 'supper FINAL.PDF', place: rig.at('final') });
    expect(state.fault.code).toBe('art-missing');
    const found = granted(await rig.host.handlers.art.takeIn({ file: state.found.file }));
    expect(found.sha256).toBe(job.art[0]?.sha256);
  });

  it('is missing when no such file is near by', async () => {
    const { job } = await openSupper(rig);
    rmSync(supper());
    const [state] = granted(await rig.host.handlers.art.check({ job }));
    expect(state?.state).toBe('missing');
    expect(faultOf(state)?.message).toBe(`supper.pdf is no longer in ${rig.at('art')}.`);
  });

  it('is said when a job is opened, and the job opens all the same', async () => {
    const { file } = await openSupper(rig);
    rmSync(supper());
    const opened = granted(await rig.host.handlers.job.open({ file: file!.file }));
    expect(opened.art.map((a) => a.state)).toEqual(['missing']);
    expect(opened.job.arrangement).toHaveLength(4);
  });

  it('is refused where the window names files that it was not given', async () => {
    const { job } = await openSupper(rig);
    const other = await openRig(folder);
    expect(codeOf(await other.host.handlers.art.check({ job }))).toBe('handle-unknown');
    await other.end();
  });
});

describe('while a job is open', () => {
  it('a file that changes at once, goes and comes back is told each time', async () => {
    const { job } = await openSupper(rig);
    const art = job.brief.pieces[0]?.front.file;
    appendFileSync(supper(), '\n');
    expect(await heard(rig, 'art', (told) => told.state === 'changed')).toMatchObject({ art });
    rmSync(supper());
    expect(await heard(rig, 'art', (told) => told.state === 'missing')).toMatchObject({ art });
    await putSupper(supper());
    expect(await heard(rig, 'art', (told) => told.state === 'as-laid-out')).toMatchObject({ art });
  });

  it('a file that had changed before its watching began is told', async () => {
    const { job } = await openSupper(rig);
    await rig.host.handlers.job.close();
    const wholePaths = rebaseArt(job.brief, () => supper());
    appendFileSync(supper(), '\n');
    const states: ArtState[] = [];
    const watch = new ArtWatch(new ArtStates(new Entries(), new FileHashes()), (state) => states.push(state));
    watch.follow({ ...job, brief: wholePaths }, []);
    await vi.waitFor(() => expect(states.map((s) => s.state)).toEqual(['changed']), { timeout: 100_000 });
    await watch.end();
  });

  it('nothing is told of the art of a job that was closed', async () => {
    await openSupper(rig);
    await rig.host.handlers.job.close();
    await putSupper(supper(), new Date('2026-09-02T12:00:00Z'));
    await new Promise((resolve) => setTimeout(resolve, 700));
    expect(rig.told).toEqual([]);
  });
});

describe('looking through art', () => {
  it('gives its pages, and its trim for a size that is asked for', async () => {
    await putSupper(supper());
    const art = granted(await rig.host.handlers.art.takeIn({ file: await chosen(rig, supper()) }));
    expect(art).toMatchObject({ name: 'supper.pdf', place: rig.at('art') });
    expect(art.pages.map((p) => p.size)).toEqual([
      { w: 378, h: 522 },
      { w: 378, h: 522 },
    ]);
    const ask = { art: art.art, page: 2, trim: { w: 360, h: 504 }, bleed: 9 };
    expect(granted(await rig.host.handlers.art.findTrim(ask)).trim).toEqual({ x: 9, y: 9, w: 360, h: 504 });
    expect(codeOf(await rig.host.handlers.art.findTrim({ ...ask, page: 3 }))).toBe('art-page-missing');
    expect(codeOf(await rig.host.handlers.art.findTrim({ ...ask, trim: { w: 100, h: 100 } }))).toMatch(
      /^art-size-/,
    );
    await putSupper(supper(), new Date('2026-09-02T12:00:00Z'));
    const again = granted(await rig.host.handlers.art.look({ art: art.art }));
    expect(again.art).toBe(art.art);
    expect(again.sha256).not.toBe(art.sha256);
  });
});
