// Printers and papers: changed, copied, removed and brought back, learnt from, and carried to another studio.
import { readFileSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import type { Library } from '../../shared/library/library.ts';
import { readLibrary, writeLibrary } from '../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../shared/library/startingLibrary.ts';
import { expectAccessible } from './kit/expectAccessible.ts';
import { ShellPage } from './kit/shellPage.ts';
import { expect, type Studio, test } from './kit/studio.ts';

async function openLibrary(studio: Studio): Promise<Page> {
  const { page } = studio;
  await studio.open();
  await expect(page.getByRole('heading', { name: 'Drop the PDFs of a job here' })).toBeVisible();
  await page.keyboard.press('Control+Alt+l');
  await expect(page.getByRole('dialog', { name: 'Printers and papers' })).toBeVisible();
  return page;
}

/** The library as the host keeps it on the disk. */
function keptOn(studio: Studio): Library {
  const read = readLibrary(JSON.parse(readFileSync(studio.at('.turnlay', 'library.json'), 'utf8')).library);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}

const choose = (page: Page, name: string) => page.getByRole('option', { name, exact: true }).click();

test('a printer is changed, saved as soon as a field is left, and there again at the next start', async ({
  studio,
}) => {
  let page = await openLibrary(studio);
  await page.getByLabel('Price per ml, $').fill('0,125');
  await page.getByLabel('Largest sheet').fill('18 x 24');
  await page.keyboard.press('Tab');
  await expect(page.getByLabel('Price per ml, $')).toHaveValue('0.125');
  await expect(page.getByLabel('Largest sheet')).toHaveValue('18 x 24 in');
  await expect(page.getByText('Changes are saved as they are made.')).toBeVisible();
  await expect.poll(() => keptOn(studio).printers[0]?.ink.pricePerMl).toBe(0.125);
  await new ShellPage(page).press('Done');
  await studio.end();

  page = await openLibrary(studio);
  await expect(page.getByLabel('Largest sheet')).toHaveValue('18 x 24 in');
});

test('what is wrong is told beside its field and kept as it was typed, until it is set right or left', async ({
  studio,
}) => {
  const page = await openLibrary(studio);
  const shell = new ShellPage(page);
  await choose(page, 'Silk card, coated both sides');
  await page.getByLabel('Weight').fill('120 lb');
  await page.getByLabel('Caliper').fill('12 pt');
  await choose(page, 'Rates and units');
  await expect(page.getByRole('option', { name: /Silk card.*1 to be set right/ })).toBeVisible();
  await page.getByRole('option', { name: /Silk card/ }).click();
  await expect(page.getByLabel('Weight')).toHaveValue('120 lb');
  await expect(
    page.getByText(/^Weight: "120 lb" is not the weight of a paper\..*pounds need the grade/),
  ).toBeVisible();
  await expect(page.getByText('One field is still to be set right.')).toBeVisible();

  await page.keyboard.press('Escape');
  await expect(page.getByRole('alertdialog', { name: 'Leave it unfinished?' })).toBeVisible();
  await shell.press('Go on with it');
  await page.getByLabel('Weight').fill('120 lb cover');
  await page.keyboard.press('Enter');
  await expect(page.getByText('= 324 g/m²')).toBeVisible();
  await expect(page.getByText('Changes are saved as they are made.')).toBeVisible();
  await expect.poll(() => keptOn(studio).papers[1]?.caliper.typed).toBe('12 pt');
  expect(keptOn(studio).papers[1]?.weight.typed).toBe('120 lb cover');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
});

test('a printer is added, copied and removed, and every step is undone by its name', async ({ studio }) => {
  const page = await openLibrary(studio);
  const shell = new ShellPage(page);
  const printers = page.getByRole('listbox', { name: 'Printers' }).getByRole('option');
  await shell.press('Add a printer');
  await page.getByLabel('Name of the printer').fill('Press by the door');
  await shell.press('Copy Press by the door');
  await expect(printers).toHaveText([
    'Hand-fed sheet printer',
    'Tray-fed sheet printer',
    'Two-sided sheet printer',
    'Press by the door',
    'Press by the door copy',
  ]);
  await choose(page, 'Tray-fed sheet printer');
  await shell.press('Remove Tray-fed sheet printer');
  await expect(printers).toHaveCount(4);
  await shell.press('Undo Remove Tray-fed sheet printer');
  await expect(printers).toHaveCount(5);
  await expect(page.getByLabel('Name of the printer')).toHaveValue('Tray-fed sheet printer');
  for (const step of ['Add Press by the door copy', 'Change New printer', 'Add New printer']) {
    await shell.press(`Undo ${step}`);
  }
  await expect(printers).toHaveCount(3);
  await page.keyboard.press('Control+Shift+z');
  await expect(printers).toHaveCount(4);
  await expect.poll(() => keptOn(studio).printers.at(-1)?.name).toBe('New printer');
});

test('readings of the counter make a fit of the rule of thumb, and taking one away brings it back', async ({
  studio,
}) => {
  const page = await openLibrary(studio);
  const shell = new ShellPage(page);
  const readings = [
    ['Harvest supper', '12.4', '85', '90'],
    ['Lamp cards', '3.1', '210', '55'],
    ['Tags', '7', '30', '22'],
    ['Menus', '9.5', '140', '118'],
  ] as const;
  await expect(page.getByText(/^A rule of thumb: 0\.4\sml for every m² printed/)).toBeVisible();
  for (const [job, area, coverage, ml] of readings) {
    await shell.press('Add a reading');
    await page.getByRole('textbox', { name: 'Job' }).fill(job);
    await page.getByLabel('Printed, m²').fill(area);
    await page.getByLabel('Counter, ml').fill(ml);
    await shell.press('Add the reading');
    await expect(page.getByText('Coverage, % must be a number.')).toBeVisible();
    await page.getByLabel('Coverage, %').fill(coverage);
    await shell.press('Add the reading');
  }
  await expect(page.getByText('Learnt from 4 readings.')).toBeVisible();
  await expect(page.getByText(/^Fitted: /)).toBeVisible();
  await expect.poll(() => keptOn(studio).printers[0]?.ink.model.source).toBe('fitted');

  await page.getByRole('button', { name: /Remove the reading of Tags/ }).click();
  await expect(page.getByText(/4 readings at least are needed to learn from, 1 more/)).toBeVisible();
  await expect
    .poll(() => keptOn(studio).printers[0]?.ink.model)
    .toEqual(startingLibrary().printers[0]?.ink.model);
});

test('a library is written for others and taken in from them, beside what there is or in its place', async ({
  studio,
}) => {
  const page = await openLibrary(studio);
  const shell = new ShellPage(page);
  studio.makeFolder('to carry');
  await shell.press('Export…');
  await page.getByText('to carry', { exact: true }).first().dblclick();
  await shell.press('Choose this folder');
  await expect(page.getByText(/^Written: .*Printers and papers\.json\.$/)).toBeVisible();
  const file = studio.at('to carry', 'Printers and papers.json');
  expect(readFileSync(file, 'utf8')).toBe(writeLibrary(startingLibrary()));

  writeFileSync(
    studio.at('others.json'),
    JSON.stringify({ ...JSON.parse(readFileSync(file, 'utf8')), currency: 'EUR' }),
  );
  for (const [how, printers, price] of [
    ['Add them to what there is', 6, 'Labour per hour, $'],
    ['Replace what there is', 3, 'Labour per hour, EUR'],
  ] as const) {
    await shell.press('Import…');
    await page.getByText('others.json', { exact: true }).dblclick();
    await shell.press(how);
    await expect(page.getByRole('listbox', { name: 'Printers' }).getByRole('option')).toHaveCount(printers);
    await expect(page.getByLabel(price)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Undo Import others.json' })).toBeEnabled();
  }
  writeFileSync(studio.at('broken.json'), JSON.stringify({ schema: 1, units: 'in' }));
  await shell.press('Import…');
  await page.getByText('broken.json', { exact: true }).dblclick();
  await expect(page.getByText(/The library cannot be used\. currency: is missing/)).toBeVisible();
  await expect(page.getByLabel('Labour per hour, EUR')).toBeVisible();
});

for (const surround of ['light', 'dark'] as const) {
  test(`printers, papers and rates are in order for everybody on a ${surround} surround`, async ({
    studio,
  }) => {
    await studio.page.emulateMedia({ colorScheme: surround });
    const page = await openLibrary(studio);
    const shell = new ShellPage(page);
    await shell.press('Add a reading');
    await shell.press('Add the reading');
    await expectAccessible(page);
    await choose(page, 'Cotton paper on the roll');
    await page.getByLabel('Width of the roll').fill('wide');
    await page.keyboard.press('Tab');
    await expectAccessible(page);
    await choose(page, 'Rates and units');
    await expectAccessible(page);
  });
}
