// The frame of the window: beginning, saving, undoing, and what goes wrong around a job, as a person meets it.
import { readdirSync, renameSync, writeFileSync } from 'node:fs';
import { drawSupper } from '../../electron/demo/art.ts';
import { dropFiles } from './kit/dropFiles.ts';
import { expectAccessible } from './kit/expectAccessible.ts';
import { ShellPage } from './kit/shellPage.ts';
import { expect, test } from './kit/studio.ts';
import { putTwoLeaves } from './kit/twoLeaves.ts';

test('two dropped PDFs become a job, and only their pairing and the quantity are asked', async ({
  studio,
}) => {
  const { page } = studio;
  const shell = new ShellPage(page);
  await studio.open();
  await dropFiles(page.locator('body'), await putTwoLeaves(studio));
  await expect(page.getByText('Are leaf one.pdf and leaf two.pdf the two faces of one piece?')).toBeVisible();
  await expect(page.getByLabel('Trim, head up')).toHaveValue('5 x 7 in');
  await expect(page.getByLabel('Bleed')).toHaveValue('1/8 in');
  await page.getByText('Yes, leaf two.pdf is the front').click();
  await expect(page.getByRole('textbox', { name: 'Piece' })).toHaveValue('Leaf two');

  await shell.press('Lay out');
  await expect(page.getByText('One field is still to be set right.')).toBeVisible();
  await page.getByLabel('How many are wanted').fill('120');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('img', { name: /front of Leaf two, printed from leaf two.pdf/ })).toBeVisible();
  await expect(page.getByRole('img', { name: /back of Leaf two, printed from leaf one.pdf/ })).toBeVisible();
  await shell.goTo('Bench');
  await expect(shell.positions).toHaveCount(4);
  await expect(page.getByText('No faults found')).toBeVisible();
});

test('a saved job is there again after the page was loaded anew', async ({ studio }) => {
  const shell = new ShellPage(studio.page);
  await shell.beginSupper(studio);
  await shell.saveAs('Harvest');
  await expect(studio.page.getByText('saved', { exact: true })).toBeVisible();
  expect(readdirSync(studio.folder)).toContain('Harvest.turnlay');

  await studio.page.reload();
  await studio.page.getByRole('button', { name: /Supper.*Harvest\.turnlay/ }).click();
  await shell.goTo('Bench');
  await expect(shell.positions).toHaveCount(4);
  await expect(studio.page.getByText('saved', { exact: true })).toBeVisible();
});

test('every edit can be undone to the beginning and done again to the end', async ({ studio }) => {
  const shell = new ShellPage(studio.page);
  await shell.beginSupper(studio);
  await shell.goTo('Bench');
  const before = await shell.positions.allInnerTexts();
  await shell.changeByHand();
  const after = await shell.positions.allInnerTexts();
  expect(after).not.toEqual(before);
  await expect(shell.undo).toHaveAccessibleName('Undo Swap front and back of 4 pieces');

  let steps = 0;
  for (; await shell.undo.isEnabled(); steps += 1) await studio.page.keyboard.press('Control+z');
  expect(steps).toBe(3);
  expect(await shell.positions.allInnerTexts()).toEqual(before);
  for (; await shell.redo.isEnabled(); steps -= 1) await studio.page.keyboard.press('Control+Shift+z');
  expect(steps).toBe(0);
  expect(await shell.positions.allInnerTexts()).toEqual(after);
});

test('after a power cut the job is as it was at the last change', async ({ studio }) => {
  const { page } = studio;
  const shell = new ShellPage(page);
  await shell.beginSupper(studio);
  await shell.goTo('Bench');
  const kept = page.waitForResponse(
    (r) => r.url().endsWith('/job/keep') && r.request().postDataJSON().ask.job.arrangement[0].face === 'back',
  );
  await shell.changeByHand();
  const left = await shell.positions.allInnerTexts();
  await kept;
  await studio.killHost();
  await expect(page.getByRole('alertdialog', { name: 'The program has ended' })).toBeVisible();

  await studio.open();
  await page.getByRole('button', { name: 'Go on with Supper' }).click();
  await expect(page.getByText('not saved yet')).toBeVisible();
  await shell.goTo('Bench');
  await expect(shell.positions).toHaveCount(4);
  expect(await shell.positions.allInnerTexts()).toEqual(left);
});

