// Money and time as they are read in a plan.
import { describe, expect, it } from 'vitest';
import { showMoney } from '../../../shared/plan/showMoney.ts';
import { showTime } from '../../../shared/plan/showTime.ts';

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
