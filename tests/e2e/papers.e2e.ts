// The papers of a job written from the Run stage: with a key or the button, for a paper of the library, into a folder.
import { readdirSync } from 'node:fs';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { openBench } from './kit/benchPage.ts';
import { expectAccessible } from './kit/expectAccessible.ts';
import { expect, test } from './kit/studio.ts';

const PAPERS = [
  'harvest-supper_run-sheet.pdf',
  'harvest-supper_dummy.pdf',
  'harvest-supper_cutting-order.pdf',
  'harvest-supper.xjdf',
  'harvest-supper_placements.csv',
  'harvest-supper_cuts.csv',
];

test('run sheet, dummy, cutting order and ticket are written into a folder that is chosen', async ({
  studio,
}) => {
  const { page } = studio;
  await studio.putSupper();
  studio.makeFolder('papers');
  await openBench(studio, SUPPER_BRIEF);
  await page.keyboard.press('Control+5');
  const panel = page.getByRole('region', { name: 'Papers' });
  await panel.getByRole('button', { name: /Paper that is loaded/ }).click();
  await page.getByRole('option', { name: 'Uncoated card' }).click();
  await page.keyboard.press('Control+p');
  await page.getByText('papers', { exact: true }).first().dblclick();
  await page.getByRole('button', { name: 'Choose this folder' }).click();
  const written = panel.getByRole('list', { name: 'Papers written' });
  for (const name of PAPERS) await expect(written).toContainText(name);
  expect(readdirSync(studio.at('papers')).toSorted()).toEqual(PAPERS.toSorted());
  await expectAccessible(page);
});
