// The cutting order as it is printed: every step with its number, its words and its drawing, whole and in order.

import { describe, expect, it } from 'vitest';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import { sayStep } from '../../../shared/cutting/words.ts';
import { cuttingOf } from '../../../shared/runSheet/cuttingOf.ts';
import { setCuttingPages } from '../../../shared/runSheet/cuttingPages.ts';
import { POINTS_PER } from '../../../shared/units/length.ts';
import { granted } from '../../kit/granted.ts';
import { readPages } from '../../kit/readPages.ts';
import { DAY, MEASURES, pdfOf } from '../../kit/setPapers.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

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
});
