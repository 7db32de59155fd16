// A guillotine with paper on it: piles are laid against the back gauge, turned by hand and cut, as the steps say. It knows
// nothing of how the steps were found: of a step it reads what a person at the machine is told, the stacks by their
// names, the turn, the edge at the gauge and the distance, and which pile gets which name.
import type { CutOutcome, CutStep, CuttingOrder } from '../../shared/cutting/order.ts';

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** An edge of a pile: what the edge of the sheet on that side was called, and the step that cut it. */
export interface PileEdge {
  readonly called: string;
  readonly cutIn?: number;
}

/** What is printed on both sides for one position, as it lies on the pile. */
export interface Ink {
  readonly position: number;
  readonly front: Box;
  readonly back: Box;
}

/** A pile as it lies on the table: back at the top, origin at the lower left of the pile. */
export interface Pile {
  readonly w: number;
  readonly h: number;
  /** Back, right, front, left. */
  readonly edges: readonly [PileEdge, PileEdge, PileEdge, PileEdge];
  readonly ink: readonly Ink[];
}

/** A sheet as it comes from the printer, lead edge at the back. */
export function printedSheet(w: number, h: number, ink: readonly Ink[]): Pile {
  const edge = (called: string): PileEdge => ({ called });
  return { w, h, edges: [edge('lead'), edge('right'), edge('tail'), edge('left')], ink };
}

export interface Finished {
  readonly position: number;
  readonly pile: Pile;
}

/** All that comes of cutting one printed sheet. */
interface Cutting {
  readonly finished: readonly Finished[];
  /** What broke a rule of hand, or does not agree with the table. */
  readonly complaints: readonly string[];
  /** For each step its first pile, as it lay just before the knife came down. */
  readonly lain: readonly Pile[];
}

/** Cuts one printed sheet as the order says. */
export function cutAsTold(order: CuttingOrder, sheet: Pile): Cutting {
  const first = order.steps[0]?.gauge;
  const table = new Map<string, Pile>([['A', first === undefined ? sheet : knockUp(sheet, first)]]);
  const finished: Finished[] = [];
  const complaints: string[] = [];
  const lain: Pile[] = [];
  for (const step of order.steps) {
    const taken = step.parts.map((part) => {
      const pile = table.get(part.stack);
      if (pile === undefined) throw new Error(`Step ${step.number}: there is no stack ${part.stack}`);
      table.delete(part.stack);
      return turnPile(pile, step.turned);
    });
    complaints.push(...complain(order, step, taken));
    lain.push(taken[0]!);
    taken.forEach((pile, i) => {
      const [behind, inFront] = cutPile(pile, step);
      const put = (outcome: CutOutcome, made: Pile) => {
        if (outcome.becomes === 'piece') finished.push({ position: outcome.position, pile: made });
        if (outcome.becomes === 'stack') {
          if (table.has(outcome.stack)) complaints.push(`two stacks are called ${outcome.stack}`);
          table.set(outcome.stack, made);
        }
        if (outcome.becomes === 'waste' && made.ink.length > 0) complaints.push('a piece went to waste');
      };
      put(step.parts[i]!.behind, behind);
      put(step.parts[i]!.inFront, inFront);
    });
  }
  if (table.size > 0) complaints.push(`stacks ${[...table.keys()].join()} were never cut`);
  return { finished, complaints, lain };
}

/** The sheet laid on the table for the first time, with this edge at the back. */
function knockUp(sheet: Pile, edge: string): Pile {
  const turned = [0, 1, 2, 3].map((quarters) => turnPile(sheet, quarters));
  return turned.find((pile) => pile.edges[0].called === edge)!;
}

/** Clockwise as seen from above: what lay at the left comes to the back. */
function turnPile(pile: Pile, quarters: number): Pile {
  let turned = pile;
  for (let n = 0; n < (quarters + 4) % 4; n++) {
    const { w, h, edges, ink } = turned;
    const carry = (b: Box): Box => ({ x: b.y, y: w - b.x - b.w, w: b.h, h: b.w });
    const [back, right, front, left] = edges;
    turned = {
      w: h,
      h: w,
      edges: [left, back, right, front],
      ink: ink.map((i) => ({ ...i, front: carry(i.front), back: carry(i.back) })),
    };
  }
  return turned;
}

/** The pile behind the knife and the one before it. What the knife runs through goes to the side that has most of it. */
function cutPile(pile: Pile, step: CutStep): readonly [Pile, Pile] {
  const knife = pile.h - step.distance;
  const [back, right, front, left] = pile.edges;
  const isBehind = ({ front: f }: Ink) => f.y + f.h / 2 > knife;
  const lift = (b: Box): Box => ({ ...b, y: b.y - knife });
  const behind: Pile = {
    w: pile.w,
    h: step.distance,
    edges: [back, right, { called: front.called, cutIn: step.number }, left],
    ink: pile.ink.filter(isBehind).map((i) => ({ ...i, front: lift(i.front), back: lift(i.back) })),
  };
  const inFront: Pile = {
    w: pile.w,
    h: knife,
    edges: [{ called: back.called, cutIn: step.number }, right, front, left],
    ink: pile.ink.filter((i) => !isBehind(i)),
  };
  return [behind, inFront];
}

const HAIR = 0.02;

/** What somebody who knows the machine would object to. */
function complain(order: CuttingOrder, step: CutStep, piles: readonly Pile[]): readonly string[] {
  const { cutter, knockUp, arrangement, sheet } = order;
  const heard: string[] = [];
  const say = (wrong: boolean, what: string) => {
    if (wrong) heard.push(`step ${step.number}: ${what}`);
  };
  const [first] = piles;
  for (const pile of piles) {
    const [back, right, , left] = pile.edges;
    const guide = step.side.hand === 'left' ? left : right;
    say(back.called !== step.gauge, `the ${back.called} edge is at the back, not the ${step.gauge} edge`);
    say(guide.called !== step.side.edge, `the ${guide.called} edge is at the side guide`);
    say(!cutter.guides.includes(step.side.hand), `there is no guide on the ${step.side.hand}`);
    say(pile.w > cutter.widest + HAIR, 'the stack is wider than the knife is long');
    say(step.distance > cutter.deepest + HAIR, 'the back gauge does not go back so far');
    say(step.distance < cutter.leastGauge - HAIR, 'the clamp does not reach the stack');
    say(step.distance >= pile.h - HAIR || step.distance <= HAIR, 'the knife takes nothing off');
    const isOnPaper = arrangement.some(
      ({ trim }) =>
        ({
          lead: trim.y + trim.h > sheet.h - HAIR,
          tail: trim.y < HAIR,
          left: trim.x < HAIR,
          right: trim.x + trim.w > sheet.w - HAIR,
        })[step.gauge],
    );
    const isTrue = back.cutIn !== undefined || knockUp.some((edge) => edge === back.called) || isOnPaper;
    say(!isTrue, `the raw ${back.called} edge is held, which did not hold the sheet in the printer`);
    say(Math.abs(pile.h - first!.h) > HAIR, 'stacks of two depths are cut with one setting');
  }
  return heard;
}
