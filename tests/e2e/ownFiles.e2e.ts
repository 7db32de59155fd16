// The program's own files: what was wrong with one is said, and its last good copy is taken back.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { writeLibrary } from '../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../shared/library/startingLibrary.ts';
import { expectAccessible } from './kit/expectAccessible.ts';
import { expectVisible } from './kit/expectVisible.ts';
import { ShellPage } from './kit/shellPage.ts';
import { expect, test } from './kit/studio.ts';

test('a damaged library is kept and said, and its copy is taken back later', async ({ studio }) => {
  const { page } = studio;
  const own = (...names: readonly string[]) => studio.at('.turnlay', ...names);
  const library = JSON.parse(writeLibrary({ ...startingLibrary(), currency: 'CHF' }));
  mkdirSync(own('copies', 'library'), { recursive: true });
  writeFileSync(own('copies', 'library', '2026-03-02T09-15-00.000Z.json'), JSON.stringify({ library }));
  writeFileSync(own('library.json'), '{ "library": { "currency": "CHF", "prin');
  writeFileSync(own('settings.json'), 'nothing of use');
  await studio.open();

  const box = page.getByRole('dialog', { name: 'Your files' });
  await expect(box).toContainText('printers and papers was damaged. It is kept as library.damaged-1.json');
  await expect(box).toContainText('settings was damaged. It is kept as settings.damaged-1.json');
  await expectAccessible(page);
  await expectVisible(page);
  expect(readFileSync(own('library.damaged-1.json'), 'utf8')).toContain('"prin');

  await box.getByRole('button', { name: 'Go on as it is' }).click();
  const shell = new ShellPage(page);
  await shell.dropSupper(studio);
  await shell.goTo('Plan');
  await expect(page.getByText('This plan reckons with example printers and papers.')).toBeVisible();
  await page.getByRole('button', { name: 'Your files…' }).click();
  await box.getByRole('button', { name: 'Go on as it is' }).click();
  await expect(box).toBeHidden();

  await studio.end();
  await studio.open();
  await expect(box).toContainText('is not there any more');
  await box.getByRole('button', { name: /^Take the copy of .*2026.* back$/ }).click();
  await expect(box).toBeHidden();
  await page
    .getByRole('dialog', { name: 'Left unsaved' })
    .getByRole('button', { name: /Go on with/ })
    .click();
  await shell.goTo('Plan');
  await expect(page.getByText('CHF').first()).toBeVisible();
  expect(JSON.parse(readFileSync(own('library.json'), 'utf8'))).toMatchObject({ library });
});
