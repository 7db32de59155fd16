// The parts of a cost as they are shown.
import { expect, it } from 'vitest';
import { COST_PARTS } from '../../../shared/plan/costParts.ts';
import { supperBrief } from '../../kit/briefs.ts';
import { planned } from '../../kit/plans.ts';

it('what is shown of a cost is all of it: its parts add up to the total, to the cent', () => {
  for (const { cost } of planned(supperBrief)) {
    const cents = COST_PARTS.map(({ part }) => Math.round(cost[part] * 100));
    expect(cents.reduce((sum, one) => sum + one, 0)).toBe(Math.round(cost.total * 100));
  }
});

it('a cost is read from the paper to the wear, each part under its name', () => {
  expect(COST_PARTS.map(({ part, name }) => `${part}: ${name}`)).toEqual([
    'paper: Paper',
    'ink: Ink',
    'labour: Labour at the printer',
    'makeReady: Make-ready',
    'trimming: Trimming',
    'wear: Wear',
  ]);
});
