// The bench in the window, in the words of a person at it: where pieces lie on the screen, and what the list says of them.
import { expect, type Locator, type Page } from '@playwright/test';
import { JobFiles } from '../../../electron/disk/jobFiles.ts';
import { layJob } from '../../../electron/job/layJob.ts';
import { fitInto, toScreen, type View } from '../../../shared/bench/view.ts';
import { apply } from '../../../shared/geometry/transform.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { rebaseArt } from '../../../shared/job/rebase.ts';
import type { Position } from '../../../shared/layout/position.ts';
import type { Studio } from './studio.ts';

/** How much room the bench leaves around a whole sheet, in px. */
const AROUND = 64;

/** Lays the brief out (its art lies in the studio's folder), changes the arrangement if asked, and opens the bench. */
export async function openBench(
  studio: Studio,
  brief: object,
  arrange: (laid: readonly Position[]) => readonly Position[] = (laid) => laid,
): Promise<BenchPage> {
  const read = readBrief(brief);
  if (!read.ok) throw new Error(read.fault.message);
  const laid = await layJob(rebaseArt(read.value, (file) => studio.at(file)));
  if (!laid.ok) throw new Error(laid.fault.message);
  const job = { ...laid.value.job, arrangement: arrange(laid.value.job.arrangement) };
  const path = studio.at('test.turnlay');
  const saved = await new JobFiles().save(path, job, true);
  if (!saved.ok) throw new Error(saved.fault.message);
  await studio.open([path]);
  await expect(studio.page.getByRole('region', { name: /Art|Plan|Bench/ }).first()).toBeVisible();
  const bench = new BenchPage(studio.page, job);
  await studio.page.keyboard.press('Control+3');
  await expect(bench.canvas).toBeVisible();
  return bench;
}

export class BenchPage {
  constructor(
    readonly page: Page,
    /** As it was opened. */
    readonly job: Job,
  ) {}

  get canvas(): Locator {
    return this.page.getByRole('application', { name: 'The sheet on the bench' });
  }

  /** The position (from 1) in the list beside the canvas. */
  row(position: number): Locator {
    return this.page
      .getByRole('listbox', { name: 'Positions on the sheet' })
      .getByRole('option')
      .nth(position - 1);
  }

  async expectAt(position: number, place: string): Promise<void> {
    await expect(this.row(position)).toContainText(place);
  }

  /** Where a place of the sheet (pt) is on the screen while the whole sheet is shown. */
  async on(x: number, y: number): Promise<{ x: number; y: number }> {
    const box = await this.canvas.boundingBox();
    if (box === null) throw new Error('The bench is not on the screen');
    const view: View = fitInto({ w: box.width, h: box.height }, sheetOf(this.job.brief).size, AROUND);
    const seen = apply(toScreen<'side1'>(view), { x, y });
    return { x: box.x + seen.x, y: box.y + seen.y };
  }

  /** Takes what lies at a place of the sheet with the left button. */
  async take(x: number, y: number): Promise<void> {
    const at = await this.on(x, y);
    await this.page.mouse.move(at.x, at.y);
    await this.page.mouse.down();
  }

  /** Carries what was taken to a place of the sheet, as a hand would: over places in between. */
  async carry(x: number, y: number): Promise<void> {
    const at = await this.on(x, y);
    await this.page.mouse.move(at.x, at.y, { steps: 6 });
  }

  async drop(): Promise<void> {
    await this.page.mouse.up();
  }

  async click(x: number, y: number, modifiers: 'Shift'[] = []): Promise<void> {
    const at = await this.on(x, y);
    for (const key of modifiers) await this.page.keyboard.down(key);
    await this.page.mouse.click(at.x, at.y);
    for (const key of modifiers) await this.page.keyboard.up(key);
  }

  /** What the snap says that holds the dragged piece. */
  get held(): Locator {
    return this.page.getByText(/^Held by /);
  }

  /** What the check of the sheet says. */
  get check(): Locator {
    return this.page.getByRole('region', { name: 'Check of the sheet' });
  }
}
