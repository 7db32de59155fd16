// The benchmark of pictures: from a dropped PDF to the first picture of it, and what is still held after ten jobs.
import { readdirSync, readFileSync } from 'node:fs';
import type { CDPSession, JSHandle, Page } from 'playwright';
import { openWindow } from '../tryWindow.ts';
import { openBarePage, timeFirstPage } from './firstPage.ts';
import { drawPhotoCard } from './photoCards.ts';

const MEGABYTE = 1024 * 1024;
const SIZES = [1, 50] as const;
const ROUNDS = 5;
const JOBS = { count: 10, megabytes: 5 } as const;

/** Prints a line for each size, and one for the memory. */
export async function benchPictures(): Promise<void> {
  console.log(
    'A dropped PDF of so many MB | until its pieces are proposed | pdf.js alone, until it has drawn the first page | the first by the second | from laying out to its first picture',
  );
  for (const megabytes of SIZES) {
    const rounds: Awaited<ReturnType<typeof timeRound>>[] = [];
    for (let n = 1; n <= ROUNDS; n++) rounds.push(await timeRound(megabytes, n));
    const [proposed, alone, pictured] = (['proposed', 'alone', 'pictured'] as const).map((leg) =>
      median(rounds.map((round) => round[leg])),
    ) as [number, number, number];
    console.log(
      `${megabytes} MB | ${proposed.toFixed(0)} ms | ${alone.toFixed(0)} ms | ${(proposed / alone).toFixed(2)} | ${pictured.toFixed(0)} ms`,
    );
  }
  await benchMemory();
}

/** A window and a bare pdf.js in one browser, each given the same file, the one as often first as the other. */
async function timeRound(megabytes: number, seed: number) {
  const window = await openWindow({}, []);
  try {
    const bare = await openBarePage(window.page);
    const bytes = await drawPhotoCard(megabytes * MEGABYTE, seed);
    const drawAlone = async () => timeFirstPage(bare, await fileIn(bare, bytes, 'alone.pdf'));
    const before = seed % 2 === 0 ? await drawAlone() : undefined;
    const opened = await openCard(window.page, bytes, `photo-${megabytes}-${seed}.pdf`);
    return { ...opened, alone: before ?? (await drawAlone()) };
  } finally {
    await window.end();
  }
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

/** What the window holds when nothing is open: before, and after jobs have been opened and put away again. */
async function benchMemory(): Promise<void> {
  const { page, end } = await openWindow({}, []);
  try {
    const inspector = await page.context().newCDPSession(page);
    await inspector.send('Performance.enable');
    // The first job loads what every job needs.
    await openCard(page, await drawJob(99), 'photo-99.pdf');
    await putAway(page);
    const before = await heldBy(inspector);
    for (let n = 0; n < JOBS.count; n++) {
      await openCard(page, await drawJob(n + 1), `photo-${n + 1}.pdf`);
      await putAway(page);
    }
    const after = await heldBy(inspector);
    const { heap, process } = { heap: after.heap - before.heap, process: after.process - before.process };
    console.log(
      `After opening and closing ${JOBS.count} jobs of ${JOBS.megabytes} MB each: ${heap.toFixed(1)} MB more in scripts, ${process.toFixed(0)} MB more in the process of the page`,
    );
  } finally {
    await end();
  }
}

const drawJob = (seed: number) => drawPhotoCard(JOBS.megabytes * MEGABYTE, seed);

/** Drops a card on the window, lays it out, and waits for its first picture. Times in ms. */
async function openCard(page: Page, bytes: Uint8Array, name: string) {
  const target = page.locator('main');
  await target.waitFor();
  const file = await fileIn(page, bytes, name);
  const proposed = await target.evaluate(dropAndWait, file);
  await file.dispose();
  await page.getByRole('textbox', { name: 'How many are wanted' }).fill('100');
  const laid = Date.now();
  await page.getByRole('button', { name: 'Lay out' }).click();
  await page.waitForFunction(showsPhotograph, undefined, { polling: 30, timeout: 120_000 });
  return { proposed, pictured: Date.now() - laid };
}

/** A file in a page, as if it had been picked up to be dropped. */
function fileIn(page: Page, bytes: Uint8Array, name: string): Promise<JSHandle<File>> {
  return page.evaluateHandle(
    ({ base64, name }) =>
      new File([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], name, { type: 'application/pdf' }),
    { base64: Buffer.from(bytes).toString('base64'), name },
  );
}

/** Drops a file and waits for the field of its first piece: how long that takes, in ms of the page's own clock. */
function dropAndWait(element: Element, file: File): Promise<number> {
  const isProposed = () =>
    [...document.querySelectorAll('label')].some((label) => label.textContent === 'How many are wanted');
  return new Promise((resolve) => {
    const begun = performance.now();
    new MutationObserver((_changes, observer) => {
      if (!isProposed()) return;
      observer.disconnect();
      // With the frame that shows it.
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - begun)));
    }).observe(document.body, { childList: true, subtree: true });
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(file);
    for (const kind of ['dragenter', 'dragover', 'drop']) {
      element.dispatchEvent(new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer }));
    }
  });
}

/** Whether a picture of a face shows something in colour, which only the photograph is. */
function showsPhotograph(): boolean {
  return [...document.querySelectorAll<HTMLCanvasElement>('canvas.face-picture')].some((canvas) => {
    const { width, height } = canvas;
    const row = canvas.getContext('2d')?.getImageData(0, Math.floor(height / 3), width, 1).data ?? [];
    for (let i = 0; i < row.length; i += 4) {
      if (Math.abs((row[i] ?? 0) - (row[i + 1] ?? 0)) > 40) return true;
    }
    return false;
  });
}

async function putAway(page: Page): Promise<void> {
  await page.keyboard.press('Alt+w');
  await page.getByRole('button', { name: 'Do not save' }).click();
  await page.locator('canvas.face-picture').first().waitFor({ state: 'detached' });
}

/** MB in the scripts of the page, and in its process where the system tells (0 elsewhere). */
async function heldBy(inspector: CDPSession): Promise<{ heap: number; process: number }> {
  await inspector.send('HeapProfiler.collectGarbage');
  await new Promise((rest) => setTimeout(rest, 2000));
  await inspector.send('HeapProfiler.collectGarbage');
  const { metrics } = await inspector.send('Performance.getMetrics');
  const heap = (metrics.find((m) => m.name === 'JSHeapUsedSize')?.value ?? 0) / MEGABYTE;
  return { heap, process: largestRenderer() };
}

/** The memory of the largest page process that this one has started, in MB. Linux alone tells. */
function largestRenderer(): number {
  const read = (pid: string, file: string) => {
    try {
      return readFileSync(`/proc/${pid}/${file}`, 'utf8');
    } catch {
      return '';
    }
  };
  const parents = new Map<string, string>();
  let pids: readonly string[] = [];
  try {
    pids = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  } catch {
    return 0;
  }
  for (const pid of pids) parents.set(pid, /^PPid:\s+(\d+)/m.exec(read(pid, 'status'))?.[1] ?? '');
  const isOurs = (pid: string | undefined): boolean =>
    pid !== undefined && (pid === String(process.pid) || isOurs(parents.get(pid)));
  const sizes = pids
    .filter((pid) => isOurs(pid) && read(pid, 'cmdline').includes('--type=renderer'))
    .map((pid) => Number(/^VmRSS:\s+(\d+)/m.exec(read(pid, 'status'))?.[1] ?? 0) / 1024);
  return Math.max(0, ...sizes);
}
