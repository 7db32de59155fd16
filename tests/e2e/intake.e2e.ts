// Dropping art: pieces are proposed first, and what is found in the file later is told then.
import { writeFileSync } from 'node:fs';
import { damagedCard, tangledCard } from '../kit/troubledArt.ts';
import { dropFiles } from './kit/dropFiles.ts';
import { expect, type Studio, test } from './kit/studio.ts';

/** Holds up whatever the window asks of a file after it was taken in, until it is let go. */
async function holdLooks({ page }: Studio): Promise<() => void> {
  let release: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await page.route('**/call/art/look', async (route) => {
    await held;
    await route.continue();
  });
  return release;
}

async function drop(studio: Studio, name: string, bytes: Uint8Array): Promise<void> {
  writeFileSync(studio.at(name), bytes);
  await dropFiles(studio.page.locator('body'), [studio.at(name)]);
}

test('pieces are proposed before their pages are tried out, and what that found is told later', async ({
  studio,
}) => {
  const { page } = studio;
  await studio.open();
  const release = await holdLooks(studio);
  await drop(studio, 'damaged.pdf', damagedCard());
  const quantity = page.getByLabel('How many are wanted');
  await quantity.fill('40');
  await expect(page.getByText(/mended/)).toHaveCount(0);
  release();
  await expect(page.getByText(/a copy was mended in memory/)).toBeVisible();
  await expect(quantity).toHaveValue('40');
});

test('a file that cannot be placed after all is told, and its piece is taken back', async ({ studio }) => {
  const { page } = studio;
  await studio.open();
  const release = await holdLooks(studio);
  await drop(studio, 'supper.pdf', damagedCard());
  await drop(studio, 'tangled.pdf', tangledCard());
  await expect(page.getByLabel('How many are wanted')).toHaveCount(2);
  release();
  await expect(
    page.getByText(/There is more in page 1 of tangled\.pdf than can be placed safely/),
  ).toBeVisible();
  await expect(page.getByLabel('How many are wanted')).toHaveCount(1);
});

test('a dropped file is sent as it is, its bytes never read by the page', async ({ studio }) => {
  const { page } = studio;
  await studio.open();
  await page.evaluate(() => {
    const refuse = () => {
      throw new Error('The page reads the file');
    };
    for (const read of ['arrayBuffer', 'bytes', 'stream', 'text'] as const) Blob.prototype[read] = refuse;
    FileReader.prototype.readAsArrayBuffer = refuse;
  });
  await drop(studio, 'supper.pdf', damagedCard());
  await expect(page.getByLabel('How many are wanted')).toBeVisible();
});
