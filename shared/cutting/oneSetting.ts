// One setting of the back gauge: which stack is cut next, which others are cut with it, and in how many strokes.
import { same, within } from '../geometry/tolerance.ts';
import { areaOf, type CuttingGrid, type Part } from './cuttingGrid.ts';
import { dimensionOf } from './lie.ts';
import { alongKnife } from './machineLimits.ts';
import type { CutKind, CutStep, QuarterTurns } from './order.ts';
import type { CutChoice } from './search.ts';
import type { Stack } from './stack.ts';

/** A stack that waits for its next cut. */
export interface WaitingStack {
  readonly stack: Stack;
  readonly choice: CutChoice;
  readonly turned: QuarterTurns;
  readonly distance: number;
  readonly kind: CutKind;
  readonly side: CutStep['side'];
}

/** What lies on the table, and where the back gauge stands. */
export interface LastCut {
  readonly stacks: readonly string[];
  readonly distance: number;
}

/**
 * Which of two comes first: what lies on the table and need not be turned; what needs no turn; what the back gauge
 * already stands for; the larger stack; the larger distance.
 */
export function compareUrgency(field: CuttingGrid, a: WaitingStack, b: WaitingStack, last: LastCut): number {
  const reach = (one: WaitingStack) => (one.turned !== 0 ? 2 : last.stacks.includes(one.stack.name) ? 0 : 1);
  if (reach(a) !== reach(b)) return reach(a) - reach(b);
  const isSet = (one: WaitingStack) => Number(same(one.distance, last.distance));
  if (isSet(a) !== isSet(b)) return isSet(b) - isSet(a);
  const larger = sizeOf(field, b.stack.part) - sizeOf(field, a.stack.part);
  if (Math.abs(larger) > 1) return larger;
  return same(a.distance, b.distance) ? 0 : b.distance - a.distance;
}

function sizeOf(field: CuttingGrid, part: Part): number {
  const { w, h } = areaOf(field, part);
  return w * h;
}

/** A before B, Z before AA. */
export function compareNames(a: WaitingStack, b: WaitingStack): number {
  const [one, other] = [a.stack.name, b.stack.name];
  return one.length - other.length || (one < other ? -1 : 1);
}

/** Whether both are cut with one setting, from one lie, to the same effect. Along the knife they may differ. */
export function isOneSetting(field: CuttingGrid, a: WaitingStack, b: WaitingStack): boolean {
  return (
    a.choice.gauge === b.choice.gauge &&
    a.side.edge === b.side.edge &&
    a.turned === b.turned &&
    a.kind === b.kind &&
    same(a.distance, b.distance) &&
    same(depthOf(field, a), depthOf(field, b)) &&
    a.stack.roots[a.choice.gauge] === b.stack.roots[b.choice.gauge] &&
    isToSameEffect(a, b)
  );
}

function depthOf(field: CuttingGrid, { stack, choice }: WaitingStack): number {
  const { w, h } = areaOf(field, stack.part);
  return dimensionOf(choice.gauge) === 'width' ? w : h;
}

/** Whether what lies behind the knife, and what lies before it, has as much to it in both. */
function isToSameEffect({ choice: a }: WaitingStack, { choice: b }: WaitingStack): boolean {
  return (
    a.behind.pieces.length === b.behind.pieces.length && a.inFront.pieces.length === b.inFront.pieces.length
  );
}

/** How often the knife comes down on all of them: each is laid into the first stroke that has room left for it. */
export function strokesFor(field: CuttingGrid, together: readonly WaitingStack[], widest: number): number {
  const strokes: number[] = [];
  const lengths = together.map(({ stack, choice }) => alongKnife(field, stack.part, choice.gauge));
  for (const length of lengths.toSorted((a, b) => b - a)) {
    const at = strokes.findIndex((taken) => within(taken + length, widest));
    if (at < 0) strokes.push(length);
    else strokes[at] = (strokes[at] ?? 0) + length;
  }
  return strokes.length;
}
