// Turning the sheet by hand, the right way and the wrong way.
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { openBench } from './kit/benchPage.ts';
import { expect, test } from './kit/studio.ts';

const TWO_FORMS = { ...SUPPER_BRIEF, work: 'work-and-back', turn: 'side-to-side' };

test('an edge that is carried over turns the sheet; let go early it falls back', async ({ studio }) => {
  await studio.putSupper();
  const bench = await openBench(studio, TWO_FORMS);
  const side = (n: 1 | 2) => studio.page.getByText(`Side ${n} up`);
  await expect(side(1)).toBeVisible();

  await bench.take(800, 700);
  await bench.carry(600, 700);
  await bench.drop();
  await expect(studio.page.locator('.paper-turning')).toHaveCount(0);
  await expect(side(1)).toBeVisible();

  await bench.take(800, 700);
  await bench.carry(200, 700);
  await bench.drop();
  await expect(side(2)).toBeVisible();

  // On side 2 a piece goes the way the hand goes; side 1 is where it is counted.
  await expect(studio.page.locator('.paper-turning')).toHaveCount(0);
  await bench.take(600, 900);
  await studio.page.keyboard.down('Alt');
  await bench.carry(590, 900);
  await bench.drop();
  await studio.page.keyboard.up('Alt');
  await expect(bench.row(1)).not.toContainText('0.375 in from the left');

  await bench.take(-8, 700);
  await bench.carry(500, 700);
  await bench.drop();
  await expect(side(1)).toBeVisible();
});

test('the wrong turn shows what would be wrong, and leads back', async ({ studio }) => {
  await studio.putSupper();
  const bench = await openBench(studio, TWO_FORMS);
  await bench.take(500, -10);
  await bench.carry(500, 900);
  await bench.drop();
  const warning = studio.page.getByRole('alert').filter({ hasText: 'Turned end to end' });
  await expect(warning).toContainText('but it was laid out for side to side');
  await expect(warning).toContainText('4 of 4 pieces with the back upside down');
  // The paper lies: it does not follow a hand that let it go.
  const lying = () => studio.page.locator('.paper-turning .page').last().getAttribute('style');
  const lay = await lying();
  await bench.carry(500, 300);
  await bench.carry(300, 600);
  expect(await lying()).toBe(lay);
  await warning.getByRole('button', { name: 'Turn it back' }).click();
  await expect(warning).toHaveCount(0);
  await expect(studio.page.getByText('Side 1 up')).toBeVisible();
});

test('a button and a key turn it too, at once for those who want no motion', async ({ studio }) => {
  await studio.page.emulateMedia({ reducedMotion: 'reduce' });
  await studio.putSupper();
  const bench = await openBench(studio, TWO_FORMS);
  await studio.page.getByRole('button', { name: 'Turn the sheet', exact: true }).click();
  await expect(studio.page.getByText('Side 2 up')).toBeVisible();
  await bench.canvas.focus();
  await studio.page.keyboard.press('t');
  await expect(studio.page.getByText('Side 1 up')).toBeVisible();
  await studio.page.keyboard.press('Shift+T');
  const warning = studio.page.getByRole('alert').filter({ hasText: 'Turned end to end' });
  await expect(warning).toBeVisible();
  await studio.page.keyboard.press('Enter');
  await expect(warning).toHaveCount(0);
});
