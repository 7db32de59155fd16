// Every request is checked on arrival, whatever window it comes from.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerCall, BadCall } from '../../../electron/host/answerCall.ts';
import { dropFolder, type HostRig, newFolder, openRig, openSupper } from '../../kit/hostRig.ts';

let folder: string;
let rig: HostRig;
beforeAll(async () => {
  folder = newFolder();
  rig = await openRig(folder);
});
afterAll(async () => {
  await rig.end();
  dropFolder(folder);
});

const ask = (group: string, call: string, what?: unknown) => answerCall(rig.host.handlers, group, call, what);
const handle = '0123456789abcdef0123456789abcdef';

describe('a request', () => {
  it.each([
    ['app', 'begin', { more: 1 }],
    ['app', 'show', { title: 'x', unsaved: 'yes', disabled: [], labels: {} }],
    ['app', 'show', { title: 'x', unsaved: true, disabled: ['fly'], labels: {} }],
    ['settings', 'change', { units: 'cubit' }],
    ['settings', 'change', { ripFolder: '/etc' }],
    ['settings', 'change', { colour: 'red' }],
    ['recents', 'forget', { file: '/etc/passwd' }],
    ['job', 'open', { file: `${handle}0` }],
    ['job', 'open', { file: handle.toUpperCase() }],
    ['job', 'open', undefined],
    ['job', 'save', { file: handle, job: {} }],
    ['job', 'save', { file: handle, job: null }],
    ['job', 'keep', { job: 'x' }],
    ['job', 'lay', { brief: { title: 'x' } }],
    ['choose', 'files', { kind: 'programs', many: true }],
    ['choose', 'newFile', { name: 'x'.repeat(300) }],
    ['files', 'list', { show: 'everything' }],
    ['art', 'findTrim', { art: handle, page: 0, trim: { w: 1, h: 1 }, bleed: 0 }],
    ['art', 'findTrim', { art: handle, page: 1, trim: { w: -1, h: 1 }, bleed: 0 }],
    ['art', 'findTrim', { art: handle, page: 1, trim: { w: 1, h: Number.NaN }, bleed: 0 }],
    ['art', 'findTrim', { art: handle, page: 1, trim: { w: 1, h: 1 }, bleed: 0, rotate: 45 }],
    ['send', 'state', { send: 7 }],
  ])('%s.%s with %j is turned away', async (group, call, what) => {
    await expect(ask(group, call, what)).rejects.toThrow(BadCall);
  });

  it.each([
    ['app', 'quit'],
    ['app', 'toString'],
    ['app', '__proto__'],
    ['__proto__', 'toString'],
    ['constructor', 'name'],
    ['', ''],
  ])('for %s.%s, which the contract does not know, is turned away', async (group, call) => {
    await expect(ask(group, call)).rejects.toThrow(`There is no call ${group}.${call}.`);
  });

  it('with a job is answered only when the job could be read from a file', async () => {
    const { job } = await openSupper(rig);
    expect(await ask('job', 'keep', { job })).toMatchObject({ ok: true });
    const [first, ...rest] = job.arrangement;
    const stranger = { ...job, arrangement: [{ ...first, piece: 'Nobody' }, ...rest] };
    await expect(ask('job', 'keep', { job: stranger })).rejects.toThrow(
      '"Nobody" is not a piece of the brief',
    );
  });

  it('for the title bar reaches the shell', async () => {
    const shown = { title: 'Supper', unsaved: true, disabled: ['undo'], labels: { redo: 'Redo Move piece' } };
    expect(await ask('app', 'show', shown)).toBeNull();
    expect(rig.shown.at(-1)).toEqual(shown);
    expect(await ask('app', 'close')).toBeNull();
    expect(rig.closed).toBe(1);
  });
});
