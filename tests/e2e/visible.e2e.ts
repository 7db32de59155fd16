// What is on the screen can be seen, at both sizes of window, with one design and with many; and strangers' files dropped on it.
import { writeFileSync } from 'node:fs';
import { SUPPER_BRIEF } from '../../electron/demo/briefs.ts';
import { carelessCard, damagedCard, lockedCard } from '../kit/troubledArt.ts';
import { openBench } from './kit/benchPage.ts';
import { dropFiles } from './kit/dropFiles.ts';
import { expectVisible, hiddenThings } from './kit/expectVisible.ts';
import { ShellPage } from './kit/shellPage.ts';
import { expect, test } from './kit/studio.ts';

const SIZES = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
] as const;
const STAGES = ['Art', 'Plan', 'Bench', 'Light table', 'Run'] as const;

test('the look itself finds what cannot be seen', async ({ page }) => {
  const list = (style: string) =>
    `<ul role="listbox" aria-label="Positions" style="width:300px"><li role="option" style="overflow:hidden;${style}">1 Supper front</li></ul>`;
  const seen = async (html: string) => {
    await page.setContent(html);
    return hiddenThings(page);
  };
  expect(await seen(list('width:300px'))).toEqual([]);
  expect(await seen(list('width:16px;white-space:nowrap'))).toEqual([
    expect.stringContaining('"1 Supper front" is cut off by'),
    'A row of Positions is 16 px wide.',
  ]);
  expect(await seen('<p style="width:18px;word-break:break-all">Tray-fed</p>')).toContain(
    '"Tray" is broken within the word.',
  );
  expect(
    await seen('<section aria-label="Plan" style="height:0;overflow:hidden">Cost</section>'),
  ).toHaveLength(2);
  expect(await seen('<p style="position:absolute;left:1270px">Cost of a piece</p>')).toEqual([
    expect.stringContaining('is cut off by'),
  ]);
  expect(
    await seen('<div style="height:60px;overflow:auto"><p style="margin-top:90px">Below</p></div>'),
  ).toEqual([]);
  expect(await seen('<p class="unseen" style="width:0;overflow:hidden">For readers</p>')).toEqual([]);
  // Shortened, told in full nowhere; and rows that lie beside each other.
  expect(
    await seen(
      '<p style="width:60px;overflow:hidden;text-overflow:ellipsis;white-space:nowrap">Cost of a piece and more</p>',
    ),
  ).toEqual(['"Cost of a piece and more" shows 60 px and is told in full nowhere.']);
  const beside = (width: string) =>
    `<ul role="listbox" aria-label="Positions" style="display:flex"><li role="option" style="flex:none;width:${width}">1</li></ul>`;
  expect(await seen(beside('16px'))).toEqual(['A row of Positions is 16 px wide.']);
  expect(await seen(beside('40px'))).toEqual([]);
  // What scrolls shows only what it can be scrolled to, and only through a room that is seen itself.
  const scroller = (style: string) => `<div style="overflow:auto;${style}"><p>Below</p></div>`;
  const isCut = [expect.stringContaining('"Below" is cut off by')];
  expect(await seen(scroller('height:3px'))).toEqual(isCut);
  expect(
    await seen(`<div style="height:20px;overflow:hidden">${scroller('height:60px;padding-top:80px')}</div>`),
  ).toEqual(isCut);
  expect(
    await seen(
      '<div style="position:relative;width:90px;height:60px;overflow:auto"><p style="position:absolute;left:-50px">Below</p></div>',
    ),
  ).toEqual(isCut);
  // Fields and buttons without words of their own.
  const field = (width: string) =>
    `<input aria-label="Copies" value="1200" style="box-sizing:border-box;border:0;padding:0;height:20px;width:${width}">`;
  expect(await seen(field('6px'))).toEqual(['The input "Copies" is 6 x 20 px.']);
  expect(await seen(field('60px'))).toEqual([]);
  const icon = (width: string) =>
    `<button aria-label="Close" style="padding:0;height:20px;width:${width}"><svg width="16" height="16"></svg></button>`;
  expect(await seen(icon('4px'))).toEqual(['The button "Close" is 4 x 20 px.']);
  expect(await seen(icon('20px'))).toEqual([]);
  expect(await seen(`<div style="width:10px;overflow:hidden">${icon('20px')}</div>`)).toEqual([
    'The button "Close" is cut off by 10 px.',
  ]);
});

