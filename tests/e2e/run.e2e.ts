// Running the sheets: counted through both passes, over a power cut, until the pieces are delivered.
import { readdirSync, readFileSync, truncateSync } from 'node:fs';
import type { Locator } from '@playwright/test';
import { expectAccessible } from './kit/expectAccessible.ts';
import { RunPage } from './kit/runPage.ts';
import { expect, test } from './kit/studio.ts';

test('thirty sheets are run with spoilage, over a power cut, and delivered', async ({ studio }) => {
  const { page } = studio;
  const run = new RunPage(page);
  await run.begin(studio);
  await expect(run.stands).toContainText('Load 30 sheets: 25 needed and 5 overs.');
  await page.keyboard.press('Enter');
  await expect(run.stands).toContainText('25 sheets still needed, 30 in hand; 5 may be spoiled.');
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
  await run.type(24);
  await run.spoil('Spoiled in pass 1', 3, 'skewed');
  await run.expectPiles(1, 24, 0, 1, 4, 30);
  await expect(run.stands).toContainText('24 sheets still needed, 25 in hand; 1 may be spoiled.');
  await expectAccessible(page);

  // The power fails while a count is being written.
  const log = studio.at('test.run.jsonl');
  await studio.killHost();
  truncateSync(log, readFileSync(log).length - 7);
  await studio.open([studio.at('test.turnlay')]);
  await page.getByRole('button', { name: 'Run', exact: true }).click();
  await expect(page.getByRole('region', { name: 'What the log says' })).toContainText('cut short');
  await run.expectPiles(4, 24, 0, 1, 1, 30);
  await run.spoil('Spoiled in pass 1', 3, 'skewed');
  await run.expectPiles(1, 24, 0, 1, 4, 30);
  await expect(page.getByRole('region', { name: 'What the log says' })).toHaveCount(0);

  // Dry and turn, with the picture of the turn; then pass 2.
  await run.press('The pile is through: dry and turn');
  await expect(run.counting.getByRole('img', { name: /over like a page/ })).toBeVisible();
  await expectAccessible(page);
  await run.press('It is dry and turned');
  await run.expectAsks('Good out of pass 2');
  await run.type(26);
  await expect(run.counting.getByRole('alert')).toContainText(
    'Pass 2 cannot have had 26 sheets: of those that came good out of pass 1, 24 are turned and waiting.',
  );
  await run.counting.getByLabel('Good out of pass 2').last().fill('');
  await run.type(22);
  await run.spoil('Spoiled in pass 2', 2, 'out of register');
  await expect(run.stands).toContainText('1 short: load 6 sheets more, 1 needed and 5 overs.');
  await run.expectPiles(1, 0, 0, 23, 6, 30);

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
  await run.expectPiles(0, 0, 0, 26, 6, 32);
  await run.expectAsks('Good Supper');

  // An early count is not taken back from under the later ones.
  await run.press('Take back “Pass 1: 24 good”');
  await expect(page.getByText('cannot be taken back, because “Dried and turned” needs it')).toBeVisible();

  // Trimming and delivery.
  await run.spoil('Spoiled Supper', 2, 'edge torn or nicked');
  await run.counting.getByLabel('Good Supper').last().fill('102');
  await page.keyboard.press('Enter');
  await expect(page.getByText('cannot be taken back')).toHaveCount(0);
  const delivery = page.getByRole('region', { name: 'Delivery' });
  await expect(delivery.getByRole('row', { name: 'Supper 100 104 2 102 0 100 short' })).toBeVisible();
  await delivery.getByRole('button', { name: 'Delivered' }).click();
  await expect(delivery.getByRole('row', { name: 'Supper 100 104 2 102 100 as ordered' })).toBeVisible();
  await page.getByRole('button', { name: 'Packing slip of delivery 1' }).click();
  await expect(page.getByRole('region', { name: 'Deliveries' })).toContainText(
    'test packing slip 1.pdf is in',
  );
  expect(readdirSync(studio.folder)).toContain('test packing slip 1.pdf');

  // What was planned and what it really took: 32 sheets of 30, and 61 times through the printer of 60.
  const cost = page.getByRole('region', { name: 'Cost against the plan' });
  await expect(cost.getByRole('row', { name: /^Paper counted/ })).toContainText(
    '32 sheets used instead of 30',
  );
  const passes = '61 times through the printer instead of 60';
  await expect(cost.getByRole('row', { name: /^Ink reckoned/ })).toContainText(passes);
  await cost.getByLabel('Ink by the counter, ml').fill('90');
  await cost.getByLabel('Minutes at the printer').fill('75');
  await cost.getByRole('button', { name: 'Note what was measured' }).click();
  await expect(cost.getByRole('row', { name: /^Ink measured/ })).toContainText('90 ml measured where');
  await expect(cost.getByRole('row', { name: /^Labour at the printer measured/ })).toContainText(
    '69 minutes at the printer where',
  );
  await expectAddsUp(cost);
  await expectAccessible(page);

  // What the run teaches goes into the library.
  const teaches = page.getByRole('region', { name: 'What runs teach' });
  await expect(teaches).toContainText('Ink of Hand-fed sheet printer: one reading more.');
  await teaches.getByRole('button', { name: 'Take into the library' }).click();
  await expect(teaches).toContainText('The library says already what they show.');
  await expect(teaches).toContainText('1 of the 3 timed runs that are needed.');
});

/** The amounts of a column of the comparison, the last of them the whole. */
async function amountsIn(cost: Locator, column: number): Promise<readonly number[]> {
  const cells = await cost.locator(`tr td:nth-of-type(${column})`).allTextContents();
  return cells.map((text) => Number(text.replace('−', '-').replace(/[^\d.-]/g, '')));
}

/** Every column adds up to what stands below it, to the cent. */
async function expectAddsUp(cost: Locator): Promise<void> {
  for (const column of [1, 2, 3]) {
    const amounts = await amountsIn(cost, column);
    const [whole = Number.NaN] = amounts.slice(-1);
    expect(amounts).toHaveLength(7);
    expect(amounts.slice(0, -1).reduce((sum, n) => sum + n, 0)).toBeCloseTo(whole, 6);
  }
}
