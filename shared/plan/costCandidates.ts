// What every candidate costs, how long it takes and how much paper it wastes.
import type { Brief } from '../job/brief.ts';
import { trimOf } from '../job/job.ts';
import { countSheets } from '../layout/count.ts';
import type { Library } from '../library/library.ts';
import type { Coverage, LaidCandidate, PlanArea, PlanCandidate } from './candidate.ts';
import type { LaidPlan } from './layOutCandidates.ts';
import { squareMetres } from './measures.ts';
import { areaBought } from './paperBought.ts';
import { type PricedRun, type PriceTerms, runPricer } from './priceRun.ts';
import { rank, unbeaten } from './rank.ts';
import { piecesWanted, qualityOf, quantitiesFor, sheetsFor, type WhatIf } from './whatIf.ts';

/**
 * The candidates with their prices, the cheapest first. `library` gives the rates; printers and papers are those that
 * the plan was laid out with. Layouts are not touched, so that this answers at once.
 */
export function costCandidates(
  plan: LaidPlan,
  library: Library,
  coverage: Coverage,
  whatIf: WhatIf = {},
): readonly PlanCandidate[] {
  const terms: PriceTerms = { brief: plan.brief, library, coverage, whatIf };
  const pieces = whatIf.pieces ?? piecesWanted(plan.brief);
  const wanted = quantitiesFor(plan.brief, pieces);
  const costed = plan.candidates.map((candidate) => costOne(candidate, terms, wanted));
  const best = unbeaten(costed);
  return rank(
    costed.map((candidate) => ({ ...candidate, unbeaten: best.has(candidate.id) })),
    'cost',
  );
}

function costOne(
  candidate: LaidCandidate,
  terms: PriceTerms,
  wanted: readonly number[],
): Omit<PlanCandidate, 'unbeaten'> {
  const { brief, whatIf } = terms;
  const needed = sheetsFor(wanted, candidate.perSheet);
  const run = runPricer(candidate, terms)(needed);
  const { oversBy, overs, sheets, makeReady, bought, time, ink, cost, spread } = run;
  const pieces = wanted.reduce((sum, quantity) => sum + quantity, 0);
  const designs = brief.pieces.map(({ name }, i) => ({
    piece: name,
    wanted: wanted[i] as number,
    perSheet: candidate.perSheet[i] as number,
  }));
  const { yields } = countSheets(designs, oversBy);
  return {
    ...candidate,
    quality: qualityOf(candidate.printer, whatIf).name,
    count: { needed, overs, sheets, yields, oversBy, makeReady, pieces, bought },
    area: areaOf(candidate, run, brief, wanted),
    time,
    ink,
    cost,
    spread,
    perPiece: cost.total / pieces,
  };
}

function areaOf(
  { source, size, perSheet }: LaidCandidate,
  { sheets, bought }: PricedRun,
  brief: Brief,
  wanted: readonly number[],
): PlanArea {
  const trims = (counts: readonly number[]) =>
    brief.pieces.reduce((sum, piece, i) => sum + (counts[i] as number) * squareMetres(trimOf(piece)), 0);
  const inAll = bought * areaBought(source.form);
  const printed = sheets * squareMetres(size);
  const onSheets = sheets * trims(perSheet);
  const pieces = trims(wanted);
  return {
    bought: inAll,
    pieces,
    waste: inAll - pieces,
    offcuts: inAll - printed,
    aroundPieces: printed - onSheets,
    spare: onSheets - pieces,
  };
}
