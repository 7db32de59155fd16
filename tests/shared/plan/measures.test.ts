// Lengths as the scale of a cutter shows them, and paper in metres.
import { describe, expect, it } from 'vitest';
import { metres, roundedDown, roundedUp, squareMetres } from '../../../shared/plan/measures.ts';
import { POINTS_PER } from '../../../shared/units/length.ts';

const mm = (length: number) => length * POINTS_PER.mm;
const inches = (length: number) => length * 72;

describe('a length that a cutter is set to', () => {
  it.each([
    ['a third of 640 mm', mm(640 / 3), 'mm', 213.3, 213.4], // 213.333
    ['a third of 40 in', inches(40 / 3), 'in', 13.33, 13.34], // 13.3333
    ['a seventh of 26 in', inches(26 / 7), 'in', 3.71, 3.72], // 3.7142
    ['a third of 1000 pt', 1000 / 3, 'pt', 333, 334], // 333.33
  ] as const)(
    'is, for %s, one that its scale shows: no longer, or no shorter',
    (_what, pt, unit, down, up) => {
      expect(roundedDown(pt, unit)).toMatchObject({ amount: down, unit });
      expect(roundedUp(pt, unit)).toMatchObject({ amount: up, unit });
    },
  );

  it('is itself where the scale shows it, whatever the conversion to points adds or takes', () => {
    // 0.1 to 900.0 mm, every tenth; 0.01 to 40.00 in, every hundredth.
    for (let tenths = 1; tenths <= 9000; tenths++) {
      expect(roundedDown(mm(tenths / 10), 'mm').amount).toBe(tenths / 10);
      expect(roundedUp(mm(tenths / 10), 'mm').amount).toBe(tenths / 10);
    }
    for (let hundredths = 1; hundredths <= 4000; hundredths++) {
      expect(roundedDown(inches(hundredths / 100), 'in').amount).toBe(hundredths / 100);
      expect(roundedUp(inches(hundredths / 100), 'in').amount).toBe(hundredths / 100);
    }
  });
});

it('an A0 sheet is a square metre but for what its whole millimetres leave out', () => {
  // ISO 216, from memory: A0 is 841 x 1189 mm, 0.999949 m2.
  expect(squareMetres({ w: mm(841), h: mm(1189) })).toBeCloseTo(0.999949, 9);
  expect(metres(mm(1189))).toBeCloseTo(1.189, 12);
});
