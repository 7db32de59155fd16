// What a run costs: its sheets, its time, its ink and its paper, for any number of good sheets.
import { type InkAmount, predictInk } from '../ink/inkModel.ts';
import type { Brief } from '../job/brief.ts';
import { type Overs, oversFor } from '../layout/count.ts';
import type { Library } from '../library/library.ts';
import { POINTS_PER, points } from '../units/length.ts';
import type { CostParts, Coverage, LaidCandidate, PlanTime } from './candidate.ts';
import { squareMetres } from './measures.ts';
import { oversByLength } from './oversFor.ts';
import { boughtFor, pricePer } from './paperBought.ts';
import { inkPriceOf, qualityOf, type WhatIf } from './whatIf.ts';

/** A run of so many good sheets. */
export interface PricedRun {
  readonly needed: number;
  readonly oversBy: Overs;
  readonly overs: number;
  /** Sheets spoiled with setting up. */
  readonly makeReady: number;
  /** To be loaded: needed, overs and those for setting up. */
  readonly sheets: number;
  readonly bought: number;
  readonly time: PlanTime;
  readonly ink: InkAmount;
  readonly cost: CostParts;
  readonly spread: { readonly low: number; readonly high: number };
}

/** What the price of any run depends on besides its candidate. */
export interface PriceTerms {
  readonly brief: Brief;
  readonly library: Library;
  readonly coverage: Coverage;
  readonly whatIf: WhatIf;
}

/** Prices runs of one candidate: everything that does not depend on their length is worked out once. */
export function runPricer(
  candidate: LaidCandidate,
  { brief, library, coverage, whatIf }: PriceTerms,
): (needed: number) => PricedRun {
  const { printer, feed, paper, source, sides, passes, setUps } = candidate;
  const { rates } = library;
  const perSecond = (whatIf.labourPerHour ?? rates.labourPerHour) / 3600;
  const quality = qualityOf(printer, whatIf);
  const secondsPerSide = quality.secondsBase + quality.secondsPerSquareMetre * squareMetres(candidate.size);
  const handSeconds = passes * (feed.hand.load + feed.hand.align) + (passes - 1) * feed.hand.turn;
  const makeReadySheets = setUps * printer.makeReady.sheets;
  const makeReadySeconds = setUps * printer.makeReady.minutes * 60;
  const paperPrice = pricePer(source.form, paper.weight.grammage);
  const inkPrice = inkPriceOf(printer, whatIf);
  const printed = sumOf(candidate.printed, ({ area }) => area);
  const inked = sumOf(candidate.printed, ({ area, piece, face }) => area * coverage(piece, face));
  const cuttingSeconds = cuttingTime(candidate, library);

  return (needed) => {
    const oversBy = oversByLength(needed, rates.overs, brief.overs);
    const overs = oversFor(needed, oversBy);
    const sheets = needed + overs + makeReadySheets;
    const bought = boughtFor(source, sheets);
    const ink = predictInk(printer.ink.model, {
      area: sheets * printed,
      coverage: printed === 0 ? 0 : inked / printed,
    });
    const time = timeOf({
      printing: sheets * sides * secondsPerSide,
      handling: sheets * handSeconds,
      makeReady: makeReadySeconds,
      cutting: cuttingSeconds(needed + overs, sheets, bought),
      attended: feed.attended,
    });
    const parts = {
      paper: toCents(bought * paperPrice),
      ink: toCents(ink.ml * inkPrice),
      labour: toCents((time.attended - time.makeReady - time.cutting) * perSecond),
      makeReady: toCents(time.makeReady * perSecond),
      trimming: toCents(time.cutting * perSecond),
      wear: toCents(sheets * sides * printer.wearPerSide),
    };
    const butInk = parts.paper + parts.labour + parts.makeReady + parts.trimming + parts.wear;
    const withInk = (ml: number) => (butInk + toCents(ml * inkPrice)) / 100;
    return {
      needed,
      oversBy,
      overs,
      makeReady: makeReadySheets,
      sheets,
      bought,
      time,
      ink,
      cost: {
        paper: parts.paper / 100,
        ink: parts.ink / 100,
        labour: parts.labour / 100,
        makeReady: parts.makeReady / 100,
        trimming: parts.trimming / 100,
        wear: parts.wear / 100,
        total: (butInk + parts.ink) / 100,
      },
      spread: { low: withInk(ink.low), high: withInk(ink.high) },
    };
  };
}

/** Takes what float64 took from a whole number of sheets for nothing. */
const ROUNDING_NOISE = 1e-6;

function toCents(amount: number): number {
  return Math.round(amount * 100);
}

function sumOf<T>(all: readonly T[], of: (one: T) => number): number {
  return all.reduce((sum, one) => sum + of(one), 0);
}

/** Cutting the paper down before it is printed, and trimming all but the sheets that were spoiled with setting up. */
function cuttingTime(
  { source, paper, cuts }: LaidCandidate,
  { rates }: Library,
): (trimmed: number, sheets: number, bought: number) => number {
  const { secondsPerCut, secondsPerPile, tallestPile } = rates.cutting;
  const high = micrometres(points(tallestPile)) / paper.caliper.micrometres;
  const perPile = Math.max(1, Math.floor(high + ROUNDING_NOISE));
  const pilesOf = (sheets: number) => Math.ceil(sheets / perPile);
  const through = (piles: number, each: number) =>
    each === 0 ? 0 : piles * (secondsPerPile + each * secondsPerCut);
  return (trimmed, sheets, bought) => {
    const trimming = through(pilesOf(trimmed), cuts);
    switch (source.is) {
      case 'sheet':
        return trimming;
      case 'parent':
        return trimming + through(pilesOf(bought), source.cuts);
      case 'roll':
        return trimming + sheets * secondsPerCut;
    }
  };
}

function micrometres(pt: number): number {
  return (pt / POINTS_PER.mm) * 1000;
}

function timeOf(
  parts: Pick<PlanTime, 'printing' | 'handling' | 'makeReady' | 'cutting'> & { attended: boolean },
): PlanTime {
  const { printing, handling, makeReady, cutting } = parts;
  const unattended = parts.attended ? 0 : printing;
  const attended = handling + makeReady + cutting + (parts.attended ? printing : 0);
  return { total: attended + unattended, printing, handling, makeReady, cutting, attended, unattended };
}
