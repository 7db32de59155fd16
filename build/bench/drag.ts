// The drag benchmark: how long the frames of the window are while one piece among many is dragged, with its snaps, its
// partner and the check of the sheet.
import { createHash } from 'node:crypto';
import type { Page } from 'playwright';
import { fitInto, toScreen } from '../../shared/bench/view.ts';
import { apply } from '../../shared/geometry/transform.ts';
import { JOB_SCHEMA, type Job, sheetOf } from '../../shared/job/job.ts';
import { writeJob } from '../../shared/job/jobFile.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import type { Position } from '../../shared/layout/position.ts';
import { openWindow } from '../tryWindow.ts';
import { BENCH_CARD, drawBenchArt } from './benchArt.ts';

/** Pieces on the sheet, and the longest frame that is allowed in 95 of 100, in ms. */
const CASES = [
  [4, 17],
  [24, 17],
  [100, 17],
  [400, 34],
] as const;
const FRAMES = 300;

/** Prints one line for each case. */
export async function benchDrag(): Promise<void> {
  console.log(
    "Dragging one piece among so many | frames: median | 95 of 100 (allowed) | longest | the window's own work in each",
  );
  const art = await drawBenchArt(2, 400, 4);
  for (const [count, allowed] of CASES) {
    const job = workAndTurn(count, art);
    const window = await openWindow({ 'card.pdf': art, 'many.turnlay': writeJob(job) }, ['many.turnlay']);
    try {
      const { times, work } = await dragFirst(window.page, job);
      const frames = times.toSorted((a, b) => a - b);
      const at = (share: number) => frames[Math.floor(share * (frames.length - 1))] ?? 0;
      console.log(
        `${count} | ${at(0.5).toFixed(1)} ms | ${at(0.95).toFixed(1)} ms (${allowed}) | ${at(1).toFixed(1)} ms | ${work.toFixed(1)} ms`,
      );
    } finally {
      await window.end();
    }
  }
}

/** So many cards, fronts at the left and their backs at the right, a quarter of an inch apart. */
function workAndTurn(count: number, art: Uint8Array): Job {
  const { trim, bleed } = BENCH_CARD;
  const across = 2 * Math.ceil(Math.sqrt(count) / 2);
  const along = count / across;
  const [stepX, stepY] = [trim.w + 18, trim.h + 18];
  const size = { w: across * stepX - 18 + 72, h: along * stepY - 18 + 72 };
  const brief = readBrief({
    units: 'in',
    title: 'Many cards',
    sheet: { size: [size.w / 72, size.h / 72] },
    work: 'work-and-turn',
    gutter: 0.25,
    pieces: [
      {
        name: 'Card',
        trim: [trim.w / 72, trim.h / 72],
        bleed: bleed / 72,
        quantity: 1000,
        front: { file: 'card.pdf', page: 1 },
        back: { file: 'card.pdf', page: 2 },
      },
    ],
  });
  if (!brief.ok) throw new Error(brief.fault.message);
  const sha256 = createHash('sha256').update(art).digest('hex');
  const found = (face: 'front' | 'back') => ({
    piece: 'Card',
    face,
    sha256,
    trim: { x: bleed, y: bleed, ...trim },
    said: 'The trim is its TrimBox.',
  });
  const arrangement = Array.from({ length: count }, (_, i): Position => {
    const [column, row] = [i % across, Math.floor(i / across)];
    return {
      piece: 'Card',
      face: column < across / 2 ? 'front' : 'back',
      head: 0,
      trim: { x: 36 + column * stepX, y: 36 + row * stepY, ...trim },
    };
  });
  return { schema: JOB_SCHEMA, brief: brief.value, art: [found('front'), found('back')], arrangement };
}

interface Frames {
  readonly times: readonly number[];
  /** What the thread of the window worked in each of them: unlike the times it does not grow on a busy machine. */
  readonly work: number;
}

/** Drags the first piece round and round, a little farther in every frame. All in ms. */
async function dragFirst(page: Page, job: Job): Promise<Frames> {
  const canvas = page.getByRole('application', { name: 'The sheet on the bench' });
  await page.getByRole('heading').first().waitFor();
  await page.keyboard.press('Control+3');
  await canvas.waitFor();
  // Until the pictures of the art are drawn.
  await page.waitForTimeout(4000);
  const box = await canvas.boundingBox();
  const trim = job.arrangement[0]?.trim;
  if (box === null || trim === undefined) throw new Error('There is nothing to drag');
  const view = fitInto({ w: box.width, h: box.height }, sheetOf(job.brief).size, 64);
  const seen = apply(toScreen<'side1'>(view), { x: trim.x + trim.w / 2, y: trim.y + trim.h / 2 });
  const from = { x: box.x + seen.x, y: box.y + seen.y };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const worked = await threadTime(page);
  const before = await worked();
  const times = await canvas.evaluate(
    (element, { x, y, count }) =>
      new Promise<number[]>((done) => {
        const times: number[] = [];
        let last: number | undefined;
        const step = (now: number) => {
          if (last !== undefined) times.push(now - last);
          last = now;
          if (times.length === count) return done(times);
          const turn = times.length / 15;
          element.dispatchEvent(
            new PointerEvent('pointermove', {
              bubbles: true,
              pointerId: 1,
              clientX: x + 60 * Math.sin(turn),
              clientY: y - 40 + 40 * Math.cos(turn),
            }),
          );
          requestAnimationFrame(step);
        };
        requestAnimationFrame(step);
      }),
    { ...from, count: FRAMES },
  );
  const work = ((await worked()) - before) / FRAMES;
  await page.mouse.up();
  const moved = page.getByRole('option').first();
  if ((await moved.textContent())?.includes('0.5 in from the left, 0.5 in from the tail') !== false) {
    throw new Error('Nothing was dragged');
  }
  return { times, work };
}

/** Gives what asks how long the thread of the window has worked, in ms. */
async function threadTime(page: Page): Promise<() => Promise<number>> {
  const inspector = await page.context().newCDPSession(page);
  await inspector.send('Performance.enable');
  return async () => {
    const { metrics } = await inspector.send('Performance.getMetrics');
    return 1000 * (metrics.find((m) => m.name === 'ThreadTime')?.value ?? Number.NaN);
  };
}
