// The cutting order as it is printed: every step with its number, its words and its drawing, whole and in order.

import { describe, expect, it } from 'vitest';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import { sayRegister, sayStep } from '../../../shared/cutting/words.ts';
import type { Job } from '../../../shared/job/job.ts';
import { cuttingOf } from '../../../shared/runSheet/cuttingOf.ts';
import { setCuttingPages } from '../../../shared/runSheet/cuttingPages.ts';
import type { Stock } from '../../../shared/runSheet/stock.ts';
import { POINTS_PER } from '../../../shared/units/length.ts';
import { granted } from '../../kit/granted.ts';
import { readPages } from '../../kit/readPages.ts';
import { DAY, MEASURES, pdfOf } from '../../kit/setPapers.ts';
import { extentOf, liesIn, pathsIn, roomOf, textIn, wordsIn } from '../../kit/shapes.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

const [[, SUPPER]] = KINDS as readonly [(typeof KINDS)[number]];
const cuttable = KINDS.filter(([name]) => /^(invitations|menus)/.test(name));

describe('the cutting order on paper', () => {
  it.each(cuttable)('tells every step in order, each word on the paper: %s', async (_name, job) => {
    const order = granted(cuttingOf(job, undefined));
    const pages = await readPages(await pdfOf(setCuttingPages(job, order, DAY, MEASURES)));
    const closed = pages.map(({ text }) => text.replaceAll(' ', '')).join('');
    const steps = pages.flatMap(({ words }) => words.filter((said) => /^Step \d+$/.test(said.words)));
    expect(steps.map(({ words }) => Number(words.slice(5)))).toEqual(order.steps.map(({ number }) => number));
    for (const step of order.steps) {
      expect(closed).toContain(sayStep(order, step, job.brief.units).replaceAll(' ', ''));
    }
    expect(closed).toContain('Trimming:aguillotineorrotarycuttercanmaim');
    for (const { size, words } of pages) {
      for (const { at } of words) {
        expect(at.x > 20 && at.x < size.w - 20 && at.y > 20 && at.y < size.h - 20).toBe(true);
      }
    }
  });

  it('says which edges are knocked up and how many lifts there are, where the paper is known', async () => {
    const job = jobOf({ ...CARDS, pieces: [{ ...CARDS.pieces[0], quantity: 6000 }] });
    const tenth = POINTS_PER.mm / 10;
    // 273 needed and 14 overs, 287 sheets of a tenth of a millimetre: 28.7 mm.
    const at = (mm: number) =>
      granted(cuttingOf(job, { caliper: tenth, cutter: { ...ANY_CUTTER, mostStack: mm * POINTS_PER.mm } }));
    expect(at(30).lifts?.sheets).toEqual([287]);
    expect(at(10).lifts?.sheets).toEqual([96, 96, 95]);
    const [page] = await readPages(await pdfOf(setCuttingPages(job, at(10), DAY, MEASURES)));
    expect(page!.text).toContain('Jog to lead + left');
    expect(page!.text).toContain('Lifts 3 of 96 sheets at the most');
  });

  it('leaves the lifts to the manual of the cutter where the paper is not known', async () => {
    const job = jobOf(CARDS);
    const order = granted(cuttingOf(job, { cutter: { ...ANY_CUTTER, mostStack: 100 } }));
    const [page] = await readPages(await pdfOf(setCuttingPages(job, order, DAY, MEASURES)));
    expect(page!.text).toContain('for how many sheets Guillotine takes, see the manual');
  });

  const titled = (title: string): Job => ({ ...SUPPER, brief: { ...SUPPER.brief, title } });
  const KNOWN = { caliper: POINTS_PER.mm / 10, cutter: { ...ANY_CUTTER, mostStack: 100 } };
  const set = (job: Job, stock?: Stock) => {
    const order = granted(cuttingOf(job, stock));
    return { order, ...setCuttingPages(job, order, DAY, MEASURES) };
  };

  it.each(cuttable)('counts cuts, settings and turns as the steps do: %s', (_name, job) => {
    const { order, pages } = set(job);
    const { steps } = order;
    const cuts = steps.reduce((sum, { parts }) => sum + parts.length, 0);
    // Every stack is turned alone.
    const turns = steps.reduce((sum, { turned, parts }) => sum + (turned === 0 ? 0 : parts.length), 0);
    // The gauge is set anew whenever its distance changes.
    const settings = steps.filter(({ distance }, i) => distance !== steps[i - 1]?.distance).length;
    const strokes = steps.reduce((sum, step) => sum + step.strokes, 0);
    const abreast = strokes < cuts ? `; ${strokes} strokes side by side` : '';
    expect(textIn(pages[0]!)).toContain(
      `Cuts ${cuts} ${settings} settings, ${turns} turns${abreast} Lifts by the gauge`,
    );
    expect(textIn(pages[0]!)).toContain('Each drawing is the table from above; you stand below it.');
  });

  it('says how large the sheet is and which edges held it', () => {
    expect(textIn(set(SUPPER, KNOWN).pages[0]!)).toMatch(
      /Jog to lead \+ left the edges that held the sheet in the printer Sheet 11 × 17 in across the feed × along it/,
    );
  });

  it('shows the cautions of knife and load once, and whatever else there is to know', () => {
    const { order, pages } = set(SUPPER);
    const all = pages.map(textIn).join(' ');
    const times = (said: string) => all.split(said).length - 1;
    expect([times('guillotine or rotary cutter can maim'), times('paper is heavy')]).toEqual([1, 1]);
    const others = order.notices.filter((notice) => !/can maim|is heavy/.test(notice));
    for (const notice of others) expect(all.replaceAll(' ', '')).toContain(notice.replaceAll(' ', ''));
  });

  it('sets a title large where there is room for it, and cuts one short that has no end', () => {
    const first = (title: string) => wordsIn(set(titled(title)).pages[0]!)[2]!;
    expect([first('Cards').size, first('Cards').words]).toEqual([19, 'Cards']);
    expect(first('Cards for everybody who ever sang in the choir of the village by the lake').size).toBe(12);
    const words = wordsIn(set(titled('Cards '.repeat(60))).pages[0]!);
    expect(words.some((said) => said.words.endsWith('…') && said.size === 12)).toBe(true);
  });

  it('has its steps two and two in frames of one height, each with its drawing, its words and its register', () => {
    const { order, pages, paper } = set(jobOf(CARDS));
    const margin = 32;
    const left = (paper.w - 2 * margin - 8) / 2;
    for (const shapes of pages) {
      const steps = wordsIn(shapes).filter(({ words }) => /^Step \d+$/.test(words));
      const frames = pathsIn(shapes)
        .filter(({ stroke }) => stroke?.width === 0.8 && stroke.tone === 'soft')
        .map(extentOf)
        .filter((frame) => Math.abs(frame.right - frame.left - left) < 1e-6);
      expect(frames).toHaveLength(steps.length);
      for (const [i, words] of steps.entries()) {
        const step = order.steps[Number(words.words.slice(5)) - 1]!;
        const frame = frames.find((of) => liesIn(roomOf(words), of))!;
        expect(frame.left).toBeCloseTo(step.number % 2 === 1 ? margin : margin + left + 8);
        const mine = wordsIn(shapes).filter((said) => said.head === 0 && liesIn(roomOf(said), frame, 4));
        const said = textIn(mine);
        expect(said).toContain(sayStep(order, step, 'mm'));
        expect(said).toContain(sayRegister(step.register));
        const beside = frames[step.number % 2 === 1 ? i + 1 : i - 1];
        if (beside !== undefined) expect([beside.top, beside.bottom]).toEqual([frame.top, frame.bottom]);
      }
    }
  });

  it('is headed as what it is on every page', () => {
    const { pages } = set(SUPPER);
    expect(
      pages.map((shapes, i) =>
        textIn(shapes).startsWith(`Cutting order · Harvest supper ${DAY} · page ${i + 1} of`),
      ),
    ).toEqual(pages.map(() => true));
  });
});

describe('the cutting order of a job', () => {
  it('plans lifts only where the caliper is known', () => {
    const job = jobOf(CARDS);
    const cutter = { ...ANY_CUTTER, mostStack: 0.5 * POINTS_PER.mm };
    // 15 sheets of a tenth of a millimetre, half a millimetre at a time.
    expect(granted(cuttingOf(job, { caliper: POINTS_PER.mm / 10, cutter })).lifts?.sheets).toEqual([5, 5, 5]);
    expect(granted(cuttingOf(job, { cutter })).lifts).toBeUndefined();
    expect(granted(cuttingOf(job, undefined)).lifts).toBeUndefined();
  });

  it('begins at the edges that held the sheet', () => {
    const at = (across: string) =>
      granted(
        cuttingOf(jobOf({ ...CARDS, sheet: { ...CARDS.sheet, hold: { across, along: 'lead' } } }), undefined),
      ).knockUp;
    expect([at('left'), at('right')]).toEqual([
      ['lead', 'left'],
      ['lead', 'right'],
    ]);
  });
});
