// Lengths as they are read from the scale of a back gauge.
import { describe, expect, it } from 'vitest';
import { showOnScale } from '../../../shared/cutting/showOnScale.ts';

describe('a distance of the back gauge', () => {
  it.each([
    [10.375, '10 3/8 in'],
    [5, '5 in'],
    [0.5, '1/2 in'],
    [7.0625, '7 1/16 in'],
    [3 + 63 / 64, '3 63/64 in'],
    [3.9996, '4 in'],
    [3.9994, '3.999 in'],
    [1 / 64, '1/64 in'],
    [2.4, '2.4 in'],
    [2.3333, '2.333 in'],
    [2.3759, '2.376 in'],
    [2.3754, '2 3/8 in'],
  ])('of %f inches is read as %s', (inches, said) => {
    expect(showOnScale(inches * 72, 'in')).toBe(said);
  });

  it('is given in decimals in other units', () => {
    expect(showOnScale((263.5 * 72) / 25.4, 'mm')).toBe('263.5 mm');
    expect(showOnScale(36, 'pt')).toBe('36 pt');
  });
});
