// A sheet on the table of the printer in each pass: which point and which edge of the paper lies where.
import { print, turned, unturned } from './paper.ts';

export interface SheetSize {
  readonly w: number;
  readonly h: number;
}

export type Edge = 'left' | 'right' | 'tail' | 'lead';

/** How the paper was turned before it was laid down; not at all in the first pass. */
export type Turned = 'side-to-side' | 'end-to-end' | undefined;

/** How the paper lies after this turn. */
export const poseAfter = (turn: Turned, { w, h }: SheetSize) =>
  turn === undefined ? unturned : turned(turn, w, h);

/** Where a point of the table lies on the paper, as side 1 counts it. */
export function onPaper(turn: Turned, sheet: SheetSize, x: number, y: number): { x: number; y: number } {
  const dot = { art: 'dot', trim: { x: x - 1, y: y - 1, w: 2, h: 2 }, head: 0 };
  const [head, foot] = print([dot], poseAfter(turn, sheet));
  return { x: (head!.at[0] + foot!.at[0]) / 2, y: (head!.at[1] + foot!.at[1]) / 2 };
}

/** The edge of the paper, as named on side 1, that lies at this edge of the table. */
export function edgeAt(turn: Turned, sheet: SheetSize, edge: Edge): Edge {
  const { w, h } = sheet;
  const middles: Readonly<Record<Edge, readonly [number, number]>> = {
    left: [0, h / 2],
    right: [w, h / 2],
    tail: [w / 2, 0],
    lead: [w / 2, h],
  };
  const { x, y } = onPaper(turn, sheet, ...middles[edge]);
  const off = (of: Edge) => Math.hypot(middles[of][0] - x, middles[of][1] - y);
  return (['left', 'right', 'tail', 'lead'] as const).toSorted((a, b) => off(a) - off(b))[0]!;
}