for (const size of SIZES) {
  test(`every stage of a job shows its words at ${size.width} x ${size.height}`, async ({ studio }) => {
    test.slow();
    const { page } = studio;
    await page.setViewportSize(size);
    await studio.putSupper();
    await openBench(studio, SUPPER_BRIEF);
    const shell = new ShellPage(page);
    for (const stage of STAGES) {
      await shell.goTo(stage);
      if (stage === 'Plan') await expect(page.getByText(/Ink measured from the art/)).toBeVisible();
      await expect.soft(page.getByRole('region', { name: stage, exact: true })).toBeVisible();
      expect.soft(await hiddenThings(page), stage).toEqual([]);
    }
    await shell.goTo('Light table');
    await page.getByRole('button', { name: '1, Supper, front' }).click();
    expect.soft(await hiddenThings(page), 'the piece in hand').toEqual([]);
  });

  test(`boxes and the start show their words at ${size.width} x ${size.height}`, async ({ studio }) => {
    const { page } = studio;
    await page.setViewportSize(size);
    await studio.open();
    await expectVisible(page);
    for (const key of ['F1', 'Shift+F1', 'Control+,', 'Control+Alt+l', 'Control+o']) {
      await page.keyboard.press(key);
      await expect(page.getByRole('dialog')).toBeVisible();
      expect.soft(await hiddenThings(page), `the box of ${key}`).toEqual([]);
      await page.keyboard.press('Escape');
      await expect(page.getByRole('dialog')).toHaveCount(0);
    }
    await dropFiles(page.locator('body'), [await studio.putSupper()]);
    await page.getByLabel('How many are wanted').waitFor();
    expect.soft(await hiddenThings(page), 'the brief').toEqual([]);
  });

  test(`many pieces of long names show their words at ${size.width} x ${size.height}`, async ({ studio }) => {
    const { page } = studio;
    await page.setViewportSize(size);
    await studio.putSupper();
    const [piece] = SUPPER_BRIEF.pieces;
    await openBench(studio, {
      ...SUPPER_BRIEF,
      units: 'mm',
      sheet: { size: [640, 900] },
      gutter: 4,
      pieces: [
        {
          ...piece,
          name: 'Invitation_to_the_gathering_of_everybody_who_ever_sang in the choir of the village by the lake',
          trim: [55, 85],
          bleed: 1,
          safe: 2,
          front: { ...piece.front, trimAt: [9, 9] },
          back: { ...piece.back, trimAt: [9, 9] },
          quantity: 980,
        },
      ],
    });
    await expect(page.getByRole('option').first()).toBeVisible();
    expect.soft(await hiddenThings(page), 'the bench').toEqual([]);
    await new ShellPage(page).goTo('Light table');
    expect.soft(await hiddenThings(page), 'the light table').toEqual([]);
  });
}

test('careless, damaged and locked files are dropped: opened, mended, and asked for a password', async ({
  studio,
}) => {
  const { page } = studio;
  await studio.open();
  const drop = async (name: string, bytes: Uint8Array) => {
    writeFileSync(studio.at(name), bytes);
    await dropFiles(page.locator('body'), [studio.at(name)]);
  };
  await drop('locked.pdf', lockedCard());
  await expect(page.getByText(/locked\.pdf needs a password/)).toBeVisible();
  await drop('careless.pdf', carelessCard());
  await expect(page.getByLabel('How many are wanted')).toBeVisible();
  await expect(page.getByText('careless.pdf').first()).toBeVisible();
  await page.getByLabel('How many are wanted').fill('10');
  await page.getByRole('button', { name: 'Lay out', exact: true }).click();
  await expect(page.getByRole('region', { name: 'Art', exact: true })).toBeVisible();
});

test('a damaged file is mended, and that is said', async ({ studio }) => {
  const { page } = studio;
  await studio.open();
  writeFileSync(studio.at('damaged.pdf'), damagedCard());
  await dropFiles(page.locator('body'), [studio.at('damaged.pdf')]);
  await expect(page.getByLabel('How many are wanted')).toBeVisible();
  await expect(page.getByText(/mended/).first()).toBeVisible();
});
