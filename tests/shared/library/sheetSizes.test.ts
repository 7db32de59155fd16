// The sizes that are offered for sheets are those of the standards and of the trade.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SHEET_SIZES } from '../../../shared/library/sheetSizes.ts';
import { POINTS_PER, points } from '../../../shared/units/length.ts';

/** ISO 216, ISO 217, ANSI/ASME Y14.1 and the usual sizes in inches, each with its source in the file. */
const { sizes } = JSON.parse(
  readFileSync(new URL('../../reference/sizes.json', import.meta.url), 'utf8'),
) as {
  readonly sizes: readonly { readonly name: string; readonly w_mm: number; readonly h_mm: number }[];
};

describe('the sizes of sheets', () => {
  it.each(SHEET_SIZES)(
    '$name is a size of the tables, the shorter edge first',
    ({ name, size: [short, long] }) => {
      expect(points(short)).toBeLessThan(points(long));
      const [w, h] = [points(short) / POINTS_PER.mm, points(long) / POINTS_PER.mm];
      const same = sizes.filter((one) => Math.abs(one.w_mm - w) < 1e-6 && Math.abs(one.h_mm - h) < 1e-6);
      expect(same).not.toEqual([]);
      if (/^(S?RA|A|B)\d/.test(name)) expect(same.map((one) => one.name)).toContain(name);
    },
  );

  it('are each offered once', () => {
    const written = SHEET_SIZES.map(({ size }) => size.map(points).join(' '));
    expect(new Set(written).size).toBe(written.length);
  });
});
