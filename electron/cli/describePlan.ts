// A plan as other programs read it, and as a person reads it in a terminal.
import { turnOf } from '../../shared/geometry/work.ts';
import type { Brief } from '../../shared/job/brief.ts';
import type { PlanCandidate, Refused } from '../../shared/plan/candidate.ts';
import { cutFromInWords } from '../../shared/plan/takeCandidate.ts';
import { showMoney, showNumber, showSize, showTime } from '../../shared/units/show.ts';

/** How many candidates and refusals are told in words; all of them are in the JSON. */
const MAX_ROWS = 12;

/** Lengths in pt, areas in m2, times in s, money in the library's currency. */
export function describeCandidate(one: PlanCandidate): object {
  const { source, count, time, area, cost, ink } = one;
  return {
    id: one.id,
    printer: one.printer.name,
    feed: one.feed.name,
    quality: one.quality,
    paper: one.paper.name,
    sheet: { width: one.size.w, height: one.size.h, lead: one.lead, grain: one.grain },
    source: {
      is: source.is,
      ...(source.is === 'parent' ? { out: source.out } : {}),
      ...(source.is === 'roll' ? { metres: source.metres } : {}),
    },
    work: one.work.style,
    turn: turnOf(one.work) ?? null,
    lies: one.lies,
    up: one.up,
    perSheet: one.perSheet,
    passes: one.passes,
    setUps: one.setUps,
    cuts: one.cuts,
    count: {
      needed: count.needed,
      overs: count.overs,
      makeReady: count.makeReady,
      sheets: count.sheets,
      bought: count.bought,
      yields: count.yields,
    },
    area,
    time,
    ink,
    cost,
    spread: one.spread,
    perPiece: one.perPiece,
    unbeaten: one.unbeaten,
    notices: one.notices,
  };
}

export function describeRefused({ printer, feed, paper, sheet, works, fault }: Refused): object {
  return {
    printer,
    feed,
    paper: paper ?? null,
    sheet: sheet?.map((length) => length.typed) ?? null,
    works: works.map((work) => ({ work: work.style, turn: turnOf(work) ?? null })),
    code: fault.code,
    reason: fault.message,
    remedy: fault.remedy,
  };
}

export function sayPlan(
  brief: Brief,
  currency: string,
  candidates: readonly PlanCandidate[],
  refused: readonly Refused[],
): readonly string[] {
  const [best] = candidates;
  const more = candidates.length - MAX_ROWS;
  return [
    best === undefined
      ? `${brief.title}: nothing in the library can print it.`
      : `${brief.title}: ${candidates.length} ways to print ${best.count.pieces} pieces.`,
    ...candidates.slice(0, MAX_ROWS).flatMap((one, i) => sayCandidate(one, i + 1, brief, currency)),
    ...(more > 0 ? [`and ${more} more; --json has them all.`] : []),
    ...(best === undefined ? refused.slice(0, MAX_ROWS).map(sayRefused) : []),
  ];
}

function sayCandidate(one: PlanCandidate, rank: number, brief: Brief, currency: string): readonly string[] {
  const { count, cost, time, spread } = one;
  const money = (amount: number) => showMoney(amount, currency);
  const turn = turnOf(one.work);
  const cutFrom = cutFromInWords(one);
  return [
    `${rank}. ${money(cost.total)} (${money(spread.low)} to ${money(spread.high)}), ${currency} ${showNumber(one.perPiece, 3)} a piece${one.unbeaten ? ', beaten by none' : ''}`,
    `   ${one.printer.name}, ${one.feed.name}; ${one.paper.name}, ${showSize(one.size, brief.units)}${cutFrom === undefined ? '' : ` out of ${cutFrom}`}`,
    `   ${one.work.style}${turn === undefined ? '' : `, turned ${turn}`}; ${one.up} up, ${count.sheets} sheets: ${count.needed} needed, ${count.overs} overs, ${count.makeReady} to set up`,
    `   ${showTime(time.total)}, ${showTime(time.attended)} of them with somebody there; ${showNumber(one.area.waste, 2)} m2 of ${showNumber(one.area.bought, 2)} m2 wasted`,
    `   paper ${money(cost.paper)}, ink ${money(cost.ink)}, labour ${money(cost.labour)}, setting up ${money(cost.makeReady)}, cutting ${money(cost.trimming)}, wear ${money(cost.wear)}`,
  ];
}

function sayRefused({ printer, paper, fault }: Refused): string {
  return `Not on ${printer}${paper === undefined ? '' : `, ${paper}`}: ${fault.message}`;
}
