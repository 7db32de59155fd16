import { expect, it } from 'vitest';
import { registerMargins } from '../../../shared/layout/registerMargins.ts';

const sheet = { w: 100, h: 200 };
const trims = [
  { x: 10, y: 20, w: 30, h: 40 },
  { x: 50, y: 90, w: 35, h: 40 },
];

it('are measured from the left and the right edge when the sheet turns side to side', () => {
  expect(registerMargins(trims, 'side-to-side', sheet)).toEqual({
    block: { x: 10, y: 20, w: 75, h: 110 },
    margins: [10, 15],
    equal: false,
  });
});

it('are measured from lead and tail when it turns end to end', () => {
  expect(registerMargins(trims, 'end-to-end', sheet)?.margins).toEqual([70, 20]);
});

it('are equal when they differ by no more than can be cut', () => {
  const equal = (x: number) => registerMargins([{ x, y: 0, w: 50, h: 5 }], 'side-to-side', sheet)?.equal;
  expect(equal(25)).toBe(true);
  expect(equal(25.004)).toBe(true);
  expect(equal(25.006)).toBe(false);
});

it('do not exist on an empty sheet', () => {
  expect(registerMargins([], 'side-to-side', sheet)).toBeUndefined();
});
