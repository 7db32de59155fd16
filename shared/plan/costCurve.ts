// What a job costs on each printer for every quantity, and where one printer becomes cheaper than another.
import type { Library } from '../library/library.ts';
import type { Coverage, LaidCandidate } from './candidate.ts';
import type { LaidPlan } from './layOutCandidates.ts';
import { perSheetOf, sheetsFor } from './perSheet.ts';
import { runPricer } from './priceRun.ts';
import { quantitiesFor, type WhatIf } from './whatIf.ts';

/** Quantities, in pieces of all designs together; both ends included, whole numbers from 1. */
export interface Quantities {
  readonly from: number;
  readonly to: number;
}

/** The cost of the best candidate of one printer for every quantity. */
export interface CostCurve {
  readonly printer: string;
  readonly quantities: Quantities;
  /** In the library's currency, for the whole job, by quantity less `quantities.from`. */
  readonly totals: readonly number[];
  /** The id of the candidate that costs so little, by quantity less `quantities.from`. */
  readonly best: readonly string[];
}

/**
 * One curve for each printer that can print the job, in the order of the library. Every quantity is priced by itself, so
 * the steps of whole sheets, whole parent sheets and whole piles are all there.
 */
export function costCurves(
  plan: LaidPlan,
  library: Library,
  coverage: Coverage,
  quantities: Quantities,
  whatIf: WhatIf = {},
): readonly CostCurve[] {
  const count = quantities.to - quantities.from + 1;
  const wanted = Array.from({ length: count }, (_, i) => quantitiesFor(plan.brief, quantities.from + i));
  const terms = { brief: plan.brief, library, coverage, whatIf };
  const printers = [...new Set(plan.candidates.map(({ printer }) => printer.name))];
  return printers.map((printer) => {
    const totals = new Array<number>(count).fill(Number.POSITIVE_INFINITY);
    const best = new Array<string>(count).fill('');
    for (const candidate of plan.candidates.filter((one) => one.printer.name === printer)) {
      lower(candidate, totals, best);
    }
    return { printer, quantities, totals, best };
  });

  function lower(candidate: LaidCandidate, totals: number[], best: string[]): void {
    const perSheet = perSheetOf(candidate, plan.brief);
    const priceOf = runPricer(candidate, terms);
    let needed = 0;
    let total = 0;
    wanted.forEach((each, i) => {
      const now = sheetsFor(each, perSheet);
      if (now !== needed) total = priceOf(now).cost.total;
      needed = now;
      if (total < (totals[i] as number)) {
        totals[i] = total;
        best[i] = candidate.id;
      }
    });
  }
}

/** A quantity from which on another printer is the cheaper one. */
export interface BreakEven {
  /** In pieces of all designs together. */
  readonly quantity: number;
  readonly cheaperBefore: string;
  readonly cheaperFrom: string;
}

/**
 * Every quantity at which the cheaper one of two printers changes. Costs go up in steps, so two curves may cross more
 * than once. Where both cost the same, the one that was cheaper before still counts as the cheaper one.
 */
export function breakEvens(one: CostCurve, other: CostCurve): readonly BreakEven[] {
  const found: BreakEven[] = [];
  let cheaper: CostCurve | undefined;
  one.totals.forEach((total, i) => {
    const difference = total - (other.totals[i] as number);
    const now = difference < 0 ? one : difference > 0 ? other : cheaper;
    if (cheaper !== undefined && now !== undefined && now !== cheaper) {
      const quantity = one.quantities.from + i;
      found.push({ quantity, cheaperBefore: cheaper.printer, cheaperFrom: now.printer });
    }
    cheaper = now;
  });
  return found;
}
