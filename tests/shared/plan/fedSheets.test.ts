// The sheets of a paper that a feed takes: as they are sold, out of parent sheets, off a roll.
import { describe, expect, it } from 'vitest';
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { cutFromInWords } from '../../../shared/plan/takeCandidate.ts';
import { supperWith } from '../../kit/briefs.ts';
import { card, trayPrinter } from '../../kit/libraries.ts';
import { planned } from '../../kit/plans.ts';

const [tray] = trayPrinter.feeds;
const brief = supperWith({ work: 'work-and-back' });
const perSheet = { amount: 1, per: 'sheet' } as const;

/** What is fed, each once: `across x along`, what it is cut from, where its grain runs. */
const fed = (form: object, onFeed: object = {}, of: unknown = brief) => {
  const candidates = planned(of, {
    printers: [{ ...trayPrinter, feeds: [{ ...tray, ...onFeed }] }],
    papers: [{ ...card, forms: [form] }],
  });
  const said = ({ sheet, source, grain, lead }: PlanCandidate) =>
    [
      sheet.map((length) => length.amount).join(' x '),
      `${lead} leads`,
      ...(source.is === 'parent' ? [`${source.out} out`] : []),
      ...(source.is === 'roll' ? [`${source.metres.toFixed(4)} m`] : []),
      grain,
    ].join(', ');
  return [...new Set(candidates.map(said))].toSorted();
};

describe('a sheet as it is sold', () => {
  it('is fed with either edge leading, as long as it goes in that way', () => {
    const form = { is: 'sheet', size: '11 x 17 in', grain: 'long', price: perSheet };
    expect(fed(form)).toEqual(['11 x 17, short leads, along-feed']);
    expect(fed(form, { most: '17 x 19 in' })).toEqual([
      '11 x 17, short leads, along-feed',
      '17 x 11, long leads, across-feed',
    ]);
    expect(fed(form, { least: '12 x 6 in', most: '17 x 19 in' })).toEqual([
      '17 x 11, long leads, across-feed',
    ]);
    expect(fed(form, { least: '4 x 17 in', most: '11 x 17 in' })).toEqual([
      '11 x 17, short leads, along-feed',
    ]);
  });

  it('has its grain along the edge that is named, whichever is typed first', () => {
    const grain = (size: string, runs: string) => fed({ is: 'sheet', size, grain: runs, price: perSheet });
    expect(grain('11 x 17 in', 'short')).toEqual(['11 x 17, short leads, across-feed']);
    expect(grain('17 x 11 in', 'short')).toEqual(['11 x 17, short leads, across-feed']);
    expect(grain('17 x 11 in', 'long')).toEqual(['11 x 17, short leads, along-feed']);
    expect(grain('11 x 17 in', 'unknown')).toEqual(['11 x 17, short leads, unknown']);
    expect(grain('12 x 12 in', 'long')).toEqual(['12 x 12, short leads, along-feed']);
  });
});

