// From a plan for every part to one list of steps: what is cut next, and which stacks are cut with one setting.

import type { SheetEdge } from '../geometry/sheet.ts';
import type { Cutter } from './cutter.ts';
import {
  areaOf,
  type CuttingGrid,
  isDone,
  isRaw,
  type Part,
  placeOnSheet,
  wholeSheet,
} from './cuttingGrid.ts';
import { letterFor } from './letters.ts';
import { atHand, dimensionOf, turnsBetween } from './lie.ts';
import { gaugeDistance } from './machineLimits.ts';
import {
  compareNames,
  compareUrgency,
  isOneSetting,
  type LastCut,
  strokesFor,
  type WaitingStack,
} from './oneSetting.ts';
import type { CutOutcome, CutPart, CutRegister, CutStep } from './order.ts';
import type { CutChoice, Plan } from './search.ts';
import { cutKindOf, partsOf, type Stack, uncut } from './stack.ts';

/** What the steps are made from. */
export interface Sequenced {
  readonly field: CuttingGrid;
  readonly plan: Plan;
  readonly cutter: Cutter;
  readonly holds: (edge: SheetEdge) => boolean;
  readonly registerFrom: (root: SheetEdge) => CutRegister;
}

/**
 * The steps. What lies on the table is cut as long as it need not be turned; then what the back gauge already stands
 * for; then the largest stacks, so that small pieces come last. Stacks of one depth that want the same cut wait for one
 * another, so that the back gauge is set once for all of them.
 */
export function cutSteps(input: Sequenced): readonly CutStep[] {
  const steps: CutStep[] = [];
  let waiting = waitingFor(input, uncut(wholeSheet(input.field)));
  let named = 1;
  let last: LastCut = { stacks: [], distance: 0 };
  while (waiting.length > 0) {
    const [first] = waiting.toSorted((a, b) => compareUrgency(input.field, a, b, last));
    if (first === undefined) break;
    const together = waiting
      .filter((other) => isOneSetting(input.field, first, other))
      .toSorted(compareNames);
    waiting = waiting.filter((other) => !together.includes(other));
    const cut = together.map((one) => {
      const made = cutOne(input.field, one, () => letterFor(named++));
      waiting = [...waiting, ...made.stacks.flatMap((stack) => waitingFor(input, stack))];
      return made.part;
    });
    last = { stacks: together.map((one) => one.stack.name), distance: first.distance };
    steps.push(stepFrom(input, together, cut, steps.length + 1));
  }
  return steps;
}

function waitingFor(input: Sequenced, stack: Stack): readonly WaitingStack[] {
  const choice = input.plan(stack.part, stack.lay);
  if (choice === undefined) return [];
  const { gauge, line } = choice;
  return [
    {
      stack,
      choice,
      turned: stack.lay === undefined ? 0 : turnsBetween(stack.lay, gauge),
      distance: gaugeDistance(input.field, stack.part, gauge, line),
      kind: cutKindOf(input.field, stack, choice),
      side: sideGuide(input, stack.part, gauge),
    },
  ];
}

/** Cuts one stack: what is said of it, and the stacks that it leaves. Behind the knife it keeps its name. */
function cutOne(
  field: CuttingGrid,
  { stack, choice }: WaitingStack,
  nextName: () => string,
): { readonly part: CutPart; readonly stacks: readonly Stack[] } {
  const [behind, inFront] = partsOf(field, stack, choice);
  const isBoth = !isDone(field, behind.part) && !isDone(field, inFront.part);
  const named: Stack = isBoth ? { ...inFront, name: nextName() } : inFront;
  const part: CutPart = {
    stack: stack.name,
    area: areaOf(field, stack.part),
    line: lineOf(field, stack.part, choice),
    behind: outcomeOf(field, behind),
    inFront: outcomeOf(field, named),
  };
  return { part, stacks: [behind, named] };
}

function outcomeOf(field: CuttingGrid, stack: Stack): CutOutcome {
  const area = areaOf(field, stack.part);
  const [first] = stack.part.pieces;
  if (first === undefined) return { becomes: 'waste', area };
  if (!isDone(field, stack.part)) return { becomes: 'stack', area, stack: stack.name };
  return { becomes: 'piece', area, position: first };
}

function lineOf(field: CuttingGrid, part: Part, { gauge, line }: CutChoice): CutPart['line'] {
  const { x, y, w, h } = areaOf(field, part);
  if (dimensionOf(gauge) === 'width') {
    const at = placeOnSheet(field, 'up', line);
    return [
      { x: at, y },
      { x: at, y: y + h },
    ];
  }
  const at = placeOnSheet(field, 'across', line);
  return [
    { x, y: at },
    { x: x + w, y: at },
  ];
}

function stepFrom(
  input: Sequenced,
  together: readonly WaitingStack[],
  cut: readonly CutPart[],
  number: number,
): CutStep {
  const [first] = together;
  const [one, ...others] = cut;
  if (first === undefined || one === undefined) throw new Error('A step cuts at least one stack');
  const { stack, choice, turned, distance, kind, side } = first;
  return {
    number,
    turned,
    gauge: choice.gauge,
    side,
    distance,
    kind,
    parts: [one, ...others],
    strokes: strokesFor(input.field, together, input.cutter.widest),
    register: input.registerFrom(stack.roots[choice.gauge]),
  };
}

/** The guide at which a true edge lies, the cutter's first one before the other. */
function sideGuide({ field, cutter, holds }: Sequenced, part: Part, gauge: SheetEdge): CutStep['side'] {
  const isTrue = (edge: SheetEdge) => !isRaw(field, part, edge) || holds(edge);
  const hand = cutter.guides.find((guide) => isTrue(atHand(gauge, guide))) ?? cutter.guides[0];
  return { hand, edge: atHand(gauge, hand) };
}
