// Money, time, numbers and shares as people read them.
import { describe, expect, it } from 'vitest';
import {
  showMoney,
  showNumber,
  showPercent,
  showShortNumber,
  showSignificant,
  showTime,
} from '../../../shared/units/show.ts';

describe('money', () => {
  it.each([
    [12.4, '€ 12.40'],
    [0, '€ 0.00'],
    [999.994, '€ 999.99'],
    [1204.5, '€ 1,204.50'],
    [1234567.891, '€ 1,234,567.89'],
    [-3, '−€ 3.00'],
    [-0.001, '€ 0.00'],
  ])('%d is read as %s', (amount, read) => {
    expect(showMoney(amount, '€')).toBe(read);
  });
});

describe('time', () => {
  it.each([
    [0, '0 s'],
    [59.4, '59 s'],
    [59.6, '1 min'],
    [60, '1 min'],
    [61, '2 min'],
    [3540, '59 min'],
    [3541, '1 h 00 min'],
    [3900, '1 h 05 min'],
    [36_000, '10 h 00 min'],
  ])('%d seconds are read as %s', (seconds, read) => {
    expect(showTime(seconds)).toBe(read);
  });
});

describe('numbers', () => {
  it('keep their decimals where they stand under each other, and are short in a sentence', () => {
    expect(showNumber(2.5, 2)).toBe('2.50');
    expect(showShortNumber(2.5, 2)).toBe('2.5');
    expect(showShortNumber(2, 2)).toBe('2');
    expect(showSignificant(2536.4, 3)).toBe('2540');
  });

  it('are read in percent where they are shares', () => {
    expect(showPercent(0.0142, 1)).toBe('1.4 %');
    expect(showPercent(1, 0)).toBe('100 %');
  });
});
