// The run sheet as it is printed: read back from its PDF, its words and drawings agree with the job.

import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { countJob } from '../../../shared/job/counts.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import { formsOfJob } from '../../../shared/job/nameJobFiles.ts';
import { linkTo } from '../../../shared/runSheet/jobCode.ts';
import { setRunSheet } from '../../../shared/runSheet/runSheetPages.ts';
import { showSize } from '../../../shared/units/show.ts';
import { picturesByPoppler } from '../../kit/poppler.ts';
import { type ReadBox, type ReadPage, readPages } from '../../kit/readPages.ts';
import { DAY, NAME, pdfOf, runSheetInput, runSheetOf } from '../../kit/setPapers.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

const known = new Map<Job, Promise<readonly ReadPage[]>>();

/** The run sheet of a job, written and read back once. */
function read(job: Job): Promise<readonly ReadPage[]> {
  const reading = known.get(job) ?? pdfOf(runSheetOf(job)).then(readPages);
  known.set(job, reading);
  return reading;
}

/** The drawn sheets of a page from left to right: its largest boxes with the sides of the sheet. */
function drawnSheets(page: ReadPage, job: Job): readonly ReadBox[] {
  const { w, h } = sheetOf(job.brief).size;
  const alike = page.paths.filter((b) => b.h > 0 && Math.abs(b.w / b.h - w / h) < 0.002);
  const widest = Math.max(...alike.map((b) => b.w));
  return alike.filter((b) => Math.abs(b.w - widest) < 0.01).toSorted((a, b) => a.x - b.x);
}

const inside = (b: ReadBox, p: { x: number; y: number }) =>
  p.x > b.x && p.x < b.x + b.w && p.y > b.y && p.y < b.y + b.h;

