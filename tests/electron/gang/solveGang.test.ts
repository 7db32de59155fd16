// Planning gang runs: published orders at their best known value (that of the magazine inserts computed by another method), and small ones at the best of all.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GangAnswer, solveGang } from '../../../electron/gang/solveGang.ts';
import { openSolver } from '../../../electron/gang/solveProgram.ts';
import { fillingsOf, fillingsProgram, readFillings } from '../../../shared/gang/fillingsProgram.ts';
import { type GangOrder, weighGang } from '../../../shared/gang/gang.ts';
import { lengthsProgram, readLengths, writeLengths } from '../../../shared/gang/lengthsProgram.ts';
import { readRuns, runsProgram } from '../../../shared/gang/runsProgram.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { cheapestByTrying, publishedGang } from '../../kit/gangOrders.ts';

/** Plans by a clock that stands still, so that a slow machine comes as far as a quick one. */
async function plan(order: GangOrder): Promise<GangAnswer> {
  const answer = await solveGang(order, { seconds: 20, now: () => 0 });
  if (!answer.ok) throw new Error(answer.fault.message);
  return answer.value;
}

describe('A planned gang run', () => {
  it.each([
    'I001',
    'I007',
    'catfood, 1 form',
    'catfood, 2 forms',
    'catfood, 3 forms',
    'magazine_inserts, 2 forms',
    'magazine_inserts, 3 forms',
  ])('costs as little as the best one known, and that is proven: %s', async (name) => {
    const { order, best } = publishedGang(name);
    const { plan: found, bound, gap } = await plan(order);
    expect(found.cost).toBeCloseTo(best, 6);
    expect(gap).toBe(0);
    expect(bound).toBeCloseTo(best, 4);
  });

  it('is the best of all for small orders', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.record({
          quantities: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 3 }),
          slots: fc.integer({ min: 1, max: 3 }),
          sheetCost: fc.constantFrom(1, 2),
          formCost: fc.constantFrom(0, 1, 3),
        }),
        async (order) => {
          const { plan: found, bound, gap } = await plan(order);
          const best = cheapestByTrying(order);
          expect(bound).toBeLessThanOrEqual(best + 1e-9);
          expect(gap).toBe(0);
          expect(found.cost).toBeCloseTo(best, 9);
        },
      ),
      drawnCases(30),
    );
  });

  it('of forty designs costs less than the best published plan after a million and a half exchanges', async () => {
    const { order, best } = publishedGang('I014');
    // The clock is looked at every 32 exchanges; here it stands still for so many looks, and then the time is over.
    const mostLooks = 1_600_000 / 32;
    let looks = 0;
    const now = () => (++looks <= mostLooks ? 0 : 1e9);
    const answer = await solveGang(order, { seconds: 10, now });
    if (!answer.ok) throw new Error(answer.fault.message);
    const { forms } = answer.value.plan;
    expect(weighGang(order, forms).cost).toBeLessThan(best);
  });

  it('tells of every better plan on the way, and stops in time with a gap that is stated', async () => {
    const { order, best } = publishedGang('I005');
    const told: number[] = [];
    const answer = await solveGang(order, { seconds: 0.5, onBetter: ({ plan: p }) => told.push(p.cost) });
    if (!answer.ok) throw new Error(answer.fault.message);
    expect(told).toEqual(told.toSorted((a, b) => b - a));
    expect(told.at(-1)).toBe(answer.value.plan.cost);
    expect(answer.value.gap).toBeGreaterThan(0);
    expect(answer.value.bound).toBeLessThanOrEqual(best);
    expect(answer.value.gap).toBeCloseTo(1 - answer.value.bound / answer.value.plan.cost, 9);
  });

  it('is refused where all forms together have too few places', async () => {
    const answer = await solveGang(
      { quantities: [5, 5, 5, 5, 5], slots: 2, sheetCost: 1, formCost: 1, mostForms: 2 },
      { seconds: 1 },
    );
    expect(answer.ok || answer.fault).toEqual({
      code: 'gang-impossible',
      message: '5 designs need 3 forms of 2 places at least; 2 are allowed.',
      remedy: 'Allow more forms, or take a larger sheet.',
    });
  });
});