describe('a parent sheet', () => {
  const parent = (size: string, cutTo: readonly string[] = []) => ({
    is: 'parent',
    size,
    grain: 'long',
    price: perSheet,
    cutTo,
  });

  // 26 x 40 in is four of 13 x 20, six of 13 x 13.33, eight of 13 x 10 or of 6.5 x 20 in (arithmetic); 11 x 17 in comes
  // out four times with the grain one way, 2 x 2, and three times with it the other way, 1 x 3.
  it('is cut to the sheet of the job and to equal parts, down to eighths', () => {
    expect(fed(parent('26 x 40 in'), { most: '13 x 20 in' })).toEqual(
      [
        '11 x 17, short leads, 4 out, along-feed',
        '13 x 10, long leads, 8 out, along-feed',
        '13 x 13.33, short leads, 6 out, along-feed',
        '13 x 20, short leads, 4 out, along-feed',
        '6.5 x 20, short leads, 8 out, along-feed',
        '8.66 x 20, short leads, 6 out, along-feed',
        '10 x 13, short leads, 8 out, across-feed',
      ].toSorted(),
    );
  });

  it('is cut to the sizes that are named instead, with the grain one way in all of them', () => {
    // 11 x 17 out of 23 x 35 in: 2 x 2 upright; on their sides 1 x 3.
    expect(fed(parent('23 x 35 in', ['11 x 17 in']))).toEqual(['11 x 17, short leads, 4 out, along-feed']);
    // 12 x 18 out of 25 x 38 in: upright 2 x 2; on their sides 1 x 3.
    expect(fed(parent('25 x 38 in', ['18 x 12 in']))).toEqual(['12 x 18, short leads, 4 out, along-feed']);
    // 11 x 17 out of 17 x 22 in lies on its side, so that the long grain of the parent runs along its short edge.
    expect(fed(parent('17 x 22 in', ['11 x 17 in']))).toEqual(['11 x 17, short leads, 2 out, across-feed']);
  });

  it('gives one more where some lie across, which mixes the grain', () => {
    // 8 x 12 out of 20 x 25 in: 2 x 2 or 1 x 3 one way; with some across, five: 8 x 12 twice on 12 x 8 three times.
    const sheets = fed(parent('20 x 25 in', ['8 x 12 in']));
    expect(sheets).toEqual([
      '12 x 8, long leads, 4 out, across-feed',
      '12 x 8, long leads, 5 out, mixed',
      '8 x 12, short leads, 4 out, along-feed',
      '8 x 12, short leads, 5 out, mixed',
    ]);
  });

  it('lies upright where as many come out either way', () => {
    // Two of 8 x 12 out of 20 x 20 in either way, three where one lies across the others.
    expect(fed(parent('20 x 20 in', ['8 x 12 in']), { most: '9 x 19 in' })).toEqual([
      '8 x 12, short leads, 2 out, along-feed',
      '8 x 12, short leads, 3 out, mixed',
    ]);
  });

  it('keeps its grain along the edge that it runs along, also where the sheets lie on their side', () => {
    // The short edge of 17 x 22 in is 17 in, as long as the long edge of 11 x 17 in: grain along one is grain along the other.
    expect(fed({ ...parent('17 x 22 in', ['11 x 17 in']), grain: 'short' })).toEqual([
      '11 x 17, short leads, 2 out, along-feed',
    ]);
  });

  it('is cut to every size that is named, also where one edge of two sizes is alike, and to each size once', () => {
    // Out of 22 x 34 in: 11 x 17 four times; 17 x 9 twice two with the grain one way and 1 x 3 with it the other way.
    const outOf = (cutTo: readonly string[]) => fed(parent('22 x 34 in', cutTo));
    const both = outOf(['11 x 17 in', '17 x 9 in']);
    expect(both.filter((one) => one.startsWith('11 x 17'))).toEqual(outOf(['11 x 17 in']));
    expect(both.filter((one) => !one.startsWith('11 x 17'))).toEqual(outOf(['17 x 9 in']));
    expect(outOf(['17 x 9 in'])).not.toEqual([]);
    const papers = (cutTo: readonly string[]) => [{ ...card, forms: [parent('22 x 34 in', cutTo)] }];
    const once = planned(brief, { papers: papers(['11 x 17 in']) });
    const twice = planned(brief, { papers: papers(['11 x 17 in', '17 x 11 in', '279.4 x 431.8 mm']) });
    expect(twice.map(({ id }) => id)).toEqual(once.map(({ id }) => id));
  });

  it('is not offered where no part of it goes in, or where it is smaller than what it would be cut to', () => {
    expect(fed(parent('26 x 40 in', ['17 x 22 in']))).toEqual([]);
    expect(fed(parent('11 x 17 in', ['12 x 18 in']))).toEqual([]);
  });
});

