// Planning and running: another way of working lays the sheet out, and both sides go to the RIP's folder proved.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import type { Position } from '../../shared/layout/position.ts';
import { openBench } from './kit/benchPage.ts';
import { expectAccessible } from './kit/expectAccessible.ts';
import { expect, type Studio, test } from './kit/studio.ts';

const SHEETS = 'harvest-supper_form-1_both-sides_33-sheets.pdf';

/** Opens the supper, laid 4 up in work-and-turn on 11 x 17 in, with an empty folder `hot` chosen for the RIP. */
async function openToSend(
  studio: Studio,
  arrange?: (laid: readonly Position[]) => readonly Position[],
): Promise<Page> {
  const { page } = studio;
  await studio.putSupper();
  studio.makeFolder('hot');
  await openBench(studio, SUPPER_BRIEF, arrange);
  await page.keyboard.press('Control+5');
  await page.getByRole('button', { name: 'Choose the folder…' }).click();
  await page.getByText('hot', { exact: true }).first().dblclick();
  await page.getByRole('button', { name: 'Choose this folder' }).click();
  await expect(page.getByRole('list', { name: 'Files to be written' })).toContainText(SHEETS);
  return page;
}

const sendingOn = (page: Page) => page.getByRole('region', { name: 'Sending' });
const proofOn = (page: Page) => page.getByRole('region', { name: 'Proof' });

test('another way of working is chosen and taken back, and the quantity changes the sheets', async ({
  studio,
}) => {
  await studio.putSupper();
  await openBench(studio, SUPPER_BRIEF);
  const { page } = studio;
  await page.keyboard.press('Control+2');
  const plan = page.getByRole('region', { name: 'Plan', exact: true });
  await expect(plan.getByRole('heading', { name: '33 sheets: 30 needed and 3 overs' })).toBeVisible();
  await expect(plan.getByRole('radio', { name: /^Work-and-turn.*4 up.*one form.*33 sheets/ })).toBeChecked();
  await expect(plan).toContainText('One side only would leave the backs unprinted.');
  await expect(plan).toContainText('left 0.375 in, right 0.375 in');

  const ways = plan.getByRole('region', { name: 'Ways of working' });
  await ways.getByText('Work-and-back (sheetwise), turned end to end').click();
  await expect(plan).toContainText('The lead and tail margins register the second pass');
  await page.keyboard.press('Control+z');
  await expect(plan).toContainText('The left and right margins register the second pass');

  await plan.getByLabel('Supper', { exact: true }).fill('201');
  await page.keyboard.press('Enter');
  await expect(plan.getByRole('heading', { name: '54 sheets: 51 needed and 3 overs' })).toBeVisible();
  await expect(plan.getByRole('row', { name: 'Supper 4 201 204 3' })).toBeVisible();
  await plan.getByLabel('Overs, at least').fill('10');
  await page.keyboard.press('Enter');
  await expect(plan.getByRole('heading', { name: '61 sheets: 51 needed and 10 overs' })).toBeVisible();
  await expectAccessible(page);
});

test('a sheet that holds less than it could says so, and is laid out afresh', async ({ studio }) => {
  await studio.putSupper();
  await openBench(studio, SUPPER_BRIEF, (laid) => laid.slice(0, 2));
  const { page } = studio;
  await page.keyboard.press('Control+2');
  const sheets = page.getByRole('region', { name: 'Sheets' });
  await expect(sheets).toContainText('2 pieces lie on the bench; a fresh layout would hold 4');
  await sheets.getByRole('button', { name: 'Lay out the sheet afresh' }).click();
  await expect(sheets.getByRole('heading', { name: '33 sheets' })).toBeVisible();
  await expect(sheets).not.toContainText('a fresh layout would hold');
});

test('both sides go to the folder of the RIP, and every piece is shown as it was proved', async ({
  studio,
}) => {
  const page = await openToSend(studio);
  await page.getByRole('button', { name: 'Send the sheets' }).click();
  const proof = proofOn(page);
  await expect(proof).toContainText(
    '8 faces were cut out, turned and compared with their art. All are right.',
  );
  const pictures = proof.getByRole('img', { name: /^Position \d, Supper: front, and beside it the back/ });
  await expect(pictures).toHaveCount(4);
  const widths = await pictures.evaluateAll((all) =>
    all.map((img) => (img as HTMLImageElement).naturalWidth),
  );
  expect(Math.min(...widths)).toBeGreaterThan(100);
  expect(readdirSync(studio.at('hot'))).toEqual([SHEETS]);
  await expect(page.getByRole('button', { name: 'Replace and send' })).toBeVisible();

  const steps = page.getByRole('region', { name: 'Running the sheets' });
  await expect(steps).toContainText('Load 33 sheets of 11 × 17 in');
  await expect(
    steps.getByRole('img', { name: /over like a page.*Pass 2: it is held at its right edge/ }),
  ).toBeVisible();
  await expectAccessible(page);
});

test('a file that is there already is told of before it is replaced', async ({ studio }) => {
  await studio.putSupper();
  writeFileSync(`${studio.makeFolder('hot')}/${SHEETS}`, 'an older sheet');
  const page = await openToSend(studio);
  await expect(sendingOn(page)).toContainText('A file of this name is there already. Sending replaces it.');
  await page.getByRole('button', { name: 'Replace and send' }).click();
  await expect(sendingOn(page)).toContainText('its proof found nothing wrong');
  expect(readdirSync(studio.at('hot'))).toEqual([SHEETS]);
  expect(readFileSync(studio.at('hot', SHEETS)).subarray(0, 5).toString()).toBe('%PDF-');
});

test('a folder that went away is said to be missing, and is not made anew', async ({ studio }) => {
  const page = await openToSend(studio);
  rmSync(studio.at('hot'), { recursive: true });
  await page.getByRole('button', { name: 'Send the sheets' }).click();
  await expect(sendingOn(page)).toContainText("hot is not there. Choose the RIP's folder anew");
  expect(readdirSync(studio.folder)).not.toContain('hot');
});

test('sheets with a fault are held back, and go only when the person insists', async ({ studio }) => {
  const page = await openToSend(studio, ([first, ...rest]) => {
    if (first === undefined) throw new Error('The supper is laid four up');
    return [{ ...first, head: first.head === 0 ? 180 : 0 }, ...rest];
  });
  await page.getByRole('button', { name: 'Send the sheets' }).click();
  await expect(sendingOn(page)).toContainText('Harvest supper was held back');
  await expect(proofOn(page)).toContainText('is upside down');
  expect(readdirSync(studio.at('hot'))).toEqual([]);
  await expectAccessible(page);

  await page.getByRole('button', { name: 'Send despite the faults' }).click();
  await expect(sendingOn(page)).toContainText('sent despite');
  expect(readdirSync(studio.at('hot'))).toEqual([SHEETS]);
});