describe('The time that planning is given', () => {
  /** A clock that goes on by a millisecond whenever it is looked at, and counts the looks past its end. */
  const clockOf = (seconds: number) => {
    let ms = 0;
    const looks = { late: 0 };
    const now = () => {
      ms += 1;
      if (ms > seconds * 1000) looks.late += 1;
      return ms;
    };
    return { looks, now };
  };
  /** What may be begun once the time is over: to say how it stands, not to search. */
  const FEW_LOOKS = 60;

  it.each([
    ['I005', 0.002],
    ['I005', 0.02],
    ['I005', 0.1],
    ['I005', 0.3],
    ['I014', 0.05],
    ['I014', 0.4],
    ['magazine_inserts, 3 forms', 0.01],
    ['magazine_inserts, 3 forms', 0.2],
  ])(
    'ends every step of %s when it is over, after %d s by the clock, with a whole plan',
    async (name, seconds) => {
      const { order, best } = publishedGang(name);
      const { looks, now } = clockOf(seconds);
      const answer = await solveGang(order, { seconds, now });
      if (!answer.ok) throw new Error(answer.fault.message);
      const { plan: found, bound, gap } = answer.value;
      expect(looks.late).toBeLessThan(FEW_LOOKS);
      order.quantities.forEach((wanted, design) => {
        const made = found.forms.reduce((all, form) => all + form.sheets * (form.copies[design] ?? 0), 0);
        expect(made).toBeGreaterThanOrEqual(wanted);
      });
      expect(found.cost).toBeGreaterThanOrEqual(best - 1e-6);
      expect(bound).toBeLessThanOrEqual(best + 1e-6);
      expect(gap).toBeCloseTo(1 - bound / found.cost, 9);
    },
  );
});

describe('The solver', () => {
  it('finds the best among all ways to fill a form', async () => {
    const solve = await openSolver();
    const { order, best } = publishedGang('I001');
    const fillings = fillingsOf(order, 15) ?? [];
    expect(fillings).toHaveLength(15);
    expect(fillingsOf(order, 14)).toBeUndefined();
    const solved = solve(fillingsProgram(order, fillings, { least: 1, most: 3 }, 2 * best), { seconds: 30 });
    expect(solved.proven).toBe(true);
    expect(solved.bound).toBeCloseTo(best, 1);
    expect(weighGang(order, readFillings(fillings, solved.values ?? [])).cost).toBeCloseTo(best, 1);
  });

  it('finds that nothing costs less than the best', async () => {
    const solve = await openSolver();
    const { order, best } = publishedGang('I001');
    const fillings = fillingsOf(order, 100) ?? [];
    const none = solve(fillingsProgram(order, fillings, { least: 1, most: 3 }, best - 1), { seconds: 30 });
    expect(none).toMatchObject({ values: undefined, proven: true });
  });

  it('rounds runs up to whole sheets as little as can be', async () => {
    const solve = await openSolver();
    const { order } = publishedGang('I001');
    const forms = [{ copies: [0, 1, 3] }, { copies: [2, 2, 0] }, { copies: [1, 0, 0] }];
    const { values = [] } = solve(runsProgram(order, forms), { seconds: 10 });
    // 16000 / 3 rounded up, and 4500 / 2.
    expect(readRuns(forms, values)).toEqual([
      { copies: [0, 1, 3], sheets: 5334 },
      { copies: [2, 2, 0], sheets: 2250 },
    ]);
  });

  it('chooses forms out of runs of given lengths, beginning with a plan', async () => {
    const solve = await openSolver();
    const { order, best } = publishedGang('I001');
    const lengths = [16000, 5334, 4500, 2875, 2250];
    const begun = [
      { copies: [0, 1, 3], sheets: 5334 },
      { copies: [2, 2, 0], sheets: 2250 },
    ];
    const start = writeLengths(order, lengths, begun);
    const { values = [] } = solve(lengthsProgram(order, lengths), { seconds: 10, start });
    expect(weighGang(order, readLengths(order, lengths, values)).cost).toBeCloseTo(best, 6);
    expect(weighGang(order, readLengths(order, lengths, start)).cost).toBeCloseTo(139280.96, 6);
  });
});
