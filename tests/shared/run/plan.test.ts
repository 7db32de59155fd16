import { expect, it } from 'vitest';
import type { Work } from '../../../shared/geometry/work.ts';
import { planRun } from '../../../shared/run/plan.ts';
import { roundPlan } from '../../kit/plannedRuns.ts';
import { supperJob } from '../../renderer/kit/supperJob.ts';

const workedBy = (work: Work) => ({ ...supperJob, brief: { ...supperJob.brief, work } });

it('the plan of a run is what the job is when it begins', () => {
  expect(planRun(supperJob)).toEqual({
    schema: 1,
    title: 'Harvest supper',
    work: { style: 'work-and-back', turn: 'side-to-side' },
    passes: 2,
    sides: 2,
    needed: 30,
    overs: { percent: 5, least: 3 },
    sheets: 33,
    designs: [{ piece: 'Supper', wanted: 120, perSheet: 4 }],
  });
});

it.each([
  ['one form in both passes', { style: 'work-and-turn' }, 2, 2],
  ['a printer that turns the sheet itself', { style: 'perfecting', turn: 'end-to-end' }, 1, 2],
  ['one side only', { style: 'simplex' }, 1, 1],
] as const)('%s: how often a sheet goes through and how many sides it prints', (_, work, passes, sides) => {
  expect(planRun(workedBy(work))).toMatchObject({ passes, sides });
});

it('pieces without backs need no second pass', () => {
  const { brief } = supperJob;
  const pieces = brief.pieces.map((p) => ({ ...p, back: undefined }));
  expect(planRun({ ...supperJob, brief: { ...brief, pieces } })).toMatchObject({ passes: 1, sides: 1 });
});

it('the plan of a run keeps what was reckoned with, and says nothing of it where nothing was', () => {
  expect(planRun(supperJob, roundPlan).planned).toEqual(roundPlan);
  expect(planRun(supperJob)).not.toHaveProperty('planned');
});
