// What the program says of itself: its version, what it runs on, and whose work it holds.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expectAccessible } from './kit/expectAccessible.ts';
import { expect, test } from './kit/studio.ts';

test('the About box tells version, licence and the work of others with the text of each licence', async ({
  studio,
}) => {
  const { page } = studio;
  const told = readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8');
  const { version, license } = JSON.parse(told);
  await studio.open();
  await page.keyboard.press('Shift+F1');
  const about = page.getByRole('dialog', { name: 'Turnlay' });
  await expect(about).toContainText(`Version ${version}, on Node.js ${process.versions.node}.`);
  await expect(about).toContainText(`under the ${license} licence`);

  const others = about.getByRole('region', { name: 'Work of others' });
  for (const name of ['react', 'konva', 'pdfjs-dist', 'PDFium', 'qpdf', 'dejavu-fonts-ttf']) {
    await expect(others.getByText(new RegExp(`^${name} (\\d|in )`))).toBeVisible();
  }
  const words = others.getByText('THE SOFTWARE IS PROVIDED "AS IS"').first();
  await expect(words).toBeHidden();
  await others.getByText(/^konva \d/).click();
  const shown = others.locator('details[open] pre');
  await expect(shown).toContainText('Permission is hereby granted');
  expect((await shown.boundingBox())?.width).toBeGreaterThan(200);
  await expectAccessible(page);
  await page.keyboard.press('Escape');
  await expect(about).toBeHidden();
});
