// The fewest cuts that free every piece, looked for in full and where there is no time to look.
import { describe, expect, it } from 'vitest';
import { fieldOf, wholeSheet } from '../../../shared/cutting/cuttingGrid.ts';
import { fewestCuts } from '../../../shared/cutting/fewestCuts.ts';
import { gridToCut, sheetToCut } from '../../kit/cutJobs.ts';

const count = ({ sheet, arrangement }: ReturnType<typeof sheetToCut>, effort: number) => {
  const field = fieldOf(
    sheet,
    arrangement.map((p) => p.trim),
  );
  return fewestCuts(field, effort)(wholeSheet(field));
};

describe('the fewest cuts', () => {
  // Common practice, no source: four trims, then for each piece but the first one cut, or two where there are gutters.
  it.each([
    [1, 1],
    [2, 1],
    [1, 2],
    [3, 4],
    [6, 5],
  ])('of a grid of %i by %i pieces are as many whether all ways are looked at or only one', (m, n) => {
    for (const effort of [Infinity, 0]) {
      expect(count(gridToCut(m, n, 0), effort)).toBe(4 + m * n - 1);
      expect(count(gridToCut(m, n, 1), effort)).toBe(4 + 2 * (m * n - 1));
    }
  });

  it('are one between neighbours that touch, and two where waste lies between', () => {
    // On 6 x 3: a piece of 4 x 3 beside 2 x 1 and 2 x 1 with 1 of waste between them. One cut frees the large piece, and
    // two take the waste out of what is left.
    const boxes = [
      { x: 0, y: 0, w: 4, h: 3 },
      { x: 4, y: 0, w: 2, h: 1 },
      { x: 4, y: 2, w: 2, h: 1 },
    ];
    expect(count(sheetToCut({ w: 6, h: 3 }, boxes, 72), Infinity)).toBe(3);
  });

  it('are none for the piece that is its own sheet, and without end where no guillotine can cut', () => {
    expect(count(sheetToCut({ w: 2, h: 3 }, [{ x: 0, y: 0, w: 2, h: 3 }], 72), Infinity)).toBe(0);
    const windmill = [
      { x: 0, y: 0, w: 2, h: 1 },
      { x: 2, y: 0, w: 1, h: 2 },
      { x: 1, y: 2, w: 2, h: 1 },
      { x: 0, y: 1, w: 1, h: 2 },
      { x: 1, y: 1, w: 1, h: 1 },
    ];
    expect(count(sheetToCut({ w: 3, h: 3 }, windmill, 72), Infinity)).toBe(Infinity);
  });
});
