// The benchmark of pictures: from a dropped PDF to the first picture of it, and what is still held after ten jobs.
import { readdirSync, readFileSync } from 'node:fs';
import type { CDPSession, Page } from 'playwright';
import { openWindow } from '../tryWindow.ts';
import { drawPhotoCard } from './photoCards.ts';

const MEGABYTE = 1024 * 1024;
const SIZES = [1, 50] as const;
const JOBS = { count: 10, megabytes: 5 } as const;

/** Prints a line for each size, and one for the memory. */
export async function benchPictures(): Promise<void> {
  console.log(
    'A dropped PDF of so many MB | until its pieces are proposed | from laying out to its first picture',
  );
  for (const megabytes of SIZES) {
    const window = await openWindow({}, []);
    try {
      const { proposed, pictured } = await openCard(window.page, megabytes, 1);
      console.log(`${megabytes} MB | ${proposed.toFixed(0)} ms | ${pictured.toFixed(0)} ms`);
    } finally {
      await window.end();
    }
  }
  await benchMemory();
}

/** What the window holds when nothing is open: before, and after jobs have been opened and put away again. */
async function benchMemory(): Promise<void> {
  const { page, end } = await openWindow({}, []);
  try {
    const inspector = await page.context().newCDPSession(page);
    await inspector.send('Performance.enable');
    // The first job loads what every job needs.
    await openCard(page, JOBS.megabytes, 99);
    await putAway(page);
    const before = await heldBy(inspector);
    for (let n = 0; n < JOBS.count; n++) {
      await openCard(page, JOBS.megabytes, n + 1);
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

/** Drops a card on the window, lays it out, and waits for its first picture. Times in ms. */
async function openCard(page: Page, megabytes: number, seed: number) {
  const bytes = await drawPhotoCard(megabytes * MEGABYTE, seed);
  const name = `photo-${megabytes}-${seed}.pdf`;
  const target = page.locator('main');
  await target.waitFor();
  const file = await page.evaluateHandle(
    ({ base64, name }) =>
      new File([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], name, { type: 'application/pdf' }),
    { base64: Buffer.from(bytes).toString('base64'), name },
  );
  const dropped = Date.now();
  await target.evaluate((element, file) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(file);
    for (const kind of ['dragenter', 'dragover', 'drop']) {
      element.dispatchEvent(new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer }));
    }
  }, file);
  await file.dispose();
  await page.getByRole('textbox', { name: 'How many are wanted' }).waitFor({ timeout: 120_000 });
  const proposed = Date.now() - dropped;
  await page.getByRole('textbox', { name: 'How many are wanted' }).fill('100');
  const laid = Date.now();
  await page.getByRole('button', { name: 'Lay out' }).click();
  await page.waitForFunction(showsPhotograph, undefined, { polling: 30, timeout: 120_000 });
  return { proposed, pictured: Date.now() - laid };
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
