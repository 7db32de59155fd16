// The light table: what lies behind what, a back that stands on its head, and one piece turned in the hand.
import { readFileSync, writeFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { degrees, PDFDocument } from 'pdf-lib';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { openBench } from './kit/benchPage.ts';
import { expect, type Studio, test } from './kit/studio.ts';

/** The invitation with its back drawn upside down. */
async function putBackUpsideDown(studio: Studio): Promise<void> {
  const path = await studio.putSupper();
  const pdf = await PDFDocument.load(readFileSync(path));
  pdf.getPage(1).setRotation(degrees(180));
  writeFileSync(path, await pdf.save());
}

const shows = (studio: Studio) => studio.page.getByRole('region', { name: 'What the light table shows' });

test('a back that stands on its head is found and mended, and the mending can be undone', async ({
  studio,
}) => {
  await putBackUpsideDown(studio);
  await openBench(studio, SUPPER_BRIEF);
  await studio.page.keyboard.press('Control+4');
  await expect(shows(studio)).toContainText(
    'The type on the back of "Supper" stands on its head when the piece is turned like a page.',
  );
  await shows(studio).getByRole('button', { name: 'Turn the art of the back' }).click();
  await expect(shows(studio)).toContainText('Both sides agree');
  await studio.page.keyboard.press('Control+z');
  await expect(shows(studio)).toContainText('One fault');
});

test('a piece without its back is found, and shown on the bench', async ({ studio }) => {
  await studio.putSupper();
  const bench = await openBench(studio, SUPPER_BRIEF, (laid) => laid.slice(0, 3));
  await studio.page.keyboard.press('Control+4');
  await expect(shows(studio)).toContainText('Position 3 ("Supper", front) has nothing printed behind it.');
  await shows(studio).getByRole('button', { name: 'Show it on the bench' }).click();
  await expect(bench.row(3)).toHaveAttribute('aria-selected', 'true');
});

test('the other side shines through as far as the slider lets it', async ({ studio }) => {
  await studio.putSupper();
  await openBench(studio, SUPPER_BRIEF);
  await studio.page.keyboard.press('Control+4');
  const sheet = studio.page.getByRole('img', { name: /^The sheet on the light table/ });
  await expect(sheet).toHaveAccessibleName(/shining through by 50 %/);
  const slider = studio.page.getByRole('slider', { name: 'The other side shines through' });
  await slider.focus();
  await studio.page.keyboard.press('Home');
  await expect(sheet).toHaveAccessibleName(/the other side hidden/);
  await studio.page.keyboard.press('End');
  await expect(sheet).toHaveAccessibleName(/alone to be seen/);
});

test('a piece is picked up, turned like a page by its edge, and put back', async ({ studio }) => {
  await studio.putSupper();
  await openBench(studio, SUPPER_BRIEF);
  await studio.page.keyboard.press('Control+4');
  const sheet = await studio.page.getByRole('img', { name: /^The sheet on the light table/ }).boundingBox();
  if (sheet === null) throw new Error('No sheet lies on the light table');
  await studio.page.mouse.click(sheet.x + sheet.width / 2 - 60, sheet.y + sheet.height / 2 - 80);

  const card = studio.page.getByRole('img', { name: /^The piece in hand/ });
  await expect(card).toHaveAccessibleName('The piece in hand: the front of "Supper", the right way up');
  const box = await card.boundingBox();
  if (box === null) throw new Error('Nothing is in hand');
  // 5 x 7 in at 96 px to the inch.
  expect([box.width, box.height]).toEqual([480, 672]);
  await studio.page.mouse.move(box.x + box.width - 8, box.y + 200);
  await studio.page.mouse.down();
  await studio.page.mouse.move(box.x + 60, box.y + 220, { steps: 8 });
  await studio.page.mouse.up();
  await expect(card).toHaveAccessibleName('The piece in hand: the back of "Supper", the right way up');

  await studio.page.getByRole('button', { name: 'Turn it like a calendar' }).click();
  await expect(card).toHaveAccessibleName('The piece in hand: the front of "Supper", upside down');
  const { violations } = await new AxeBuilder({ page: studio.page }).analyze();
  expect(violations.filter((v) => v.impact === 'serious' || v.impact === 'critical')).toEqual([]);

  await studio.page.keyboard.press('Escape');
  await expect(card).toHaveCount(0);
});

test('how a piece is read can be set while it is in hand, and its back follows', async ({ studio }) => {
  await studio.putSupper();
  const bench = await openBench(studio, SUPPER_BRIEF);
  await studio.page.keyboard.press('Control+4');
  await studio.page.getByRole('button', { name: '1, Supper, front' }).click();
  await studio.page.getByRole('radio', { name: 'Like a calendar' }).check({ force: true });
  await studio.page.getByRole('button', { name: 'Turn it like a calendar' }).click();
  await expect(studio.page.getByRole('img', { name: /^The piece in hand/ })).toHaveAccessibleName(
    'The piece in hand: the back of "Supper", the right way up',
  );
  await studio.page.keyboard.press('Control+3');
  await bench.expectAt(2, 'back, head down');
});

test('true size is corrected by what a ruler on the screen says', async ({ studio }) => {
  await studio.putSupper();
  await openBench(studio, SUPPER_BRIEF);
  await studio.page.keyboard.press('Control+4');
  await studio.page.getByRole('button', { name: '1, Supper, front' }).click();
  const measure = studio.page.getByRole('textbox', { name: 'It measures' });
  await measure.fill('4 in');
  await measure.press('Enter');
  await expect
    .poll(
      async () => (await studio.page.getByRole('img', { name: /^The piece in hand/ }).boundingBox())?.width,
    )
    .toBe(600);
  await measure.fill('1 in');
  await measure.press('Enter');
  await expect(studio.page.getByText('That is too far from its true width to be meant.')).toBeVisible();
});
