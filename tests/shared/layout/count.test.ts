import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countSheets, oversFor, sheetsNeeded, USUAL_OVERS } from '../../../shared/layout/count.ts';

describe('sheets to print', () => {
  it('takes 30 good sheets and 3 overs for 120 cards four up', () => {
    // 120 / 4 = 30; 5 in a hundred of 30 is 1.5, part of a sheet is a whole one, and 3 is the least.
    expect(countSheets([{ piece: 'Supper', wanted: 120, perSheet: 4 }], USUAL_OVERS)).toEqual({
      needed: 30,
      overs: 3,
      sheets: 33,
      yields: [{ piece: 'Supper', wanted: 120, perSheet: 4, fromNeeded: 120, leftOver: 0 }],
    });
  });

  it('prints as many sheets as the design with the fewest up needs, and says what is left of the others', () => {
    const count = countSheets(
      [
        { piece: 'Menu', wanted: 50, perSheet: 2 },
        { piece: 'Tag', wanted: 101, perSheet: 6 },
      ],
      { percent: 10, least: 0 },
    );
    expect(count).toMatchObject({ needed: 25, overs: 3, sheets: 28 });
    expect(count.yields.map((y) => [y.fromNeeded, y.leftOver])).toEqual([
      [50, 0],
      [150, 49],
    ]);
  });

  it('rounds part of a sheet up to a whole one', () => {
    expect(sheetsNeeded(121, 4)).toBe(31);
    expect(sheetsNeeded(120, 4)).toBe(30);
    expect(sheetsNeeded(1, 4)).toBe(1);
  });

  it('adds the share of the run or the least number of overs, whichever is more', () => {
    expect(oversFor(1000, { percent: 5, least: 3 })).toBe(50);
    expect(oversFor(1001, { percent: 5, least: 3 })).toBe(51);
    expect(oversFor(10, { percent: 5, least: 3 })).toBe(3);
    expect(oversFor(10, { percent: 0, least: 0 })).toBe(0);
  });

  it('needs no sheets for no designs', () => {
    expect(countSheets([], { percent: 5, least: 0 })).toEqual({ needed: 0, overs: 0, sheets: 0, yields: [] });
  });

  it('always prints enough, and one sheet fewer would be too few', () => {
    const designs = fc.array(
      fc.record({ wanted: fc.integer({ min: 1, max: 5000 }), perSheet: fc.integer({ min: 1, max: 40 }) }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(designs, (list) => {
        const named = list.map((d, i) => ({ ...d, piece: `Design ${i}` }));
        const { needed, yields } = countSheets(named, { percent: 0, least: 0 });
        expect(yields.every((y) => y.leftOver >= 0)).toBe(true);
        expect(named.some((d) => (needed - 1) * d.perSheet < d.wanted)).toBe(true);
      }),
    );
  });
});
