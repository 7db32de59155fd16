// The pictures of the art: the right way up however the page lies in its file, sharp however near, and never a hang.
import { writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { decode } from 'fast-png';
import { drawTurnedPages, type PageLie } from '../kit/turnedPages.ts';
import { type BenchPage, openBench } from './kit/benchPage.ts';
import { expect, type Studio, test } from './kit/studio.ts';

const lie = (rest: Partial<PageLie> = {}): PageLie => ({
  rotate: 0,
  unit: 1,
  origin: [0, 0],
  cropped: false,
  ...rest,
});
const LIES = [
  lie(),
  lie({ rotate: 90, origin: [30, -40] }),
  lie({ rotate: 180, unit: 2, origin: [5, 5] }),
  lie({ rotate: 270 }),
  lie({ rotate: 90, origin: [10, 20], cropped: true }),
  lie({ cropped: true, origin: [7, 7] }),
];

const piece = (name: string, front: object, back: object) => ({
  name,
  trim: [5, 7],
  bleed: 0.125,
  safe: 0.125,
  lies: 'upright',
  quantity: 10,
  front: { file: 'pages.pdf', ...front },
  back: { file: 'pages.pdf', ...back },
});

const BRIEF = {
  units: 'in',
  title: 'Pages that lie every way',
  sheet: { size: [24, 20] },
  work: 'work-and-back',
  turn: 'side-to-side',
  gutter: 0.25,
  pieces: [
    piece('One', { page: 1 }, { page: 2 }),
    piece('Two', { page: 3 }, { page: 4 }),
    piece('Three', { page: 5 }, { page: 6 }),
    piece('Turned', { page: 2, rotate: 180 }, { page: 1, rotate: 180 }),
  ],
};

async function openPages(studio: Studio): Promise<BenchPage> {
  writeFileSync(studio.at('pages.pdf'), await drawTurnedPages(LIES));
  return openBench(studio, BRIEF);
}

/** The colour on the screen at a point, as `red`, `yellow`, `blue` or its numbers. */
async function colourAt(page: Page, at: { x: number; y: number }): Promise<string> {
  const clip = { x: Math.round(at.x), y: Math.round(at.y), width: 1, height: 1 };
  const [r = 0, g = 0, b = 0] = decode(await page.screenshot({ clip })).data;
  const names: Readonly<Record<string, string>> = {
    '255,0,0': 'red',
    '255,255,0': 'yellow',
    '0,0,255': 'blue',
  };
  return names[[r, g, b].join(',')] ?? `${r} ${g} ${b}`;
}

test('art lies the right way up on both sides, whatever its file says', async ({ studio }) => {
  const bench = await openPages(studio);
  for (const side of [1, 2] as const) {
    for (const { piece: name, trim } of bench.job.arrangement) {
      const left = side === 1 ? trim.x : 24 * 72 - trim.x - trim.w;
      const on = (x: number, y: number) => bench.on(left + x, trim.y + y);
      const [red, blue] =
        name === 'Turned'
          ? [
              [280, 40],
              [320, 470],
            ]
          : [
              [80, 464],
              [40, 34],
            ];
      await expect.poll(async () => colourAt(studio.page, await on(red![0]!, red![1]!))).toBe('red');
      expect(await colourAt(studio.page, await on(blue![0]!, blue![1]!))).toBe('blue');
      expect(await colourAt(studio.page, await on(180, 252))).toBe('yellow');
    }
    await bench.canvas.focus();
    await studio.page.keyboard.press('t');
    await expect(studio.page.getByText('Side 2 up')).toBeVisible({ visible: side === 1 });
    await expect(studio.page.locator('.paper-turning')).toHaveCount(0);
  }
  expect(studio.page.workers(), 'the reader of PDFs runs in a worker of its own').toHaveLength(1);
});

test('art is as sharp as the screen, even at thirty times its size', async ({ studio }) => {
  const bench = await openPages(studio);
  const first = bench.job.arrangement.findIndex((p) => p.piece === 'One');
  const { trim } = bench.job.arrangement[first]!;
  // The right end of the red block.
  const edge = await bench.on(trim.x + 120, trim.y + 474);
  // A mouse is on whole pixels: the edge, a part of a pixel to its right, goes so much farther as it comes nearer.
  const mouse = { x: Math.floor(edge.x), y: Math.floor(edge.y) };
  await studio.page.mouse.move(mouse.x, mouse.y);
  for (let turn = 0; turn < 12; turn += 1) await studio.page.mouse.wheel(0, -300);
  const width = 200;
  const clip = { x: mouse.x - 10, y: mouse.y, width, height: 1 };
  const blurred = async () => {
    const { data, channels } = decode(await studio.page.screenshot({ clip }));
    const colours = Array.from({ length: width }, (_, i) =>
      data.slice(i * channels, i * channels + 3).join(','),
    );
    const isThere = colours[0] === '255,0,0' && colours[width - 1] === '255,255,0';
    if (!isThere) return width;
    return colours.filter((c) => c !== '255,0,0' && c !== '255,255,0').length;
  };
  await expect.poll(blurred).toBeLessThanOrEqual(2);
});

test('a reader of PDFs that does not start is told, and the bench goes on', async ({ studio }) => {
  await studio.page.route(/pdf\.worker/, (route) => route.abort());
  const bench = await openPages(studio);
  await expect(studio.page.getByRole('region', { name: 'Art that cannot be shown' })).toContainText(
    'The art could not be drawn',
  );
  await bench.canvas.focus();
  await studio.page.keyboard.press('PageDown');
  await expect(bench.row(1)).toHaveAttribute('aria-selected', 'true');
  // That the script was not there is what this test is about.
  studio.complaints.splice(0);
});