describe('the run sheet', () => {
  it.each(KINDS)(
    'draws every face where its form prints it, its letter turned as its head: %s',
    async (_n, job) => {
      const [page] = await read(job);
      const sheets = drawnSheets(page!, job);
      const { size } = sheetOf(job.brief);
      expect(sheets).toHaveLength(turnOf(job.brief.work) === undefined ? 1 : 2);
      for (const [i, drawn] of sheets.entries()) {
        const form = formsOfJob(job).find((f) => f.sides.includes(i === 0 ? 1 : 2))!;
        const scale = drawn.w / size.w;
        const letters = page!.words.filter(
          ({ words, middle }) => /^[FB]$/.test(words) && inside(drawn, middle),
        );
        expect(letters).toHaveLength(form.placements.length);
        for (const { face, trim, head } of form.placements) {
          const room = {
            x: drawn.x + trim.x * scale,
            y: drawn.y + trim.y * scale,
            w: trim.w * scale,
            h: trim.h * scale,
          };
          const here = letters.filter(({ middle }) => inside(room, middle));
          expect(here.map((l) => [l.words, l.head])).toEqual([[face === 'front' ? 'F' : 'B', head]]);
        }
      }
    },
  );

  it.each(KINDS)(
    'says what is loaded, how it is worked, which files, and which edge is held: %s',
    async (_n, job) => {
      const pages = await read(job);
      const text = pages.map((page) => page.text).join(' ');
      const { needed, overs, sheets } = countJob(job);
      const { brief } = job;
      expect(text).toContain(`Load ${sheets} sheets ${needed} needed and ${overs} overs`);
      expect(text).toContain(showSize(sheetOf(brief).size, brief.units));
      expect(text).toContain(brief.work.style);
      const closed = text.replaceAll(' ', '');
      for (const { name } of runSheetInput(job).sides) expect(closed).toContain(name);
      for (const { name, quantity } of brief.pieces) {
        expect(closed).toContain(name.replaceAll(' ', ''));
        expect(text).toContain(`${quantity}`);
      }
      const turn = turnOf(brief.work);
      const { across } = brief.sheet.hold;
      const held = (edge: string) =>
        across === 'centre' ? 'held in the middle' : `side guide: ${edge} edge`;
      const other = { left: 'right', right: 'left', centre: '' }[across];
      const said = [...text.matchAll(/side guide: (?:left|right) edge|held in the middle/g)].map(([m]) => m);
      expect(said).toEqual(
        turn === undefined ? [held(across)] : [held(across), held(turn === 'side-to-side' ? other : across)],
      );
      const bars = page1(pages).words.filter(({ words }) => words.startsWith('LEAD'));
      expect(bars.map(({ words }) => words.includes('tail'))).toEqual(
        turn === undefined ? [false] : [false, turn === 'end-to-end'],
      );
      const moved = text.match(/Take the (right edge|tail)/)?.[1];
      const byHand = turn !== undefined && brief.work.style !== 'perfecting';
      expect(moved).toBe(byHand ? { 'side-to-side': 'right edge', 'end-to-end': 'tail' }[turn] : undefined);
    },
  );

  it.each(KINDS)('fits two pages, every word on the paper and none over another: %s', async (_n, job) => {
    const pages = await read(job);
    expect(pages).toHaveLength(2);
    for (const { size, words } of pages) {
      const boxes = words.map(({ middle, length, size: high, head }) => {
        // Capitals are what must stay apart; tails and accents may come near.
        const [w, h] = head % 180 === 0 ? [length, high * 0.7] : [high * 0.7, length];
        return { x: middle.x - w / 2, y: middle.y - h / 2, w, h };
      });
      for (const [i, a] of boxes.entries()) {
        expect(a.x >= 20 && a.y >= 20 && a.x + a.w <= size.w - 20 && a.y + a.h <= size.h - 20).toBe(true);
        const over = boxes.findIndex(
          (b, j) => j > i && a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h,
        );
        expect(over < 0 ? '' : `${words[i]?.words} / ${words[over]?.words}`).toBe('');
      }
    }
  });

  it('fits two pages though every name is as long as can be typed', async () => {
    const [kind] = CARDS.pieces;
    const endless = { ...CARDS, title: 'T'.repeat(900), pieces: [{ ...kind!, name: 'N'.repeat(400) }] };
    const pages = await read(jobOf(endless, { style: 'work-and-back', turn: 'side-to-side' }));
    expect(pages).toHaveLength(2);
    for (const { words, size } of pages) {
      for (const { at, length } of words) expect(at.x + length).toBeLessThanOrEqual(size.w - 20);
    }
  });

  it('goes on Letter for those who read inches and on A4 for those who read millimetres', () => {
    const sizes = KINDS.map(([, job]) => [job.brief.units, runSheetOf(job).paper] as const);
    for (const [units, { w, h }] of sizes) {
      // ANSI A: 8.5 x 11 in. ISO 216 A4: 210 x 297 mm.
      expect([w / 72, h / 72].map((inch) => Number((inch * 25.4).toFixed(3)))).toEqual(
        units === 'in' ? [215.9, 279.4] : [210, 297],
      );
    }
  });

  it('is set in nothing smaller than can be read, and what the hands do larger than that', async () => {
    for (const [, job] of KINDS) {
      for (const { words } of await read(job)) {
        expect(Math.min(...words.map(({ size }) => size))).toBeGreaterThanOrEqual(5);
      }
      const [, steps] = await read(job);
      const said = steps!.words.find(({ words }) => words.startsWith('Load'))!;
      expect(said.size).toBeGreaterThanOrEqual(10);
    }
  });

  it('carries a code that a reader of QR codes reads as the link of the job', async () => {
    const [[, job]] = KINDS as readonly [(typeof KINDS)[number]];
    const [picture] = picturesByPoppler(await pdfOf(runSheetOf(job)), 3, '-l', '1');
    const { width, height, pixels } = picture!;
    const rgba = new Uint8ClampedArray(width * height * 4).fill(255);
    for (let i = 0; i < width * height; i += 1) rgba.set(pixels.subarray(3 * i, 3 * i + 3), 4 * i);
    expect(jsQR(rgba, width, height)?.data).toBe(linkTo(NAME));
    expect(linkTo(NAME)).toBe('turnlay:job?file=orchard.turnlay&print=0123456789abcdef');
  });

  it('says so where the job has no file yet', async () => {
    const [[, job]] = KINDS as readonly [(typeof KINDS)[number]];
    const name = { fingerprint: NAME.fingerprint };
    const [page] = await readPages(await pdfOf(setRunSheet(runSheetInput(job, { name }))));
    expect(page!.text).toContain('This job has no file yet. The code beside names the job.');
    expect(linkTo(name)).toBe('turnlay:job?print=0123456789abcdef');
  });

  it('names the paper where it is known', async () => {
    const [[, job]] = KINDS as readonly [(typeof KINDS)[number]];
    const stock = { name: 'Rough card', cutter: { ...ANY_CUTTER, mostStack: 100 } };
    const [page] = await readPages(await pdfOf(setRunSheet(runSheetInput(job, { stock }))));
    expect(page!.text).toContain('Rough card');
  });

  it('has room for the counts of each pass, for readings and for initials, and the cautions', async () => {
    const text = async (name: string) => {
      const [, job] = KINDS.find(([kind]) => kind.startsWith(name))!;
      const [, second] = await read(job);
      return second!.text;
    };
    const twice = await text('invitations');
    for (const words of [
      'Pass 1',
      'Pass 2',
      'Trimmed',
      'Spoiled',
      'Initials',
      'Margin left',
      'Margin right',
    ]) {
      expect(twice).toContain(words);
    }
    expect(twice).toContain('Both sides of this paper must be alike');
    for (const words of [
      '100 % size',
      'no automatic rotation',
      'no automatic centring',
      'borderless expansion off',
    ]) {
      expect(twice).toContain(words);
    }
    expect(twice).toMatch(/Feeding by hand.*Trimming.*Lifting/);
    expect(await text('menus')).toMatch(/Margin lead.*Margin tail/);
    expect(await text('cards turned by the printer, end')).toMatch(
      /two-sided printing on, flipped on the short edge/,
    );
    expect(await text('pieces that are blank')).toContain('The two sides of this paper differ');
    const once = await text('cards on one side');
    expect(once).toContain('Printed');
    expect(once).not.toContain('Pass 2');
    expect(once).not.toContain('Hold it to the light');
  });

  it('bears the day on every page', async () => {
    const pages = await read(KINDS[0]![1]);
    expect(pages.map(({ text }) => text.includes(DAY))).toEqual([true, true]);
    expect(page1(pages).text).toContain('page 1 of 2');
  });
});

function page1(pages: readonly ReadPage[]): ReadPage {
  return pages[0]!;
}
