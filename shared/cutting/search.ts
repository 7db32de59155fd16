// Choosing the cuts: which edge goes to the back gauge, and where the knife comes down, for every part that comes up.
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Cutter } from './cutter.ts';
import { type CuttingGrid, isDone, isRaw, type Part, partKey, wholeSheet } from './cuttingGrid.ts';
import { fewestCuts } from './fewestCuts.ts';
import { CLOCKWISE, dimensionOf, turnsBetween } from './lie.ts';
import { canHold, gaugeDistance } from './machineLimits.ts';
import { type Parting, partingsIn } from './partings.ts';

/** One cut of a part. */
export interface CutChoice {
  readonly gauge: SheetEdge;
  readonly line: number;
  readonly behind: Part;
  readonly inFront: Part;
}

/** The next cut of a part that lay with the edge `lay` at the back, or `undefined` where nothing is left to cut. */
export type Plan = (part: Part, lay: SheetEdge | undefined) => CutChoice | undefined;

/**
 * How widely the cuts are searched. `fewest`: every order that has as few cuts as there can be without a machine's
 * limits. `every`: every order. `farthest`: for each edge only the cut farthest from the gauge that costs no more cuts
 * than it must, and another edge only where nothing more can be cut from this one; quick for hundreds of pieces.
 */
export interface Breadth {
  readonly orders: 'fewest' | 'every' | 'farthest';
  /** How many parts in how many lies may be looked at before the search is given up. */
  readonly most: number;
}

/** What a search found, and whether it looked at everything that its breadth allows. */
export interface Searched {
  readonly plan: Plan;
  readonly whole: boolean;
}

/**
 * What makes one order worse than another: a cut more than anything; then waste that is left under the clamp while
 * what is wanted lies loose before the knife; then turning the stack; then turning it by half instead of a quarter.
 * Each outweighs any number of the next that a sheet can need.
 */
const CUT_COST = 1e12;
const WASTE_HELD_COST = 1e8;
const TURN_COST = 1e4;

/** How much is spent on counting cuts where not every order is looked at: a fraction of a second. */
const QUICK_SEARCH_STEPS = 2_000_000;

/** How many cuts more than the fewest a cut may lead to, at first and where the cutter then allows none. */
const EXCESSES: Readonly<Record<Breadth['orders'], readonly number[]>> = {
  fewest: [0],
  every: [Infinity],
  farthest: [0, Infinity],
};

interface Found {
  readonly cost: number;
  readonly choice?: CutChoice;
}

const NOTHING_TO_DO: Found = { cost: 0 };
const IMPOSSIBLE: Found = { cost: Infinity };

/**
 * The cheapest order of cuts that the cutter allows, part by part (dynamic programming over the parts that can come up
 * and the edge at which each lay). `undefined` where there is none, or none was found within the search's breadth.
 *
 * Every cut is held against an edge that was cut before or for which `holds` says so.
 */
export function searchCuts(
  field: CuttingGrid,
  cutter: Cutter,
  holds: (edge: SheetEdge) => boolean,
  { orders, most }: Breadth,
): Searched | undefined {
  const known = new Map<string, Found>();
  const cutsOf = fewestCuts(field, orders === 'farthest' ? QUICK_SEARCH_STEPS : Infinity);
  const partings = partingsIn(field, excessOf);

  function best(part: Part, lay: SheetEdge | undefined): Found {
    if (isDone(field, part)) return NOTHING_TO_DO;
    const key = `${partKey(part)} ${lay}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    if (known.size >= most) return IMPOSSIBLE;
    let found = IMPOSSIBLE;
    for (const mostExcess of EXCESSES[orders]) {
      if (found.choice === undefined) found = bestWithin(part, lay, mostExcess);
    }
    known.set(key, found);
    return found;
  }

  function bestWithin(part: Part, lay: SheetEdge | undefined, mostExcess: number): Found {
    let found = IMPOSSIBLE;
    for (const gauge of gaugesOf(part, lay)) {
      const turned = lay === undefined ? 0 : turnsBetween(lay, gauge);
      const turning = turned === 0 ? 0 : TURN_COST + Math.abs(turned);
      for (const choice of choicesAt(part, gauge, mostExcess)) {
        const held = isWaste(choice.behind) ? WASTE_HELD_COST : 0;
        const rest = best(choice.behind, gauge).cost + best(choice.inFront, gauge).cost;
        const cost = CUT_COST + held + turning + rest;
        if (cost < found.cost) found = { cost, choice };
      }
      const isSettled = gauge === lay && found.choice !== undefined && !isWaste(found.choice.behind);
      if (orders === 'farthest' && isSettled) break;
    }
    return found;
  }

  function excessOf(part: Part, one: Part, other: Part): number {
    return orders === 'every' ? 0 : 1 + cutsOf(one) + cutsOf(other) - cutsOf(part);
  }

  function gaugesOf(part: Part, lay: SheetEdge | undefined): readonly SheetEdge[] {
    const edges = CLOCKWISE.filter((edge) => !isRaw(field, part, edge) || holds(edge));
    return edges.toSorted((a, b) => Number(b === lay) - Number(a === lay));
  }

  /** What can be cut off a part in this lie, the largest distance first, so that what is wanted stays clamped. */
  function choicesAt(part: Part, gauge: SheetEdge, mostExcess: number): readonly CutChoice[] {
    const isLow = gauge === 'left' || gauge === 'tail';
    const taken: Parting[] = [];
    for (const parting of partings(part, dimensionOf(gauge) === 'width' ? 'up' : 'across', isLow)) {
      if (!canHold(cutter, field, part, gauge, gaugeDistance(field, part, gauge, parting.line))) continue;
      if (parting.excess > mostExcess) continue;
      if (orders !== 'farthest') taken.push(parting);
      else if (parting.excess < (taken[0]?.excess ?? Infinity)) taken[0] = parting;
      if (orders === 'farthest' && parting.excess <= 0) break;
    }
    return taken.map(({ line, low, high }) =>
      isLow ? { gauge, line, behind: low, inFront: high } : { gauge, line, behind: high, inFront: low },
    );
  }

  if (best(wholeSheet(field), undefined).cost === Infinity) return undefined;
  const isWhole = orders !== 'farthest' && known.size < most;
  return { plan: (part, lay) => best(part, lay).choice, whole: isWhole };
}

function isWaste(part: Part): boolean {
  return part.pieces.length === 0;
}
