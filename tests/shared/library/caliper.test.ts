// The caliper of a paper, whose points are not those of typography.
import { describe, expect, it } from 'vitest';
import { readCaliper } from '../../../shared/library/caliper.ts';
import { points } from '../../../shared/units/length.ts';
import { readLength } from '../../../shared/units/read.ts';

describe('the caliper of a paper', () => {
  // A point of caliper is a thousandth of an inch, 25.4 um (paper glossaries; ISO 534 and TAPPI T 411, from memory).
  it.each([
    ['300 um', 300],
    ['300 µm', 300],
    ['300 micron', 300],
    ['0.3 mm', 300],
    ['0,3 mm', 300],
    ['.3 mm', 300],
    ['12 pt', 304.8],
    ['12pt', 304.8],
    ['12 mil', 304.8],
    ['0.012 in', 304.8],
    ['0.012"', 304.8],
    ['14 pts', 355.6],
    ['14pts.', 355.6],
    ['14 PT', 355.6],
    ['14 pt.', 355.6],
    ['14 point', 355.6],
    ['14 points', 355.6],
    ['14 mil', 355.6],
    ['14 mils', 355.6],
    ['14 thou', 355.6],
    ['0.014 in.', 355.6],
    ['.014 inch', 355.6],
    ['0.014 inches', 355.6],
    ['350 um', 350],
    ['350μm', 350],
    ['350 microns', 350],
    ['350 micrometres', 350],
    ['350 micrometers', 350],
  ])('%s is %d micrometres', (text, micrometres) => {
    const read = readCaliper(text);
    expect(read.ok && read.value.micrometres).toBeCloseTo(micrometres, 9);
    expect(read.ok && read.value.typed).toBe(text);
  });

  it('leaves a pt that is no caliper the 72nd part of an inch', () => {
    const gutter = readLength('14 pt', 'in');
    expect(gutter.ok && points(gutter.value)).toBe(14);
    const caliper = readCaliper('14 pt');
    expect(caliper.ok && caliper.value.micrometres).toBeCloseTo(355.6, 9);
  });

  it.each(['12', 'thick', '12 cm', '-3 mm', '1 2 mm', '14.', '14 pt of', '14 ptss', ''])(
    '%j is not one, and the remedy says how to write it',
    (text) => {
      const read = readCaliper(text);
      expect(read.ok ? undefined : read.fault).toMatchObject({
        code: 'length-unreadable',
        message: `"${text}" is not a caliper.`,
        remedy: expect.stringContaining('a pt of caliper is a thousandth of an inch'),
      });
    },
  );

  it('is refused where nothing so thick or so thin is printed', () => {
    expect(readCaliper('10 mm').ok).toBe(true);
    expect(readCaliper('10.1 mm').ok).toBe(false);
    const none = readCaliper('0 mm');
    expect(none.ok ? '' : none.fault.message).toBe(
      '"0 mm" is not the thickness of a paper that is printed here.',
    );
  });
});
