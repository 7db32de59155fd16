// The whole job as one story: from two dropped PDFs to proved sheets in the RIP's folder, with a planted fault found and
// mended on the way, a host that dies, and everything undone and done again.
import { readdirSync, writeFileSync } from 'node:fs';
import { JobFiles } from '../../electron/disk/jobFiles.ts';
import { BenchPage } from './kit/benchPage.ts';
import { dropFiles } from './kit/dropFiles.ts';
import { ShellPage } from './kit/shellPage.ts';
import { expect, type Studio, test } from './kit/studio.ts';
import { putTwoLeaves } from './kit/twoLeaves.ts';

const SHEETS = 'leaf-one_form-1_both-sides_33-sheets.pdf';

/** Drops the two leaves, answers what is asked, and saves the job they become. */
async function beginAndSave(studio: Studio, shell: ShellPage): Promise<BenchPage> {
  const { page } = studio;
  await studio.open();
  writeFileSync(studio.at('order.pdf'), 'One hundred and twenty, please.');
  await dropFiles(page.locator('body'), [studio.at('order.pdf')]);
  await expect(page.getByRole('alert')).toContainText('order.pdf');

  await dropFiles(page.locator('body'), await putTwoLeaves(studio, true));
  await page.getByText('Yes, leaf one.pdf is the front').click();
  await page.getByLabel('How many are wanted').fill('120');
  await shell.press('Lay out');
  await expect(page.getByRole('region', { name: 'Art', exact: true })).toBeVisible();
  await shell.saveAs('Harvest');
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  const saved = await new JobFiles().open(studio.at('Harvest.turnlay'));
  if (!saved.ok) throw new Error(saved.fault.message);
  return new BenchPage(page, saved.value);
}

test('from two dropped PDFs to proved sheets, a back on its head found and mended on the way', async ({
  studio,
}) => {
  const { page } = studio;
  const shell = new ShellPage(page);
  const bench = await beginAndSave(studio, shell);

  // Four up, drawn to equal side margins by hand.
  await shell.goTo('Bench');
  await expect(shell.positions).toHaveCount(4);
  expect(bench.job.brief.work).toEqual({ style: 'work-and-turn' });
  await bench.take(200, 900);
  await bench.carry(182, 945);
  await bench.carry(204, 940);
  await expect(bench.held).toContainText('equal side margins');
  await bench.drop();
  await expect(bench.check).toContainText('No faults found');

  // Turned by its edge.
  await bench.take(800, 700);
  await bench.carry(200, 700);
  await bench.drop();
  await expect(page.getByText('Side 2 up')).toBeVisible();

  // The back on its head is seen before paper is wasted.
  await shell.goTo('Light table');
  const shows = page.getByRole('region', { name: 'What the light table shows' });
  await expect(shows).toContainText('The type on the back of "Leaf one" stands on its head');
  await shows.getByRole('button', { name: 'Turn the art of the back' }).click();
  await expect(shows).toContainText('Both sides agree');

  // Everything undone, and done again.
  for (; await shell.undo.isEnabled(); ) await shell.undo.click();
  await expect(shows).toContainText('stands on its head');
  const kept = page.waitForResponse(
    (r) =>
      r.url().endsWith('/job/keep') && r.request().postDataJSON().ask.job.brief.pieces[0].back.rotate > 0,
  );
  for (; await shell.redo.isEnabled(); ) await shell.redo.click();
  await expect(shows).toContainText('Both sides agree');

  // The host dies; nothing is lost.
  await kept;
  await studio.killHost();
  await expect(page.getByRole('alertdialog', { name: 'The program has ended' })).toBeVisible();
  await studio.open();
  await page.getByRole('button', { name: 'Go on with Leaf one' }).click();
  await shell.goTo('Light table');
  await expect(shows).toContainText('Both sides agree');

  // Sent, and proved from the written file.
  studio.makeFolder('hot');
  await shell.goTo('Run');
  await page.getByRole('button', { name: 'Choose the folder…' }).click();
  await page.getByText('hot', { exact: true }).first().dblclick();
  await page.getByRole('button', { name: 'Choose this folder' }).click();
  await page.getByRole('button', { name: 'Send the sheets' }).click();
  await expect(page.getByRole('region', { name: 'Proof' })).toContainText('All are right.');
  expect(readdirSync(studio.at('hot'))).toEqual([SHEETS]);
});
