// Laying out by hand: the mouse drags, frames and zooms, the keys do all of it too, and everything can be undone.
import { AxeBuilder } from '@axe-core/playwright';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { type BenchPage, openBench } from './kit/benchPage.ts';
import { expect, type Studio, test } from './kit/studio.ts';

// Four cards of 360 x 504 pt on 792 x 1224: fronts at the left (x 27), backs at the right (x 405).
const LEFT = '0.375 in from the left';
const onFirst = { x: 200, y: 900 };

async function standAtBench(studio: Studio): Promise<BenchPage> {
  await studio.putSupper();
  const bench = await openBench(studio, SUPPER_BRIEF);
  await bench.expectAt(1, `${LEFT}, 8.625 in from the tail`);
  return bench;
}

test('a dragged piece is drawn to equal side margins, its partner with it, and both can be undone', async ({
  studio,
}) => {
  const bench = await standAtBench(studio);
  await bench.take(onFirst.x, onFirst.y);
  await bench.carry(onFirst.x - 18, onFirst.y + 45);
  await bench.carry(onFirst.x + 4, onFirst.y + 40);
  await expect(bench.held).toContainText('equal side margins');
  // The numbers beside the sheet follow the hand.
  const fromTail = studio.page.getByRole('textbox', { name: 'From the tail' });
  await expect(fromTail).not.toHaveValue('8.625 in');
  await bench.drop();
  await expect(bench.held).toHaveCount(0);
  await bench.expectAt(1, LEFT);
  await bench.expectAt(2, '5.625 in from the left');
  await expect(bench.row(1)).not.toContainText('8.625 in from the tail');
  await expect(bench.check).toContainText('No faults found');

  await studio.page.keyboard.press('Control+z');
  await bench.expectAt(1, '8.625 in from the tail');
  await studio.page.keyboard.press('Control+Shift+z');
  await expect(bench.row(1)).not.toContainText('8.625 in from the tail');
});

test('what would be wrong is told while the piece is still in the hand, and Escape takes it back', async ({
  studio,
}) => {
  const bench = await standAtBench(studio);
  await bench.take(onFirst.x, onFirst.y);
  await bench.carry(onFirst.x + 90, onFirst.y - 70);
  await expect(bench.check).toContainText(
    'Position 1 ("Supper", front) lies over Position 2 ("Supper", back).',
  );
  await studio.page.keyboard.press('Escape');
  await expect(bench.check).toContainText('No faults found');
  await bench.drop();
  await bench.expectAt(1, `${LEFT}, 8.625 in from the tail`);
});

test('with Alt a piece goes where the hand puts it', async ({ studio }) => {
  const bench = await standAtBench(studio);
  await bench.take(onFirst.x, onFirst.y);
  await studio.page.keyboard.down('Alt');
  await bench.carry(onFirst.x + 6, onFirst.y + 30);
  await expect(bench.held).toHaveCount(0);
  await bench.drop();
  await studio.page.keyboard.up('Alt');
  await expect(bench.row(1)).not.toContainText(LEFT);
});

test('a frame and Shift choose several, which are brought in line', async ({ studio }) => {
  const bench = await standAtBench(studio);
  await bench.click(onFirst.x, onFirst.y);
  await studio.page.keyboard.press('ArrowLeft');
  await bench.expectAt(1, '0.365 in from the left');
  await bench.click(200, 300, ['Shift']);
  await expect(bench.row(1)).toHaveAttribute('aria-selected', 'true');
  await expect(bench.row(3)).toHaveAttribute('aria-selected', 'true');
  await studio.page
    .getByRole('region', { name: 'Chosen pieces' })
    .getByRole('button', { name: 'Align left edges' })
    .click();
  await bench.expectAt(3, '0.365 in from the left');

  await bench.take(-40, 1210);
  await bench.carry(120, 1000);
  await bench.drop();
  await expect(bench.row(1)).toHaveAttribute('aria-selected', 'true');
  await expect(bench.row(3)).toHaveAttribute('aria-selected', 'false');
});

