import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NODE_DISK } from '../../../electron/disk/disk.ts';
import { addToRunLog, logPathOf, readRunLog } from '../../../electron/disk/runLog.ts';
import type { FileHandle } from '../../../shared/contract/handles.ts';
import type { RunEvent } from '../../../shared/run/events.ts';
import { writeEntry } from '../../../shared/run/logText.ts';
import { faultyDisk } from '../../kit/faultyDisk.ts';
import { granted } from '../../kit/granted.ts';
import { chosen, codeOf, dropFolder, heard, newFolder, openRig, openSupper } from '../../kit/hostRig.ts';
import { ask } from '../../kit/readBack.ts';
import { delivered, entryOf, go, good, load, runIn, supperRun, trimmed } from '../../kit/runs.ts';

const begun: RunEvent = { kind: 'begun', plan: supperRun };
const AT = new Date('2026-03-02T10:00:00Z');

let folder: string;
beforeEach(() => {
  folder = newFolder();
});
afterEach(() => dropFolder(folder));

/** A log with these events, each added as the host adds it. */
async function logOf(...events: readonly RunEvent[]): Promise<string> {
  const path = join(folder, 'supper.run.jsonl');
  for (const event of events) granted(await addToRunLog(NODE_DISK, path, event, AT));
  return path;
}

describe('the log beside the job', () => {
  it('has the name of the job', () => {
    expect(logPathOf('/jobs/Harvest supper.turnlay')).toBe('/jobs/Harvest supper.run.jsonl');
    expect(logPathOf('/jobs/supper.v2')).toBe('/jobs/supper.v2.run.jsonl');
  });

  it('holds every event with its number and time, one on each line', async () => {
    const path = await logOf(begun, load(30));
    expect(readFileSync(path, 'utf8').split('\n')[1]).toBe(
      '{"id":2,"at":"2026-03-02T10:00:00.000Z","event":{"kind":"loaded","sheets":30}}',
    );
  });

  it('is not touched by what cannot have happened', async () => {
    const path = await logOf(begun, load(30));
    const before = readFileSync(path, 'utf8');
    const refused = await addToRunLog(NODE_DISK, path, good(1, 5), AT);
    expect(codeOf(refused)).toBe('count-refused');
    expect(readFileSync(path, 'utf8')).toBe(before);
  });

  it('goes on after a crash at any byte of the last line as if that line had never been begun', async () => {
    const path = await logOf(begun, load(30), go);
    const whole = readFileSync(path);
    const start = whole.subarray(0, -1).lastIndexOf('\n') + 1;
    for (let end = start; end < whole.length; end += 1) {
      writeFileSync(path, whole.subarray(0, end));
      const left = granted(await readRunLog(NODE_DISK, path));
      expect([runIn(left.book).sheets.proof, left.notices.length]).toEqual(['none', end === start ? 0 : 1]);
      granted(await addToRunLog(NODE_DISK, path, load(7), AT));
      const { book, notices } = granted(await readRunLog(NODE_DISK, path));
      expect([runIn(book).sheets.loaded, notices]).toEqual([37, []]);
    }
  });

  it('is as it was when a step of writing fails, and the sentence says why', async () => {
    const path = await logOf(begun, load(30));
    const before = readFileSync(path, 'utf8');
    const watched = faultyDisk('ENOSPC', () => false);
    granted(await addToRunLog(watched, path, go, AT));
    expect(watched.steps).toEqual(['readFile', 'open', 'stat', 'writeFile', 'sync', 'close']);
    for (let at = 1; at <= 5; at += 1) {
      writeFileSync(path, before);
      const refused = await addToRunLog(
        faultyDisk('ENOSPC', (step) => step === at),
        path,
        go,
        AT,
      );
      expect(refused.ok ? 'ok' : refused.fault.message).toBe(`The disk is full: ${path} found no room.`);
      // Once all is flushed only the closing can fail, and then the count may stand: it is read again.
      if (at < 5) expect(readFileSync(path, 'utf8')).toBe(before);
    }
  });

  it('leaves a half written line to be passed over where the disk does not even allow it to be cut off', async () => {
    const path = await logOf(begun, load(30));
    const refused = await addToRunLog(
      faultyDisk('EIO', (step) => step >= 3),
      path,
      go,
      AT,
    );
    expect(codeOf(refused)).toBe('write-failed');
    const { book, notices } = granted(await readRunLog(NODE_DISK, path));
    expect(runIn(book).sheets).toMatchObject({ blank: 30, proof: 'none' });
    expect(notices[0]).toContain('cut short');
  });

  it('says when it cannot be read', async () => {
    const path = join(folder, 'supper.run.jsonl');
    mkdirSync(path);
    expect(codeOf(await readRunLog(NODE_DISK, path))).toBe('file-unreadable');
    expect(codeOf(await addToRunLog(NODE_DISK, path, begun, AT))).toBe('file-unreadable');
  });
});

