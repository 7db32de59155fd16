// Which row of the plan the job is printed by already.
import { describe, expect, it } from 'vitest';
import type { Brief } from '../../../shared/job/brief.ts';
import type { JobPlan } from '../../../shared/job/jobPlan.ts';
import { withPlan } from '../../../shared/job/takePlan.ts';
import { isTaken } from '../../../shared/plan/isTaken.ts';
import { takenPlanOf } from '../../../shared/plan/takeCandidate.ts';
import { supperBrief } from '../../kit/briefs.ts';
import { card, handPrinter, trayPrinter } from '../../kit/libraries.ts';
import { briefOf, only, planned } from '../../kit/plans.ts';

const brief = briefOf(supperBrief);

/** Every candidate of two printers, two papers, a sheet, a parent sheet and a roll. */
const manyWays = () => {
  const price = { amount: 1, per: 'sheet' };
  const forms = [
    ...card.forms,
    { is: 'parent', size: '22 x 34 in', grain: 'long', price, cutTo: ['11 x 17 in'] },
    { is: 'parent', size: '26 x 40 in', grain: 'long', price, cutTo: ['11 x 17 in'] },
    { is: 'roll', width: '11 in', price: { amount: 2, per: 'metre' }, cutTo: ['17 in'] },
  ];
  return planned(supperBrief, {
    printers: [trayPrinter, handPrinter],
    papers: [
      { ...card, forms },
      { ...card, name: 'Board' },
    ],
  });
};

/** The job printed by the work-and-turn of four up on a sheet as it is sold, and that candidate. */
const taken = () => {
  const candidate = only(
    planned(supperBrief),
    ({ work, lies }) => work.style === 'work-and-turn' && lies === 'either',
  );
  return { candidate, job: withPlan(brief, takenPlanOf(candidate)) };
};
const withPlanOf = (job: Brief, changes: Partial<JobPlan>): Brief => ({
  ...job,
  plan: { ...(job.plan as JobPlan), ...changes },
});

describe('the row by which the job is printed', () => {
  it('is the one that was chosen and no other, whichever was chosen', () => {
    const candidates = manyWays();
    expect(candidates.length).toBeGreaterThan(20);
    for (const chosen of candidates) {
      const job = withPlan(brief, takenPlanOf(chosen));
      expect(candidates.filter((one) => isTaken(one, job)).map(({ id }) => id)).toEqual([chosen.id]);
    }
  });

  it('is none as long as none was chosen', () => {
    expect(planned(supperBrief).filter((one) => isTaken(one, brief))).toEqual([]);
  });

  it.each([
    ['printer', { printer: 'Hand printer' }],
    ['feed', { feed: 'Hand' }],
    ['paper', { paper: 'Board' }],
    ['way to lie', { lies: 'upright' }],
    ['parent sheet', { cutFrom: '22 × 34 in, 4 out' }],
  ] as const)('is not one of another %s', (_what, changes) => {
    const { candidate, job } = taken();
    expect(isTaken(candidate, job)).toBe(true);
    expect(isTaken(candidate, withPlanOf(job, changes))).toBe(false);
  });

  it('is none any more once the way of working or one edge of the sheet was changed by hand', () => {
    const { candidate, job } = taken();
    expect(isTaken(candidate, { ...job, work: { style: 'work-and-tumble' } })).toBe(false);
    const onSheet = (size: string) => {
      const { sheet } = briefOf({ ...supperBrief, sheet: { ...supperBrief.sheet, size } });
      return isTaken(candidate, { ...job, sheet: { ...job.sheet, size: sheet.size } });
    };
    expect(onSheet('11 x 17 in')).toBe(true);
    expect(onSheet('279.4 x 431.8 mm')).toBe(true); // 11 x 25.4 and 17 x 25.4: the same sheet, typed otherwise
    expect(onSheet('11.5 x 17 in')).toBe(false);
    expect(onSheet('11 x 17.5 in')).toBe(false);
  });
});