test('everything can be done without the mouse', async ({ studio }) => {
  const bench = await standAtBench(studio);
  const { keyboard } = studio.page;
  await bench.canvas.focus();
  await keyboard.press('PageDown');
  await expect(bench.row(1)).toHaveAttribute('aria-selected', 'true');
  await keyboard.press('Shift+ArrowLeft');
  await bench.expectAt(1, '0.275 in from the left');
  await keyboard.press('ArrowUp');
  await bench.expectAt(1, '8.635 in from the tail');
  // On its side the piece would lie over its partner, so it is not turned; a half turn leaves it where it is.
  await keyboard.press(']');
  await expect(studio.page.getByText('Position 1 would lie over its own partner').first()).toBeVisible();
  await bench.expectAt(1, 'head up');
  await keyboard.press('u');
  await bench.expectAt(1, 'head down');
  await keyboard.press('u');
  await bench.expectAt(1, 'head up');
  await keyboard.press('x');
  await bench.expectAt(1, 'back');
  await keyboard.press('Control+d');
  await expect(bench.row(5)).toHaveAttribute('aria-selected', 'true');
  await keyboard.press('Delete');
  await expect(bench.row(5)).toHaveCount(0);
  await keyboard.press('Control+l');
  await bench.expectAt(1, `${LEFT}, 8.625 in from the tail`);
  await keyboard.press('Control+a');
  await expect(bench.row(4)).toHaveAttribute('aria-selected', 'true');

  await bench.canvas.focus();
  await keyboard.press('Shift+F10');
  await expect(studio.page.getByRole('menuitem', { name: 'Quarter turn left' })).toBeFocused();
  await keyboard.press('Escape');
  await expect(studio.page.getByRole('menu')).toHaveCount(0);
});

test('a place is typed to the last hundredth, and a slip of the pen is told', async ({ studio }) => {
  const bench = await standAtBench(studio);
  await bench.click(onFirst.x, onFirst.y);
  const left = studio.page.getByRole('textbox', { name: 'From the left' });
  await left.fill('1/2 in');
  await left.press('Enter');
  await bench.expectAt(1, '0.5 in from the left');
  await bench.expectAt(2, '5.5 in from the left');
  await left.fill('half');
  await left.press('Enter');
  await expect(studio.page.getByText('"half" is not a length.')).toBeVisible();
  await left.fill('12 in');
  await left.press('Enter');
  await expect(studio.page.getByText('Position 1 would run off the sheet.').first()).toBeVisible();
  await bench.expectAt(1, '0.5 in from the left');
});

test('the menu under the right button steps and repeats', async ({ studio }) => {
  const bench = await standAtBench(studio);
  await bench.click(onFirst.x, onFirst.y);
  await studio.page.keyboard.press('Delete');
  await expect(bench.row(3)).toHaveCount(0);
  const at = await bench.on(200, 300);
  await studio.page.mouse.click(at.x, at.y, { button: 'right' });
  await studio.page.getByRole('menuitem', { name: 'Step and repeat…' }).click();
  const box = studio.page.getByRole('dialog', { name: 'Step and repeat' });
  await box.getByRole('textbox', { name: 'Across the feed' }).fill('1');
  await box.getByRole('textbox', { name: 'Along the feed' }).fill('2');
  await expect(box).toContainText('off the sheet');
  await box.getByRole('radio', { name: 'Lead' }).check({ force: true });
  await expect(box).toContainText('2 pieces are added');
  await box.getByRole('button', { name: 'Repeat' }).click();
  await bench.expectAt(3, `${LEFT}, 8.625 in from the tail`);
  await expect(bench.check).toContainText('No faults found');
});

test('the wheel looks nearer at what is under the cursor, and the whole sheet comes back', async ({
  studio,
}) => {
  const bench = await standAtBench(studio);
  const size = studio.page.getByLabel('Size on the screen');
  const whole = await size.textContent();
  const at = await bench.on(onFirst.x, onFirst.y);
  await studio.page.mouse.move(at.x, at.y);
  await studio.page.mouse.wheel(0, -900);
  await expect(size).not.toHaveText(whole ?? '');
  // The card that was under the cursor still is.
  await studio.page.mouse.click(at.x, at.y);
  await expect(bench.row(1)).toHaveAttribute('aria-selected', 'true');
  await studio.page.keyboard.press('Control+0');
  await expect(size).toHaveText(whole ?? '');
});

test('the bench is free of serious faults of access', async ({ studio }) => {
  const bench = await standAtBench(studio);
  await bench.click(onFirst.x, onFirst.y);
  const { violations } = await new AxeBuilder({ page: studio.page }).analyze();
  expect(violations.filter((v) => v.impact === 'serious' || v.impact === 'critical')).toEqual([]);
});
