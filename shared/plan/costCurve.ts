// What a job costs on each printer for every quantity.
import type { Library } from '../library/library.ts';
import type { Coverage, LaidCandidate } from './candidate.ts';
import type { LaidPlan } from './layOutCandidates.ts';
import { type PriceTerms, runPricer } from './priceRun.ts';
import { quantitiesFor, sheetsFor, type WhatIf } from './whatIf.ts';

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
 * One curve for each printer that has a candidate in the plan, in the order of the library. To compare on one paper
 * only, leave the other candidates out of the plan. Every quantity is priced by itself, so
 * the steps of whole sheets, whole parent sheets and whole piles are all there.
 */
export function costCurves(
  plan: LaidPlan,
  library: Library,
  coverage: Coverage,
  quantities: Quantities,
  whatIf: WhatIf = {},
): readonly CostCurve[] {
  const wanted = Array.from({ length: quantities.to - quantities.from + 1 }, (_, i) =>
    quantitiesFor(plan.brief, quantities.from + i),
  );
  const terms = { brief: plan.brief, library, coverage, whatIf };
  const printers = new Set(plan.candidates.map(({ printer }) => printer.name));
  return [...printers].map((printer) => {
    const own = plan.candidates.filter((candidate) => candidate.printer.name === printer);
    return { printer, quantities, ...leastOf(unlike(own), wanted, terms) };
  });
}

/** The least cost of any of the candidates for each of the orders, and whose it is. */
function leastOf(
  candidates: readonly LaidCandidate[],
  wanted: readonly (readonly number[])[],
  terms: PriceTerms,
): Pick<CostCurve, 'totals' | 'best'> {
  const totals = wanted.map(() => Number.POSITIVE_INFINITY);
  const best = wanted.map(() => '');
  for (const candidate of candidates) {
    const priceOf = runPricer(candidate, terms);
    let needed = 0;
    let total = 0;
    wanted.forEach((each, i) => {
      const now = sheetsFor(each, candidate.perSheet);
      if (now !== needed) total = priceOf(now).cost.total;
      needed = now;
      if (total >= (totals[i] as number)) return;
      totals[i] = total;
      best[i] = candidate.id;
    });
  }
  return { totals, best };
}

/** One of all candidates that cost the same whatever is wanted, such as the two ways to turn a sheet by hand. */
function unlike(candidates: readonly LaidCandidate[]): readonly LaidCandidate[] {
  const found = new Map<string, LaidCandidate>();
  for (const one of candidates) {
    const { feed, paper, source, size, printed, perSheet, cuts, passes, setUps } = one;
    const from = source.is === 'parent' ? [source.out, source.cuts] : [];
    const faces = printed.map(({ piece, face, area }) => [piece, face, area.toFixed(9)]);
    const key = JSON.stringify([
      feed.name,
      paper.name,
      paper.forms.indexOf(source.form),
      from,
      (size.w * size.h).toFixed(3),
      faces,
      perSheet,
      cuts,
      passes,
      setUps,
    ]);
    if (!found.has(key)) found.set(key, one);
  }
  return [...found.values()];
}