test('a file that is no PDF is told with what to do, and the next one is taken', async ({ studio }) => {
  const { page } = studio;
  await studio.open();
  writeFileSync(studio.at('notes.pdf'), 'These are only notes.');
  await dropFiles(page.locator('body'), [studio.at('notes.pdf')]);
  await expect(page.getByRole('alert')).toContainText('notes.pdf');
  await dropFiles(page.locator('body'), [await studio.putSupper()]);
  await expect(page.getByRole('heading', { name: 'New job' })).toBeVisible();
  await expect(page.getByText('notes.pdf')).toBeHidden();
});

test('art that changes or moves on the disk is told, and taken as it is now only when asked', async ({
  studio,
}) => {
  const { page } = studio;
  const shell = new ShellPage(page);
  await shell.beginSupper(studio);
  await shell.saveAs('Harvest');
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  const art = studio.at('Harvest art', 'supper.pdf');
  writeFileSync(art, await drawSupper(new Date('2026-10-01T12:00:00Z')));
  await expect(page.getByText('supper.pdf has changed since the job was laid out.').first()).toBeVisible();
  await page.getByRole('button', { name: 'Take supper.pdf as it is now' }).first().click();
  await expect(page.getByText('The file is the one the job was laid out with.')).toHaveCount(2);
  await expect(shell.undo).toHaveAccessibleName('Undo Take the art of 2 faces');

  // A drawing that is under way may ask for the rest of a file that is gone.
  studio.provoked.push('404 (Not Found)');
  renameSync(art, studio.at('Harvest art', 'renamed.pdf'));
  await page.getByRole('button', { name: 'Use supper.pdf from where it is now' }).first().click();
  await expect(page.getByText('renamed.pdf, page 1.')).toBeVisible();
  await expect(page.getByText('The file is the one the job was laid out with.')).toHaveCount(2);
});

test('revert goes back to the saved job once the person agrees', async ({ studio }) => {
  const { page } = studio;
  const shell = new ShellPage(page);
  await shell.beginSupper(studio);
  await shell.saveAs('Harvest');
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  await shell.goTo('Bench');
  const before = await shell.positions.allInnerTexts();
  await shell.changeByHand();
  await shell.choose('File', 'Revert to saved');
  await shell.press('Go back to the saved job');
  await expect(page.getByText('saved', { exact: true })).toBeVisible();
  expect(await shell.positions.allInnerTexts()).toEqual(before);
});

test('settings are remembered by the next start', async ({ studio }) => {
  const { page } = studio;
  const shell = new ShellPage(page);
  await studio.open();
  studio.makeFolder('rip');
  await expect(page.getByRole('heading', { name: 'Drop the PDFs of a job here' })).toBeVisible();
  await page.keyboard.press('Control+,');
  await page.getByText('millimetres', { exact: true }).click();
  await page.getByText('dark', { exact: true }).click();
  await shell.press('Choose…');
  await page.getByRole('option', { name: 'rip' }).dblclick();
  await shell.press('Choose this folder');
  await expect(page.getByText('~/rip')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('data-surround', 'dark');
  await studio.end();

  await studio.open();
  await expect(page.locator('html')).toHaveAttribute('data-surround', 'dark');
  await expect(page.getByRole('heading', { name: 'Drop the PDFs of a job here' })).toBeVisible();
  await page.keyboard.press('Control+,');
  await expect(page.getByText('~/rip')).toBeVisible();
  await expect(page.getByRole('radio', { name: 'millimetres' })).toBeChecked();
});

for (const surround of ['light', 'dark'] as const) {
  test(`start, brief, Art and boxes are in order for everybody on a ${surround} surround`, async ({
    studio,
  }) => {
    const { page } = studio;
    const shell = new ShellPage(page);
    await page.emulateMedia({ colorScheme: surround });
    await studio.open();
    await expect(page.getByRole('heading', { name: 'Drop the PDFs of a job here' })).toBeVisible();
    await expectAccessible(page);
    await dropFiles(page.locator('body'), await putTwoLeaves(studio));
    await expect(page.getByRole('heading', { name: 'New job' })).toBeVisible();
    await shell.press('Lay out');
    await expectAccessible(page);
    await page.getByLabel('How many are wanted').fill('50');
    await shell.press('Lay out');
    await expect(page.getByText('The file is the one the job was laid out with.')).toHaveCount(2);
    await expectAccessible(page);
    for (const key of ['Control+,', 'F1', 'Shift+F1', 'Control+s']) {
      await page.keyboard.press(key);
      await expect(page.getByRole('dialog')).toBeVisible();
      await expectAccessible(page);
      await page.keyboard.press('Escape');
      await expect(page.getByRole('dialog')).toBeHidden();
    }
    await page.getByRole('button', { name: 'File', exact: true }).click();
    await expect(page.getByRole('menu')).toBeVisible();
    await expectAccessible(page);
  });
}
