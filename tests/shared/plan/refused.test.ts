// What cannot be printed on a paper or a printer is said in words, once for each reason.
import { describe, expect, it } from 'vitest';
import { layOutCandidates } from '../../../shared/plan/layOutCandidates.ts';
import { supperBrief, supperWith } from '../../kit/briefs.ts';
import { card, libraryWith, trayPrinter } from '../../kit/libraries.ts';
import { briefOf } from '../../kit/plans.ts';

const [tray] = trayPrinter.feeds;
const [sheet] = card.forms;

/** Every reason with how many ways of working it stops, on which sheet. */
const reasons = (changes: object, written: unknown = supperBrief) =>
  layOutCandidates(briefOf(written), libraryWith(changes)).refused.map(
    ({ printer, feed, paper, sheet: on, works, fault }) => {
      expect([printer, feed]).toEqual(['Tray printer', 'Tray']);
      expect(fault.remedy).toMatch(/^(Take|Turn|Name|Check|Let)/);
      const size = on?.map((length) => length.amount).join(' x ');
      return [paper, size, works.map(({ style }) => style).join(' '), fault.message].join(' | ');
    },
  );
const onFeed = (changes: object) => ({ printers: [{ ...trayPrinter, feeds: [{ ...tray, ...changes }] }] });
const onPaper = (changes: object) => ({
  papers: [{ ...card, ...changes }],
  ...onFeed({ turnsItself: true }),
});
const NOT_ITSELF = ' |  | perfecting perfecting | Tray of Tray printer does not turn the sheet itself.';

