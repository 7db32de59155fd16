// Running the sheets: counted through both passes, over a power cut, until the pieces are delivered.
import { readdirSync, readFileSync, truncateSync } from 'node:fs';
import { expectAccessible } from './kit/expectAccessible.ts';
import { RunPage } from './kit/runPage.ts';
import { expect, test } from './kit/studio.ts';

test('thirty sheets are run with spoilage, over a power cut, and delivered', async ({ studio }) => {
  const { page } = studio;
  const run = new RunPage(page);
  await run.begin(studio);
  await expect(run.stands).toContainText('Load 30 sheets: 27 needed and 3 overs.');
  await page.keyboard.press('Enter');
  await expect(run.stands).toContainText('27 sheets to come good, 30 in hand; 3 may be spoiled.');
  await expectAccessible(page);

  // The proof sheet: a no-go, then a go.
  await run.press('No-go…');
  await run.counting.getByText('colour or banding', { exact: true }).click();
  await run.press('Spoiled: prove again');
  await expect(run.log).toContainText('Proof sheet: no-go (colour or banding)');
  await run.press(/^Go/);
  await run.expectPiles(28, 0, 0, 1, 1, 30);

  // Pass 1: a miscount is taken back by its name.
  await run.expectAsks('Good out of pass 1');
  await run.type(26);
  await run.expectPiles(2, 26, 0, 1, 1, 30);
  await page.keyboard.press('Control+Shift+Backspace');
  await run.expectPiles(28, 0, 0, 1, 1, 30);
  await run.type(25);
  await run.spoil('Spoiled in pass 1', 2, 'fed askew');
  await run.expectPiles(1, 25, 0, 1, 3, 30);
  await expect(run.stands).toContainText('26 sheets to come good, 26 in hand; none may be spoiled.');
  await expectAccessible(page);

  // The power fails while a count is being written.
  const log = studio.at('test.run.jsonl');
  await studio.killHost();
  truncateSync(log, readFileSync(log).length - 7);
  await studio.open([studio.at('test.turnlay')]);
  await page.getByRole('button', { name: 'Run', exact: true }).click();
  await expect(page.getByRole('region', { name: 'What the log says' })).toContainText('cut short');
  await run.expectPiles(3, 25, 0, 1, 1, 30);
  await run.spoil('Spoiled in pass 1', 2, 'fed askew');
  await run.expectPiles(1, 25, 0, 1, 3, 30);
  await expect(page.getByRole('region', { name: 'What the log says' })).toHaveCount(0);

  // Dry and turn, with the picture of the turn; then pass 2.
  await run.press('The pile is through: dry and turn');
  await expect(run.counting.getByRole('img', { name: /over like a page/ })).toBeVisible();
  await expectAccessible(page);
  await run.press('It is dry and turned');
  await run.expectAsks('Good out of pass 2');
  await run.type(26);
  await expect(run.counting.getByRole('alert')).toContainText(
    'Pass 2 cannot have had 26 sheets: of those that came good out of pass 1, 25 are turned and waiting.',
  );
  await run.counting.getByLabel('Good out of pass 2').last().fill('');
  await run.type(24);
  await run.spoil('Spoiled in pass 2', 1, 'out of register');
  await expect(run.stands).toContainText('1 short: load 4 sheets more, 1 needed and 3 overs.');
  await run.expectPiles(1, 0, 0, 25, 4, 30);

  // Two more sheets for what was spoiled.
  await run.press(/^Load/);
  await run.counting.getByLabel('More sheets loaded').last().fill('2');
  await page.keyboard.press('Enter');
  await run.expectAsks('Good out of pass 1');
  await run.type(3);
  await run.press('It is dry and turned');
  await run.expectAsks('Good out of pass 2');
  await run.type(3);
  await expect(run.stands).toContainText('The quantity is met.');
  await run.expectPiles(0, 0, 0, 28, 4, 32);

  await run.expectAsks('Good Supper');

  // An early count is not taken back from under the later ones.
  await run.press('Take back “Pass 1: 25 good”');
  await expect(page.getByText('cannot be taken back, because “Dried and turned” needs it')).toBeVisible();

  // Trimming and delivery.
  await run.spoil('Spoiled Supper', 2, 'edge torn or nicked');
  await run.counting.getByLabel('Good Supper').last().fill('110');
  await page.keyboard.press('Enter');
  await expect(page.getByText('cannot be taken back')).toHaveCount(0);
  const delivery = page.getByRole('region', { name: 'Delivery' });
  await expect(delivery.getByRole('row', { name: 'Supper 108 112 2 110 0 108 short' })).toBeVisible();
  await delivery.getByRole('button', { name: 'Delivered' }).click();
  await expect(delivery.getByRole('row', { name: 'Supper 108 112 2 110 108 as ordered' })).toBeVisible();
  await page.getByRole('button', { name: 'Packing slip of delivery 1' }).click();
  await expect(page.getByRole('region', { name: 'Deliveries' })).toContainText(
    'test packing slip 1.pdf lies in',
  );
  expect(readdirSync(studio.folder)).toContain('test packing slip 1.pdf');
  await expectAccessible(page);
});
