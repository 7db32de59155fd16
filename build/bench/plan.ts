// The plan's benchmark: how long it takes to lay a job out in every way, to price all of it, and to price every quantity.
import { SUPPER_BRIEF, TABLE_BRIEF } from '../../electron/demo/briefs.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import { startingLibrary } from '../../shared/library/startingLibrary.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { costCurves } from '../../shared/plan/costCurve.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';

const [invitation] = SUPPER_BRIEF.pieces;
const CASES = [
  ['cards of 5 x 7 in', SUPPER_BRIEF],
  ['cards of 3.5 x 2 in', { ...SUPPER_BRIEF, pieces: [{ ...invitation, trim: [3.5, 2], quantity: 500 }] }],
  ['menus and place tags', TABLE_BRIEF],
] as const;

/** Quantities that are priced one by one. */
const QUANTITIES = { from: 1, to: 1000 } as const;

/** Prints the median time of each step for each job, with the library to begin with. */
export function benchPlan(): void {
  const library = startingLibrary();
  const coverage = () => 1.2;
  console.log(
    `Plan: job | candidates | laid out | priced | ${QUANTITIES.to} quantities priced for every printer (medians of 5)`,
  );
  for (const [name, written] of CASES) {
    const brief = readBrief(written);
    if (!brief.ok) throw new Error(brief.fault.message);
    const plan = layOutCandidates(brief.value, library);
    const times = [
      medianTime(() => layOutCandidates(brief.value, library)),
      medianTime(() => costCandidates(plan, library, coverage)),
      medianTime(() => costCurves(plan, library, coverage, QUANTITIES)),
    ];
    const said = times.map((time) => `${time.toFixed(0)} ms`).join(' | ');
    console.log(`${name} | ${plan.candidates.length} | ${said}`);
  }
}

function medianTime(work: () => void): number {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return times.toSorted((a, b) => a - b)[2] ?? 0;
}
