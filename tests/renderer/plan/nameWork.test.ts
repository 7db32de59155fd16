import { expect, it } from 'vitest';
import { nameWork } from '../../../renderer/plan/nameWork.ts';

it('names ways of working with their turn, as people say them', () => {
  expect(nameWork({ style: 'simplex' })).toBe('One side only');
  expect(nameWork({ style: 'work-and-back', turn: 'end-to-end' })).toBe(
    'Work-and-back (sheetwise), turned end to end',
  );
  expect(nameWork({ style: 'work-and-turn' })).toBe('Work-and-turn, turned side to side');
});
