// Sending from the window: planned, followed, cancelled, proved, and its pictures shown.
import { mkdirSync, readdirSync } from 'node:fs';
import { decode } from 'fast-png';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { shareDone } from '../../../renderer/run/shareDone.ts';
import type { FolderHandle, SendHandle } from '../../../shared/contract/handles.ts';
import type { SendState, SentSheets } from '../../../shared/contract/sending.ts';
import type { Job } from '../../../shared/job/job.ts';
import { granted } from '../../kit/granted.ts';
import {
  codeOf,
  dropFolder,
  type HostRig,
  heard,
  newFolder,
  openRig,
  openSupper,
} from '../../kit/hostRig.ts';

let folder: string;
let rig: HostRig;
let job: Job;
let rip: FolderHandle;
beforeEach(async () => {
  folder = newFolder();
  rig = await openRig(folder);
  ({ job } = await openSupper(rig));
  mkdirSync(rig.at('rip'));
  rig.choose = [rig.at('rip')];
  const choice = await rig.host.handlers.choose.folder({ title: 'RIP' });
  if (choice.kind !== 'chosen') throw new Error('No folder was chosen');
  rip = choice.chosen.folder;
});
afterEach(async () => {
  await rig.end();
  dropFolder(folder);
});

const send = () => rig.host.handlers.send;

/** How a sending ends. */
async function endOf(handle: SendHandle): Promise<SendState> {
  return (await heard(rig, 'send', (told) => told.send === handle && told.state.at !== 'under-way')).state;
}

function sentOf(state: SendState): SentSheets {
  if (state.at !== 'done') throw new Error(JSON.stringify(state));
  return state.sent;
}

describe('sending', () => {
  it('is planned, done, proved and seen', async () => {
    const plan = granted(await send().plan({ job, folder: rip }));
    const [name = ''] = plan.files.map((f) => f.name);
    expect(plan).toMatchObject({
      folder: { name: 'rip' },
      files: [
        { name: expect.stringMatching(/^harvest-supper_form-1_both-sides_\d+-sheets\.pdf$/), exists: false },
      ],
      sides: [
        { side: 1, name, page: 1 },
        { side: 2, name, page: 1 },
      ],
    });
    expect(readdirSync(rig.at('rip'))).toEqual([]);

    const { send: first } = granted(await send().start({ job, folder: rip }));
    const sent = sentOf(await endOf(first));
    expect(sent.is).toBe('sent');
    expect(sent.proof.findings).toEqual([]);
    expect(sent.sides).toEqual(plan.sides);
    expect(readdirSync(rig.at('rip'))).toEqual([name]);
    const steps = rig.told.flatMap((t) =>
      t.event === 'send' && t.told.state.at === 'under-way' ? [t.told.state.progress] : [],
    );
    expect(steps).toContainEqual({ step: 'write-sheets', done: 0, of: 1 });
    const shares = steps.map((progress) => shareDone('send', progress));
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);

    expect(sent.pictures.map((p) => p.position)).toEqual([1, 2, 3, 4]);
    const png = rig.host.picture(sent.pictures[0]!.url);
    const { width, height } = decode(png!);
    expect(width).toBeGreaterThan(height);
    expect(rig.host.picture('/proof/../settings.json')).toBeUndefined();
    expect(granted(await send().state({ send: first }))).toEqual({ at: 'done', sent });

    expect(granted(await send().plan({ job, folder: rip })).files).toEqual([{ name, exists: true }]);
  });

  it('leaves nothing behind when it is cancelled', async () => {
    const { send: handle } = granted(await send().start({ job, folder: rip }));
    granted(await send().cancel({ send: handle }));
    expect(await endOf(handle)).toEqual({ at: 'cancelled' });
    expect(readdirSync(rig.at('rip'))).toEqual([]);
  });

  it('is put in order before the host ends', async () => {
    granted(await send().start({ job, folder: rip }));
    await heard(rig, 'send', ({ state }) => state.at === 'under-way');
    await rig.end();
    expect(readdirSync(rig.at('rip')).filter((name) => !name.endsWith('.pdf'))).toEqual([]);
  });

  it('is refused for folders, jobs and sendings that are not known here', async () => {
    const stranger = 'feedfeedfeedfeedfeedfeedfeedfeed';
    expect(codeOf(await send().plan({ job, folder: stranger as FolderHandle }))).toBe('handle-unknown');
    expect(codeOf(await send().start({ job, folder: stranger as FolderHandle }))).toBe('handle-unknown');
    expect(codeOf(await send().state({ send: stranger as SendHandle }))).toBe('handle-unknown');
    expect(codeOf(await send().cancel({ send: stranger as SendHandle }))).toBe('handle-unknown');
    const other = await openRig(folder);
    expect(codeOf(await other.host.handlers.send.prove({ job, folder: rip }))).toBe('handle-unknown');
    await other.end();
  });
});
