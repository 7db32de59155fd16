// The two pages of a run sheet: what stands on which, how large the sheet is drawn, and when files are named.
import { describe, expect, it } from 'vitest';
import { setRunSheet } from '../../../shared/runSheet/runSheetPages.ts';
import { runSheetInput } from '../../kit/setPapers.ts';
import { extentOf, pathsIn, textIn } from '../../kit/shapes.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

describe('the drawing of the sheet on the first page', () => {
  /** How high the sheet of 320 x 450 mm is drawn beside so many designs, in pt. */
  const highWith = (designs: number) => {
    const [card] = CARDS.pieces;
    const pieces = Array.from({ length: designs }, (_, i) => ({ ...card, name: `Month ${i + 1}` }));
    const [first] = setRunSheet(runSheetInput(jobOf({ ...CARDS, work: 'work-and-back', pieces }))).pages;
    const boxes = pathsIn(first!).map(extentOf);
    const sheets = boxes.filter(({ left, right, bottom, top }) => {
      return top > bottom && Math.abs((right - left) / (top - bottom) - 320 / 450) < 0.002;
    });
    return Math.max(...sheets.map(({ bottom, top }) => top - bottom));
  };

  it('makes way for the list of designs, until it would be too small and the list goes on the next page', () => {
    const whole = highWith(1);
    expect(highWith(8)).toBeLessThan(whole * 0.9);
    expect(highWith(14)).toBeCloseTo(whole);
  });
});

describe('the names of files in the steps', () => {
  /** Whether the steps name the file of each side; names are so many letters long. */
  const named = (...lengths: readonly [number, number]) => {
    const sides = lengths.map((length, i) => ({
      side: i === 0 ? (1 as const) : (2 as const),
      name: `${i}`.repeat(length),
      page: 1,
    }));
    const job = jobOf(CARDS, { style: 'work-and-back', turn: 'side-to-side' });
    const said = setRunSheet(runSheetInput(job, { sides })).pages.map(textIn).join(' ').replaceAll(' ', '');
    return sides.map(({ name, side }) =>
      said.includes(`side${side}on${side === 1 ? 'one' : 'thesame'}sheetfrom${name}.`),
    );
  };

  it('are left out together as soon as one is longer than 60 letters, since the first page tells them', () => {
    expect(named(20, 60)).toEqual([true, true]);
    expect(named(20, 61)).toEqual([false, false]);
    expect(named(61, 20)).toEqual([false, false]);
  });
});

describe('the two pages of a run sheet', () => {
  it.each(KINDS)('are one of what the job is and one of what hands do and write: %s', (_name, job) => {
    const pages = setRunSheet(runSheetInput(job)).pages.map(textIn);
    expect(pages).toHaveLength(2);
    expect(pages[1]).toMatch(
      /page 2 of 2 Before printing .* One sheet first .* The rest .* Counts .* Readings /,
    );
    expect(pages[0]).toMatch(/page 1 of 2 .* The sheet in hand .* Files /);
    for (const doing of ['Before printing', 'One sheet first', 'Counts', 'Readings']) {
      expect(pages[0]).not.toContain(doing);
    }
  });
});
