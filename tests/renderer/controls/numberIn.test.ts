// Numbers as people type them.
import { expect, it } from 'vitest';
import { numberIn } from '../../../renderer/controls/numberIn.ts';

it('a number is read with a point or a comma, and with either minus', () => {
  expect(['12', ' 0.09 ', '0,125', ',5', '-3', '−3'].map(numberIn)).toEqual([12, 0.09, 0.125, 0.5, -3, -3]);
});

it('1,000 may be one or a thousand, so it is not guessed at', () => {
  expect(numberIn('1,000')).toBe('1,000');
  expect(numberIn('1,00')).toBe(1);
  expect(numberIn('1000')).toBe(1000);
});

it('what is no number stays as it was typed', () => {
  expect(['', 'ten', '0x10', '1e3', 'Infinity', '3 ml'].map(numberIn)).toEqual([
    '',
    'ten',
    '0x10',
    '1e3',
    'Infinity',
    '3 ml',
  ]);
});
