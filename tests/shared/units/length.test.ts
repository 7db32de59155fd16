import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthOf, points, UNITS } from '../../../shared/units/length.ts';
import { readLength, readSize } from '../../../shared/units/read.ts';
import { showLength, showSize } from '../../../shared/units/show.ts';
import { sizes } from '../../reference/sizes.json' with { type: 'json' };

const pt = (text: string) => {
  const read = readLength(text);
  if (!read.ok) throw new Error(read.fault.message);
  return points(read.value);
};

describe('reading a length', () => {
  it.each([
    ['0.25 in', 18],
    ['1/8in', 9],
    ['1/8"', 9],
    ['1 1/8 in', 81],
    ['1-1/8 inches', 81],
    ['.5 inch', 36],
    ['3 mm', (3 * 72) / 25.4],
    ['3mm', (3 * 72) / 25.4],
    ['3,5 mm', (3.5 * 72) / 25.4],
    ['25.4 millimetres', 72],
    ['9pt', 9],
    ['1 point', 1],
    ['-3 mm', (-3 * 72) / 25.4],
    ['−1/8 in', -9],
    ['  2  IN ', 144],
    ['8.5″', 612],
  ])('reads %s', (text, expected) => {
    expect(pt(text)).toBeCloseTo(expected, 10);
  });

  it.each([
    '',
    'in',
    '3 cm',
    '1/0 in',
    '1/2/3 in',
    '1,000 mm',
    '1.2.3 mm',
    '1e3 mm',
    '3 mm 4',
    'NaN in',
    '0x10 pt',
    '5 x 7 in',
    '1 2 mm',
    '3 constructor',
    '-',
    '1 /8/ in',
  ])('refuses %j', (text) => {
    const read = readLength(text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.fault.code).toBe('length-unreadable');
  });

  it('says what is wrong and how to write it', () => {
    const remedy = 'Write it like 0.25 in, 1/8 in, 3 mm or 9 pt.';
    expect(readLength('wide')).toEqual({
      ok: false,
      fault: { code: 'length-unreadable', message: '"wide" is not a length.', remedy },
    });
    expect(readLength('3 cm')).toEqual({
      ok: false,
      fault: {
        code: 'length-unreadable',
        message: '"3 cm" is in "cm", which is not a unit this program reads.',
        remedy,
      },
    });
    expect(readLength('3')).toEqual({
      ok: false,
      fault: {
        code: 'length-unreadable',
        message: '"3" does not say inches, millimetres or points.',
        remedy,
      },
    });
  });

  it('takes the unit of the brief for a bare number, and keeps it', () => {
    expect(readLength('1/8', 'in')).toEqual({
      ok: true,
      value: { amount: 0.125, unit: 'in', typed: '1/8 in' },
    });
    expect(readLength(' 3 mm ', 'in')).toEqual({ ok: true, value: { amount: 3, unit: 'mm', typed: '3 mm' } });
  });

  it('keeps what was typed, so that it reads the same again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), fc.constantFrom(...UNITS), (thousandths, unit) => {
        const length = lengthOf(thousandths / 1000, unit);
        expect(readLength(length.typed)).toEqual({ ok: true, value: length });
      }),
    );
  });
});

describe('reading a size', () => {
  it.each(['5x7in', '5 x 7 in', '5 × 7"', '5in x 7in', '5 X 7 inches', '127 mm x 7 in'])(
    'reads %s',
    (text) => {
      const size = readSize(text);
      if (!size.ok) throw new Error(size.fault.message);
      expect(points(size.value[0])).toBeCloseTo(360, 9);
      expect(points(size.value[1])).toBeCloseTo(504, 9);
    },
  );

  it.each(['5', '5x', 'x7', '5x7', '5x7x9 in', '5 by 7 in'])('refuses %j', (text) => {
    const size = readSize(text);
    expect(size.ok).toBe(false);
    if (!size.ok) expect(size.fault.code).toBe('length-unreadable');
  });

  it('says how a size is written', () => {
    expect(readSize('big')).toEqual({
      ok: false,
      fault: {
        code: 'length-unreadable',
        message: '"big" is not a width and a height.',
        remedy: 'Write it like 5 x 7 in or 148 x 105 mm.',
      },
    });
  });

  it('agrees with every standard size in inches and millimetres', () => {
    // ISO 216, ISO 217, ANSI/ASME Y14.1 and trade sizes; the sources stand beside each in the table.
    expect(sizes).toHaveLength(50);
    for (const size of sizes) {
      const read = readSize(`${size.w} x ${size.h} ${size.unit}`);
      if (!read.ok) throw new Error(read.fault.message);
      expect(points(read.value[0])).toBeCloseTo((size.w_mm / 25.4) * 72, 0);
      expect(points(read.value[1])).toBeCloseTo((size.h_mm / 25.4) * 72, 0);
    }
  });
});

describe('showing lengths', () => {
  it("is short and in the person's own unit", () => {
    expect(showLength(9, 'in')).toBe('0.125 in');
    expect(showLength(9, 'mm')).toBe('3.18 mm');
    expect(showLength(9.004, 'pt')).toBe('9 pt');
    expect(showLength(-0.0001, 'in')).toBe('0 in');
    expect(showSize({ w: 360, h: 504 }, 'in')).toBe('5 × 7 in');
  });
});
