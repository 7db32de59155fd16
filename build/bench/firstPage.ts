// What pdf.js alone needs to draw the first page of a file: the measure of how fast a window can show art at all.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { JSHandle, Page } from 'playwright';

const PDFJS = join(import.meta.dirname, '../../node_modules/pdfjs-dist/build');

/** A site of pdf.js and nothing else, that is served from its package. */
const SITE = 'http://pdfjs.invalid';

/** A page with pdf.js, loaded and ready, in the browser of another page. */
export async function openBarePage(beside: Page): Promise<Page> {
  const page = await beside.context().browser()?.newPage();
  if (page === undefined) throw new Error('The page belongs to no browser');
  await page.route(`${SITE}/**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === '/') return route.fulfill({ contentType: 'text/html', body: '<!doctype html>' });
    const body = await readFile(join(PDFJS, pathname));
    return route.fulfill({ contentType: 'text/javascript', body });
  });
  await page.goto(`${SITE}/`);
  // As text, so that no compiler of ours looks for the module.
  await page.evaluate(`import('/pdf.mjs').then((pdfjs) => {
    pdfjs.GlobalWorkerOptions.workerSrc = '/pdf.worker.mjs';
    globalThis.pdfjs = pdfjs;
  })`);
  return page;
}

/** Opens the file and draws its first page at a pixel for each pt: how long that takes, in ms. */
export async function timeFirstPage(page: Page, file: JSHandle<File>): Promise<number> {
  return page.evaluate(async (file) => {
    const { pdfjs } = globalThis as unknown as { pdfjs: typeof import('pdfjs-dist') };
    const begun = performance.now();
    const task = pdfjs.getDocument({ data: await file.arrayBuffer() });
    const first = await (await task.promise).getPage(1);
    const viewport = first.getViewport({ scale: 1 });
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [viewport.width, viewport.height];
    await first.render({ canvas, viewport }).promise;
    const took = performance.now() - begun;
    await task.destroy();
    return took;
  }, file);
}
