// The window in the desktop shell: opened from the native menu with a dialog of the system, and named in the title bar.
import { writeFileSync } from 'node:fs';
import { layJob } from '../../electron/job/layJob.ts';
import { writeJob } from '../../shared/job/jobFile.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import { supperWith } from '../kit/briefs.ts';
import { openDesktopPage } from './kit/desktopPage.ts';
import { expect, test } from './kit/studio.ts';

test('a job is opened from the native menu, and the title bar and the menu say how it stands', async ({
  studio,
  page,
  app,
}) => {
  const art = await studio.putSupper();
  const brief = readBrief(supperWith({}, { front: { file: art, page: 1 }, back: { file: art, page: 2 } }));
  if (!brief.ok) throw new Error(brief.fault.message);
  const laid = await layJob(brief.value);
  if (!laid.ok) throw new Error(laid.fault.message);
  writeFileSync(studio.at('supper.turnlay'), writeJob(laid.value.job));

  const { electron, window, quit } = await openDesktopPage(page, app, studio.folder);
  const item = (id: string) => electron.menu.flatMap((m) => m.submenu ?? []).find((i) => i.id === id);
  await expect.poll(() => electron.invoked.has('turnlay:call:app.begin')).toBe(true);
  await expect.poll(() => item('save-job')?.enabled).toBe(false);
  electron.open = { canceled: false, filePaths: [studio.at('supper.turnlay')] };
  item('open-job')?.click?.();
  await expect.poll(() => window.title).toBe('Harvest supper – Turnlay');
  expect(electron.dialogs.map((d) => d.kind)).toEqual(['open']);
  await expect.poll(() => item('lay-out')?.enabled).toBe(true);
  await quit();
});
