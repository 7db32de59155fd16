import { expect, it } from 'vitest';
import { nudgeStep } from '../../../shared/bench/nudge.ts';

it('nudges by a hundredth of an inch, a quarter of a millimetre or a point, and ten times that when large', () => {
  expect(nudgeStep('in', false)).toBeCloseTo(0.72, 12);
  expect(nudgeStep('mm', false)).toBeCloseTo((0.25 * 72) / 25.4, 12);
  expect(nudgeStep('pt', false)).toBe(1);
  expect(nudgeStep('pt', true)).toBe(10);
});
