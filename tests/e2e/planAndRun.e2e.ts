// Planning and running: another way of working lays the sheet out, and both sides go to the RIP's folder proved.
import { readdirSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { openBench } from './kit/benchPage.ts';
import { expect, test } from './kit/studio.ts';

test('another way of working is chosen and taken back, and the quantity changes the sheets', async ({
  studio,
}) => {
  await studio.putSupper();
  await openBench(studio, SUPPER_BRIEF);
  const { page } = studio;
  await page.keyboard.press('Control+2');
  const plan = page.getByRole('region', { name: 'Plan' });
  await expect(plan.getByRole('heading', { name: '33 sheets: 30 needed and 3 overs' })).toBeVisible();
  await plan.getByText('Work-and-back, turned end to end').click();
  await expect(plan.getByText('The lead and tail margins register the second pass.')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(plan.getByText('The left and right margins register the second pass.')).toBeVisible();
  await plan.getByLabel('Supper', { exact: true }).fill('200');
  await page.keyboard.press('Enter');
  await expect(plan.getByRole('heading', { name: '53 sheets: 50 needed and 3 overs' })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.filter((v) => v.impact === 'serious' || v.impact === 'critical')).toEqual([]);
});

test('both sides go to the folder of the RIP, and every piece is shown as it was proved', async ({
  studio,
}) => {
  await studio.putSupper();
  studio.makeFolder('hot');
  await openBench(studio, SUPPER_BRIEF);
  const { page } = studio;
  await page.keyboard.press('Control+5');
  await page.getByRole('button', { name: 'Choose the folder…' }).click();
  await page.getByText('hot', { exact: true }).first().dblclick();
  await page.getByRole('button', { name: 'Choose this folder' }).click();
  await page.getByRole('button', { name: 'Send both sides' }).click();
  const proof = page.getByRole('region', { name: 'Proof' });
  await expect(proof).toContainText(
    '8 faces were cut out, turned and compared with their art. All are right.',
    { timeout: 60_000 },
  );
  await expect(proof.getByRole('img', { name: /^Position/ })).toHaveCount(4);
  expect(readdirSync(studio.at('hot'))).toEqual(['harvest-supper_form-1_both-sides_33-sheets.pdf']);
  await expect(page.getByRole('button', { name: 'Replace and send' })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.filter((v) => v.impact === 'serious' || v.impact === 'critical')).toEqual([]);
});
