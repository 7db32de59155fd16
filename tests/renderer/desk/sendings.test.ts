// Sending from the window: what was just chosen counts, also while the host is still remembering it.
import { afterAll, expect, it, vi } from 'vitest';
import type { FolderEntry, FolderHandle } from '../../../shared/contract/handles.ts';
import { ok } from '../../../shared/fault/result.ts';
import { supperJob } from '../kit/supperJob.ts';

const rip: FolderEntry = { folder: 'rip' as FolderHandle, name: 'rip', place: '/studio/rip' };
/** The host goes on remembering until the test lets it be done. */
let remember = () => {};
const remembered = new Promise<void>((resolve) => {
  remember = resolve;
});
const host = {
  choose: { folder: vi.fn(async () => ({ kind: 'chosen', chosen: rip })) },
  settings: {
    change: vi.fn(async () => {
      await remembered;
      return ok({ units: 'in', theme: 'as-system', fileNames: '{job}', marks: true, ripFolder: rip });
    }),
  },
  send: {
    start: vi.fn(async () => ok({ send: 'one' })),
    state: async () => ok({ at: 'under-way', said: { step: 'writing', done: 0, of: 1 } }),
  },
};
vi.stubGlobal('window', { turnlay: host });
afterAll(() => vi.unstubAllGlobals());

it('asks for no second folder while the chosen one is being remembered', async () => {
  const { chooseRipFolder } = await import('../../../renderer/desk/settings.ts');
  const { sendOpenJob } = await import('../../../renderer/desk/sendings.ts');
  const choosing = chooseRipFolder();
  await vi.waitFor(() => expect(host.settings.change).toHaveBeenCalledTimes(1));
  const sending = sendOpenJob(supperJob, { replace: false, despiteFindings: false });
  remember();
  await Promise.all([choosing, sending]);
  expect(host.choose.folder).toHaveBeenCalledTimes(1);
  expect(host.send.start).toHaveBeenCalledWith(expect.objectContaining({ folder: 'rip' }));
});
