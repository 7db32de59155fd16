// Prices of places: they tell that forms have too few, and never where they have enough.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { priceWays } from '../../../shared/gang/placePrices.ts';
import { waysToMake } from '../../../shared/gang/waysToMake.ts';
import { drawnCases } from '../../kit/drawnCases.ts';

describe('Ways to make a design', () => {
  it('take a copy more of a long run or several of a short one, and never one too many', () => {
    // 250 pieces: three of 100 and none, two and one of 60, one and three, none and five.
    expect(waysToMake(250, [100, 60], 5)).toEqual([
      [0, 5],
      [1, 3],
      [2, 1],
      [3, 0],
    ]);
    expect(waysToMake(250, [100, 60], 2)).toEqual([[2, 1]]);
    expect(waysToMake(250, [100, 0], 5)).toEqual([[3, 0]]);
  });
});

describe('Places that are priced', () => {
  const pairs = (designs: number) => [{ ways: waysToMake(2, [3, 1], 4), designs }];

  it('lack where the places taken are dearer than all there are', () => {
    // Runs of 3 and 1 sheets, four places each: 2 pieces take one place of the first or two of the second. So there is
    // room for four designs and two. Priced by the runs, seven take 7 x 2 of 16; at 2 to 1 they take 7 x 2 of 12.
    expect(priceWays(pairs(7), 4, [3, 1]).lacking).toBe(true);
    expect(priceWays(pairs(6), 4, [3, 1]).lacking).toBe(false);
  });

  it('lack where a design cannot be made at all', () => {
    expect(priceWays([{ ways: waysToMake(20, [3, 1], 4), designs: 1 }], 4, [3, 1]).lacking).toBe(true);
  });

  it('never lack where the forms hold every design', () => {
    const filled = fc
      .record({
        runs: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 3 }),
        designs: fc.integer({ min: 1, max: 6 }),
        places: fc.array(fc.nat(), { minLength: 8, maxLength: 8 }),
      })
      .map(({ runs, designs, places }) => {
        // Every place of every form holds some design, and just what is printed is wanted.
        const made = Array.from({ length: designs }, () => 0);
        for (const run of runs) {
          places.forEach((place, p) => {
            const design = (place + p * run) % designs;
            made[design] = (made[design] ?? 0) + run;
          });
        }
        return { runs, slots: places.length, wanted: made.filter((pieces) => pieces > 0) };
      });
    fc.assert(
      fc.property(filled, ({ runs, slots, wanted }) => {
        const choices = wanted.map((pieces) => ({ ways: waysToMake(pieces, runs, slots), designs: 1 }));
        expect(priceWays(choices, slots, runs).lacking).toBe(false);
      }),
      drawnCases(300),
    );
  });
});
