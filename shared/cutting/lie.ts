// How a stack lies on the table of the guillotine: which edge is at the back, and what lies at either hand.
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Hand } from './cutter.ts';
import type { QuarterTurns } from './order.ts';

/** The edges as they come to the back gauge one after another when the stack is turned clockwise. */
export const CLOCKWISE: readonly SheetEdge[] = ['lead', 'left', 'tail', 'right'];

/** The edge that comes to the back when this many quarter turns clockwise follow on `back`. */
function afterTurns(back: SheetEdge, turns: number): SheetEdge {
  const edge = CLOCKWISE[(CLOCKWISE.indexOf(back) + turns + 4) % 4];
  if (edge === undefined) throw new Error(`${turns} quarter turns are not whole`);
  return edge;
}

/** The edge across from this one. */
export function oppositeEdge(edge: SheetEdge): SheetEdge {
  return afterTurns(edge, 2);
}

/** The edge at the person's left or right hand while `back` lies at the back gauge, side 1 up. */
export function atHand(back: SheetEdge, hand: Hand): SheetEdge {
  return afterTurns(back, hand === 'left' ? 1 : -1);
}

/** How a stack is turned to bring the edge `to` to the back where `from` was. */
export function turnsBetween(from: SheetEdge, to: SheetEdge): QuarterTurns {
  const turns = ([0, 1, 2, -1] as const).find((n) => afterTurns(from, n) === to);
  if (turns === undefined) throw new Error(`No turn brings ${to} to where ${from} was`);
  return turns;
}

/** The dimension of the sheet that the back gauge measures while this edge lies at it. */
export function dimensionOf(gauge: SheetEdge): 'width' | 'length' {
  return gauge === 'left' || gauge === 'right' ? 'width' : 'length';
}