describe('the host', () => {
  it('reads and records for a job that the window has opened, and refuses any other', async () => {
    const rig = await openRig(folder);
    const file = await chosen(rig, rig.at('supper.turnlay'));
    const { run } = rig.host.handlers;
    expect(granted(await run.read({ file }))).toEqual({ book: { runs: [], last: 0 }, notices: [] });
    granted(await run.record({ file, event: begun }));
    const { book } = granted(await run.record({ file, event: load(30) }));
    expect(runIn(book).sheets.loaded).toBe(30);
    expect(existsSync(rig.at('supper.run.jsonl'))).toBe(true);
    const stranger = 'f'.repeat(32) as FileHandle;
    expect(codeOf(await run.read({ file: stranger }))).toBe('handle-unknown');
    expect(codeOf(await run.record({ file: stranger, event: begun }))).toBe('handle-unknown');
    await rig.end();
  });

  it('numbers counts in their order when several come at once', async () => {
    const rig = await openRig(folder);
    const file = await chosen(rig, rig.at('supper.turnlay'));
    const { run } = rig.host.handlers;
    await Promise.all(
      [begun, load(30), go, good(1, 5), good(1, 6)].map((event) => run.record({ file, event })),
    );
    const { book, notices } = granted(await run.read({ file }));
    expect(notices).toEqual([]);
    expect(runIn(book).entries.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5]);
    expect(runIn(book).sheets).toMatchObject({ side1: 11, blank: 18 });
    await rig.end();
  });

  it('writes the packing slip of a delivery beside the job, and none of what was not delivered', async () => {
    const rig = await openRig(folder);
    const { job } = await openSupper(rig);
    const file = await chosen(rig, rig.at('start.turnlay'));
    const { run } = rig.host.handlers;
    expect(codeOf(await run.packingSlip({ file, job, delivery: 1 }))).toBe('count-refused');
    for (const event of [begun, load(2), go, trimmed('Supper', 4), delivered('Supper', 3)]) {
      granted(await run.record({ file, event }));
    }
    const slip = granted(await run.packingSlip({ file, job, delivery: 5 }));
    expect(slip.name).toBe('start packing slip 1.pdf');
    const text = ask(readFileSync(rig.at(slip.name)), 'pdftotext', '-layout', 'FILE', '-').replace(
      / +/g,
      ' ',
    );
    expect(text).toContain('Supper 5 × 7 in 108 3 0 105 short');
    expect(granted(await run.packingSlip({ file, job, delivery: 5 })).name).toBe(slip.name);
    expect(codeOf(await run.packingSlip({ file, job, delivery: 2 }))).toBe('count-refused');
    rmSync(rig.at(slip.name));
    mkdirSync(rig.at(slip.name));
    expect((await run.packingSlip({ file, job, delivery: 5 })).ok).toBe(false);
    await rig.end();
  });

  it('gathers the runs of all jobs that were begun here, also at a later start, without those whose logs are gone', async () => {
    const rig = await openRig(folder);
    expect(await rig.host.handlers.run.all()).toEqual([]);
    for (const name of ['one', 'two', 'three']) {
      const file = await chosen(rig, rig.at(`${name}.turnlay`));
      const title = `Job ${name}`;
      granted(
        await rig.host.handlers.run.record({ file, event: { kind: 'begun', plan: { ...supperRun, title } } }),
      );
      granted(await rig.host.handlers.run.record({ file, event: load(3) }));
    }
    rmSync(rig.at('two.run.jsonl'));
    await rig.end();
    const later = await openRig(folder);
    const runs = await later.host.handlers.run.all();
    expect(runs.map(({ plan, sheets }) => [plan.title, sheets.blank])).toEqual([
      ['Job three', 3],
      ['Job one', 3],
    ]);
    await later.end();
  });

  it('tells the window what somebody else has counted, and nothing of its own', async () => {
    const path = await logOf(begun);
    const rig = await openRig(folder);
    const file = await chosen(rig, rig.at('supper.turnlay'));
    const { run } = rig.host.handlers;
    granted(await run.read({ file }));
    granted(await run.record({ file, event: load(30) }));
    appendFileSync(path, writeEntry(entryOf(3, go)));
    const news = await heard(rig, 'run', ({ log }) => log.book.last === 3);
    expect(news.file).toBe(file);
    expect(runIn(news.log.book).sheets.proof).toBe('go');
    expect(rig.told.filter(({ event }) => event === 'run')).toHaveLength(1);
    truncateSync(path, 0);
    expect((await heard(rig, 'run', ({ log }) => log.book.last === 0)).log.notices).toEqual([]);
    await rig.end();
    rmSync(path);
  });
});
