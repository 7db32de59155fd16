// The frame of the window, in the words of a person at it.
import type { Locator, Page } from '@playwright/test';
import { dropFiles } from './dropFiles.ts';
import { expect, type Studio } from './studio.ts';

export class ShellPage {
  constructor(readonly page: Page) {}

  get undo(): Locator {
    return this.page.getByRole('button', { name: /^Undo/ });
  }

  get redo(): Locator {
    return this.page.getByRole('button', { name: /^Redo/ });
  }

  /** The positions in the list beside the bench. */
  get positions(): Locator {
    return this.page.getByRole('listbox', { name: 'Positions on the sheet' }).getByRole('option');
  }

  async press(button: string): Promise<void> {
    await this.page.getByRole('button', { name: button, exact: true }).click();
  }

  async choose(menu: string, item: string): Promise<void> {
    await this.press(menu);
    await this.page.getByRole('menuitem', { name: item }).click();
  }

  async goTo(stage: 'Art' | 'Plan' | 'Bench' | 'Light table' | 'Run'): Promise<void> {
    await this.press(stage);
    await expect(this.page.getByRole('region', { name: stage, exact: true })).toBeVisible();
  }

  /** Opens the window and drops the invitation on it: four up on 11 x 17 in. */
  async beginSupper(studio: Studio): Promise<void> {
    await studio.open();
    await this.dropSupper(studio);
  }

  /** Drops the art of the supper on the window that is open, and has it laid out. */
  async dropSupper(studio: Studio): Promise<void> {
    await dropFiles(this.page.locator('body'), [await studio.putSupper()]);
    await this.page.getByLabel('How many are wanted').fill('120');
    await this.press('Lay out');
    await expect(this.page.getByRole('region', { name: 'Art', exact: true })).toBeVisible();
  }

  async saveAs(name: string): Promise<void> {
    await this.page.keyboard.press('Control+s');
    await this.page.getByLabel('Name of the file').fill(name);
    await this.press('Save here');
  }

  /** Three edits with the keyboard on the bench. */
  async changeByHand(): Promise<void> {
    await this.page.getByRole('application', { name: 'The sheet on the bench' }).focus();
    for (const key of ['Control+a', 'ArrowUp', 'Shift+ArrowUp', 'x']) await this.page.keyboard.press(key);
  }
}
