// The studio that end-to-end tests work in: a person's folder, a host, and a window whose every complaint is a failure.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as base, expect, type Page } from '@playwright/test';
import { builtApp } from '../../../build/builtApp.ts';
import { drawSupper } from '../../../electron/demo/art.ts';
import { TIME_TO_BUILD } from '../../kit/desktopRig.ts';
import { type HostProcess, startHost } from './hostProcess.ts';

const DRAWN_ON = new Date('2026-09-01T12:00:00Z');

export class Studio {
  /** What the page complained of: errors, and warnings too, since a refused picture or font only warns. */
  readonly complaints: string[] = [];
  /** What the browser may say because the test provokes it: parts of its words. */
  readonly provoked: string[] = [REPAIRS_A_DAMAGED_FILE];
  #host: HostProcess | undefined;

  constructor(
    readonly page: Page,
    /** The person's own folder, empty at first. */
    readonly folder: string,
    readonly app: string,
  ) {
    page.on('console', (said) => {
      if (said.type() === 'error' || said.type() === 'warning') this.#complain(said.text());
    });
    page.on('pageerror', (error) => this.#complain(error.stack ?? error.message));
  }

  /** Starts a host and opens the window. `jobs` are asked for at the start. */
  async open(jobs: readonly string[] = []): Promise<void> {
    // From a page of nothing, so that no word of an earlier window is heard any more.
    await this.page.goto('about:blank');
    this.#host = await startHost(this.app, this.folder, jobs);
    await this.page.goto(this.#host.link);
    // Nobody drops a file on a window that is not there yet.
    await this.page.locator('main').waitFor();
  }

  /** Kills the host as a power cut would; what the page says of it afterwards is no complaint. */
  async killHost(): Promise<void> {
    const host = this.#host;
    this.#host = undefined;
    await host?.kill();
  }

  async end(): Promise<void> {
    const host = this.#host;
    this.#host = undefined;
    await host?.end();
  }

  /** A path in the person's folder. */
  at(...names: readonly string[]): string {
    return join(this.folder, ...names);
  }

  makeFolder(name: string): string {
    mkdirSync(this.at(name), { recursive: true });
    return this.at(name);
  }

  /** Puts the art of the demo's invitation into the folder: two pages, 5 x 7 in and 1/8 in bleed. */
  async putSupper(name = 'supper.pdf'): Promise<string> {
    writeFileSync(this.at(name), await drawSupper(DRAWN_ON));
    return this.at(name);
  }

  #complain(said: string): void {
    if (this.#host !== undefined && !this.provoked.some((words) => said.includes(words)))
      this.complaints.push(said);
  }
}

/**
 * What pdf.js warns of where a file's own list of its objects is broken. A damaged file that is dropped may be drawn
 * before the host has mended it: which comes first is nobody's business, and that it was damaged is told in the window.
 */
const REPAIRS_A_DAMAGED_FILE = 'Indexing all PDF objects';

export const test = base.extend<{ readonly studio: Studio }, { readonly app: string }>({
  app: [
    // biome-ignore lint/correctness/noEmptyPattern: the tool insists on a pattern here
    async ({}, use) => {
      await use(await builtApp(() => undefined));
    },
    { scope: 'worker', timeout: TIME_TO_BUILD },
  ],
  studio: async ({ page, app }, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'turnlay-studio-'));
    const studio = new Studio(page, folder, app);
    await use(studio);
    await studio.end();
    rmSync(folder, { recursive: true, force: true });
    expect(studio.complaints, 'what the page complained of').toEqual([]);
  },
});

export { expect };
