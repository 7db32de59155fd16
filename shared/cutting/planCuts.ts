// The cutting order of a sheet: as few cuts as there can be, then as few turns of the stack.
import { ok, type Result, refuse } from '../fault/result.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import { same } from '../geometry/tolerance.ts';
import {
  arrangementFault,
  blockedFault,
  tooLargeFault,
  tooNarrowFault,
  tooThickFault,
} from './cutRefusals.ts';
import { cutRegister } from './cutRegister.ts';
import type { Cutter } from './cutter.ts';
import { type CuttingGrid, fieldOf, wholeSheet } from './cuttingGrid.ts';
import type { CuttingInput } from './cuttingInput.ts';
import { noWayThrough } from './inTheWay.ts';
import { liftsOf } from './lifts.ts';
import { noticesOf } from './notices.ts';
import type { CuttingOrder } from './order.ts';
import { type Breadth, type Searched, searchCuts } from './search.ts';
import { cutSteps } from './sequence.ts';

/** Up to so many pieces every order is looked at. */
const MAX_PIECES_FOR_EXACT_SEARCH = 24;
/** So many parts in so many lies are looked at before the search is called off: about a second. */
const MAX_SEARCH_STEPS = 60_000;
const LOOKING_AT_ALL: readonly Breadth[] = [
  { orders: 'fewest', most: MAX_SEARCH_STEPS },
  { orders: 'every', most: MAX_SEARCH_STEPS },
];

/**
 * The order of cuts that frees every piece at its trim.
 *
 * Of all orders it takes one with the fewest cuts, each stack cut alone counting one; of those one that leaves waste
 * under the clamp least often; of those one that turns stacks least often. Cuts come first because every cut moves
 * the gauge and takes a full round of clamp and knife, while a stack is turned in a moment; and what costs no cut more
 * keeps stacks few, so the turns are few as well. Up to 24 pieces this is exact (see `fewest`); beyond them the cuts
 * follow the strips of the sheet, and every lift is turned only when nothing more can be cut as it lies.
 *
 * Rules of hand that always hold: the first cut is held against the edges that held the sheet in the printer, every
 * other one against an edge that was cut before or one of those; every cut runs along a trim; nothing shorter than the clamp needs lies behind the
 * knife; the whole sheet is cut before its strips, strips before pieces; one setting serves all stacks of a depth.
 *
 * Refuses (`no-guillotine-order`) with the pieces in the way, and (`cutter-refuses`) with what the cutter cannot take.
 *
 * @source common practice, no source
 */
export function planCuts(input: CuttingInput): Result<CuttingOrder> {
  const { sheet, arrangement, cutter, hold, work, run, unit } = input;
  const wrong = arrangementFault(arrangement, sheet);
  if (wrong !== undefined) return refuse(wrong);
  const field = fieldOf(
    sheet,
    arrangement.map((p) => p.trim),
  );
  const blocked = noWayThrough(field, wholeSheet(field));
  if (blocked !== undefined) return refuse(blockedFault(arrangement, blocked));
  const across = hold.across === 'right' ? 'right' : 'left';
  const holds = (edge: SheetEdge) => edge === 'lead' || edge === across || isTrimOnPaper(field, edge);
  const searched = searchWidening(field, cutter, holds);
  if (searched === undefined) {
    const ofAnySize = { ...cutter, widest: Infinity, deepest: Infinity };
    const isNarrow = searchWidening(field, ofAnySize, holds) === undefined;
    return refuse(isNarrow ? tooNarrowFault(arrangement, cutter, unit) : tooLargeFault(sheet, cutter, unit));
  }
  const lifts = run && liftsOf(run, cutter);
  if (run !== undefined && lifts?.sheets.length === 0)
    return refuse(tooThickFault(run.caliper, cutter, unit));
  const steps = cutSteps({
    field,
    plan: searched.plan,
    cutter,
    holds,
    registerFrom: (root) => cutRegister(root, work, hold),
  });
  const order = {
    sheet,
    arrangement,
    cutter,
    knockUp: ['lead', across] as const,
    steps,
    settings: steps.filter(({ distance }, i) => !same(distance, steps[i - 1]?.distance ?? 0)).length,
    cuts: sum(steps.map((step) => step.parts.length)),
    strokes: sum(steps.map((step) => step.strokes)),
    turns: sum(steps.map((step) => (step.turned === 0 ? 0 : step.parts.length))),
    fewest: searched.whole,
    ...(lifts === undefined ? {} : { lifts }),
  };
  return ok({ ...order, notices: noticesOf(order, input) });
}

/** Whether some piece ends with the paper itself, so that its own edge is what it has to be held against. */
function isTrimOnPaper(field: CuttingGrid, edge: SheetEdge): boolean {
  return field.trims.some((trim) => trim[edge] === wholeSheet(field)[edge]);
}

/** First among the orders of fewest cuts; only where the cutter allows none of them, among all orders. */
function searchWidening(
  field: CuttingGrid,
  cutter: Cutter,
  holds: (edge: SheetEdge) => boolean,
): Searched | undefined {
  const breadths: readonly Breadth[] = [
    ...(field.trims.length > MAX_PIECES_FOR_EXACT_SEARCH ? [] : LOOKING_AT_ALL),
    { orders: 'farthest', most: MAX_SEARCH_STEPS },
  ];
  for (const breadth of breadths) {
    const searched = searchCuts(field, cutter, holds, breadth);
    if (searched !== undefined) return searched;
  }
  return undefined;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, n) => total + n, 0);
}