describe('a roll', () => {
  const roll = (width: string, cutTo: readonly string[] = []) => ({
    is: 'roll',
    width,
    price: { amount: 2, per: 'metre' },
    cutTo,
  });
  const narrow = { most: '13 x 19 in' };

  it('is cut to the lengths that are named, and lies across the feed or along it', () => {
    expect(fed(roll('13 in', ['12 in', '25.4 mm', '18 in']), narrow)).toEqual([
      '12 x 13, short leads, 0.3048 m, across-feed',
      '13 x 12, long leads, 0.3048 m, along-feed',
      '13 x 18, short leads, 0.4572 m, along-feed',
    ]);
  });

  it('is cut to a length once, in whatever unit it is named', () => {
    const cut = (cutTo: readonly string[]) =>
      planned(brief, { papers: [{ ...card, forms: [roll('12 in', cutTo)] }] }).map(({ id }) => id);
    expect(cut(['18 in'])).not.toEqual([]);
    expect(cut(['18 in', '457.2 mm'])).toEqual(cut(['18 in'])); // 18 x 25.4
  });

  // Turned, both ends lose the wider margin of 0.3 in; a row upright takes 7.25 in, on its side 5.25, and the bleed at
  // both ends is as much as the gutter between: 0.6 + 7.25 n and 0.6 + 5.25 n. Across, 0.25 + 5.25 n and 0.25 + 7.25 n.
  it('is cut to whole rows of the pieces and the margins, or as long as goes in, or as the job was typed', () => {
    const along = fed(roll('12 in'), narrow).filter((one) => one.startsWith('12 x'));
    expect(along).toEqual(
      [
        '12 x 7.85, long leads, 0.1994 m, along-feed',
        '12 x 15.1, short leads, 0.3835 m, along-feed',
        '12 x 11.1, long leads, 0.2819 m, along-feed',
        '12 x 16.35, short leads, 0.4153 m, along-feed',
        '12 x 11, long leads, 0.2794 m, along-feed',
        '12 x 17, short leads, 0.4318 m, along-feed',
        '12 x 19, short leads, 0.4826 m, along-feed',
      ].toSorted(),
    );
    const across = fed(roll('12 in'), narrow).filter((one) => one.includes(' x 12,'));
    expect(across.map((one) => Number.parseFloat(one)).toSorted((a, b) => a - b)).toEqual([
      5.5, 7.5, 10.75, 11, 13,
    ]);
  });

  it('of one side only loses each margin once', () => {
    const simplex = supperWith({ work: 'simplex' }, { back: undefined, lies: 'upright' });
    const along = fed(roll('12 in'), narrow, simplex).filter((one) => one.startsWith('12 x'));
    expect(along.map((one) => one.split(',')[0])).toEqual([
      '12 x 11',
      '12 x 15',
      '12 x 17',
      '12 x 19',
      '12 x 7.75',
    ]);
  });

  it('takes as much of the roll as its sheets are long, and its price by weight is that of the roll', () => {
    const papers = (price: object) => [
      { ...card, weight: '250 gsm', forms: [{ ...roll('12 in', ['18 in']), price }] },
    ];
    const [byMetre] = planned(brief, { papers: papers({ amount: 2, per: 'metre' }) });
    const sheets = byMetre?.count.sheets ?? 0;
    expect(byMetre?.count.bought).toBeCloseTo(sheets * 0.4572, 9);
    expect(byMetre?.cost.paper).toBe(Math.round(sheets * 0.4572 * 200) / 100);
    const [byWeight] = planned(brief, { papers: papers({ amount: 3, per: 'kg' }) });
    const kg = sheets * 0.4572 * 0.3048 * 0.25;
    expect(byWeight?.cost.paper).toBe(Math.round(kg * 300) / 100);
  });
});

it('what a sheet is cut from is said in the unit that it was typed in', () => {
  const from = (form: object) => {
    const [first] = planned(brief, { papers: [{ ...card, forms: [form] }] });
    return first && cutFromInWords(first);
  };
  expect(from({ is: 'parent', size: '640 x 900 mm', price: perSheet, cutTo: ['320 x 450 mm'] })).toBe(
    '640 × 900 mm, 4 out',
  );
  expect(from({ is: 'roll', width: '12 in', price: { amount: 1, per: 'kg' } })).toBe('a roll 12 in wide');
  expect(from({ is: 'sheet', size: '11 x 17 in', price: perSheet })).toBeUndefined();
});
