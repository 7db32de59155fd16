// The Run stage, in the words of a person at the printer.
import { expect, type Locator, type Page } from '@playwright/test';
import { SUPPER_BRIEF } from '../../../electron/demo/briefs.ts';
import { openBench } from './benchPage.ts';
import type { Studio } from './studio.ts';

/** 100 invitations four up: 25 sheets are needed, and with 5 overs 30 are loaded, on the printer that is fed by hand. */
const FOR_30_SHEETS = {
  ...SUPPER_BRIEF,
  plan: { printer: 'Hand-fed sheet printer', feed: 'Hand feed', paper: 'Uncoated card' },
  overs: { percent: 5, least: 5 },
  pieces: SUPPER_BRIEF.pieces.map((piece) => ({ ...piece, quantity: 100 })),
};

export class RunPage {
  constructor(readonly page: Page) {}

  /** Opens the job of 30 sheets and begins its run. */
  async begin(studio: Studio): Promise<void> {
    await studio.putSupper();
    await openBench(studio, FOR_30_SHEETS);
    await this.page.keyboard.press('Control+5');
    await this.page.getByText('Print and count', { exact: true }).click();
    await this.page.getByRole('button', { name: 'Begin the run' }).click();
    // The ink of the art is measured first.
    await expect(this.page.getByLabel('Sheets loaded').last()).toBeFocused({ timeout: 30_000 });
  }

  get stands(): Locator {
    return this.page.getByRole('region', { name: 'How the run stands' });
  }

  get counting(): Locator {
    return this.page.getByRole('region', { name: 'Counting' });
  }

  get log(): Locator {
    return this.page.getByRole('region', { name: 'Counts' });
  }

  /** Types a count into the field that has the keys, and Enter. */
  async type(count: number): Promise<void> {
    await this.page.keyboard.type(String(count));
    await this.page.keyboard.press('Enter');
  }

  async press(button: string | RegExp): Promise<void> {
    await this.page.getByRole('button', { name: button }).first().click();
  }

  async spoil(where: string, count: number, reason: string): Promise<void> {
    const form = this.counting.getByRole('form', { name: where });
    await form.getByLabel(where).fill(String(count));
    await form.getByText(reason, { exact: true }).click();
    await form.getByRole('button', { name: 'Count as spoiled' }).click();
  }

  /** What each pile holds, in the order they are shown. */
  async expectPiles(...counts: readonly number[]): Promise<void> {
    await expect(this.stands.getByRole('definition')).toHaveText(counts.map(String));
  }

  /** Which field waits for a count. */
  async expectAsks(field: string): Promise<void> {
    await expect(this.counting.getByLabel(field).last()).toBeFocused();
  }
}