describe('a job is not printed', () => {
  it('by a printer’s own turning where it does not turn', () => {
    expect(reasons({})).toEqual([NOT_ITSELF]);
    expect(reasons(onFeed({ turnsItself: true }))).toEqual([]);
  });

  it('on a paper that is thicker than the feed takes', () => {
    expect(reasons(onPaper({ caliper: '13 pt' }))).toEqual([]);
    expect(reasons(onPaper({ caliper: '0.34 mm' }))).toEqual([
      'Card |  |  | "Card" is 0.34 mm thick, and Tray takes up to 13 pt.',
    ]);
    expect(
      reasons({
        ...onFeed({ thickest: undefined, turnsItself: true }),
        papers: [{ ...card, caliper: '3 mm' }],
      }),
    ).toEqual([]);
  });

  it('in any way of working, where the paper or the sheets themselves are the reason', () => {
    const refusedOn = (changes: object) =>
      layOutCandidates(briefOf(supperBrief), libraryWith(onPaper(changes))).refused.map(
        ({ works, fault: { code } }) => ({ works, code }),
      );
    const inAnyWay = [{ works: [], code: 'plan-impossible' }];
    expect(refusedOn({ caliper: '0.34 mm' })).toEqual(inAnyWay);
    expect(refusedOn({ forms: [{ ...sheet, size: '20 x 30 in' }] })).toEqual(inAnyWay);
  });

  it('from one form on a paper whose sides are not alike, with the reason why they are not', () => {
    const says = (why: string) =>
      `Card |  | work-and-turn work-and-tumble | "Card" ${why}, and one form for both sides lets every piece come out on either side of the paper.`;
    expect(reasons(onPaper({ coated: 'one-side' }))).toEqual([says('is coated on one side only')]);
    expect(reasons(onPaper({ sidesAlike: false }))).toEqual([says('has two sides that are not alike')]);
    const simplex = supperWith({ work: 'simplex' }, { back: undefined });
    expect(reasons(onPaper({ coated: 'one-side' }), simplex)).toEqual([]);
  });

  it('on sheets, parents and rolls of which nothing goes in', () => {
    const price = { amount: 1, per: 'sheet' };
    const takes = 'Tray takes 4 × 6 in to 13 × 19 in (across × along the feed).';
    expect(reasons(onPaper({ forms: [{ is: 'sheet', size: '20 x 30 in', price }] }))).toEqual([
      `Card |  |  | The 20 × 30 in sheet goes in with neither edge leading: ${takes}`,
    ]);
    expect(
      reasons(onPaper({ forms: [{ is: 'parent', size: '20 x 30 in', price, cutTo: ['15 x 20 in'] }] })),
    ).toEqual([`Card |  |  | No sheet that the 20 × 30 in parent sheet is cut to goes in: ${takes}`]);
    const metre = { amount: 1, per: 'metre' };
    expect(reasons(onPaper({ forms: [{ is: 'roll', width: '24 in', price: metre }] }))).toEqual([
      `Card |  |  | No sheet of the 24 in wide roll goes in: ${takes}`,
    ]);
  });

  it('where the pieces would fit but their bleed does not', () => {
    const forms = [{ ...sheet, size: '5.4 x 7.6 in' }];
    // Turned end to end, the 0.3 in of the tail are lost at the lead as well.
    const says = (h: string) =>
      `Card | 5.4 x 7.6 | work-and-back perfecting | The pieces fit the 5.4 × 7.6 in sheet, but their bleed does not fit inside what can be printed on it (5.15 × ${h} in).`;
    expect(reasons(onPaper({ forms })).slice(0, 2)).toEqual([says('7.1'), says('7')]);
  });

  it('where the pieces would fit one half but their bleed does not', () => {
    // Half of 10.5 in less 0.125 in at both edges is 5.125 in: 5 in and half a gutter, and no bleed at the edge of the sheet.
    // In height all of it is free but the 0.2 and 0.3 in of lead and tail.
    expect(reasons(onPaper({ forms: [{ ...sheet, size: '10.5 x 9 in' }] }))).toContain(
      'Card | 10.5 x 9 | work-and-turn | The pieces fit the 10.5 × 9 in sheet, but their bleed does not fit inside what can be printed on one half of it (5.125 × 8.5 in).',
    );
  });

  it('where the pieces do not fit, with the room that there is', () => {
    const forms = [{ ...sheet, size: '8.5 x 11 in' }];
    // Worked and turned, half of 8.25 in less the bleed and half the gutter leaves 3.875 in; worked and tumbled, each half
    // of 10.4 in is 5.2, too little for 5 in with bleed and half a gutter, but not without the bleed.
    expect(reasons(onPaper({ forms }))).toEqual([
      'Card | 8.5 x 11 | work-and-turn | "Supper" (5 × 7 in and 0.125 in bleed) does not fit the sheet either way: there is room for a trim of 3.875 × 10.25 in on one half of it, which work-and-turn needs.',
      'Card | 8.5 x 11 | work-and-tumble | The pieces fit the 8.5 × 11 in sheet, but their bleed does not fit inside what can be printed on one half of it (8.25 × 5.2 in).',
      'Card | 11 x 8.5 | work-and-tumble | "Supper" (5 × 7 in and 0.125 in bleed) does not fit the sheet either way: there is room for a trim of 10.5 × 3.7 in on one half of it, which work-and-tumble needs.',
    ]);
  });
});

describe('one side only', () => {
  it('is not offered for a job with backs, nor two sides for a job without', () => {
    const styles = (written: unknown) =>
      new Set(
        layOutCandidates(briefOf(written), libraryWith(onFeed({ turnsItself: true }))).candidates.map(
          ({ work }) => work.style,
        ),
      );
    expect(styles(supperBrief)).toEqual(
      new Set(['work-and-back', 'perfecting', 'work-and-turn', 'work-and-tumble']),
    );
    expect(styles(supperWith({ work: 'simplex' }, { back: undefined }))).toEqual(new Set(['simplex']));
  });
});

it('side 2 on the uncoated side is pointed out, and nothing where there is none or nothing is printed on it', () => {
  const noticed = (changes: object, written: unknown = supperBrief) =>
    layOutCandidates(briefOf(written), libraryWith(onPaper(changes))).candidates.map(({ notices }) =>
      notices.includes('"Card" is coated on one side only: side 2 is printed on the other one.'),
    );
  expect(new Set(noticed({ coated: 'one-side' }))).toEqual(new Set([true]));
  expect(new Set(noticed({ coated: 'both-sides' }))).toEqual(new Set([false]));
  expect(new Set(noticed({}))).toEqual(new Set([false]));
  const simplex = supperWith({ work: 'simplex' }, { back: undefined });
  expect(new Set(noticed({ coated: 'one-side' }, simplex))).toEqual(new Set([false]));
});
