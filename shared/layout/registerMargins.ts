// The margins on the two edges that register the second pass.
import { around } from '../geometry/rect.ts';
import type { Rect, Size } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import type { Turn } from '../geometry/turn.ts';

export interface RegisterMargins {
  /** The trims of all pieces together. */
  readonly block: Rect<'side1'>;
  /** Its distance from the two edges in the order of `registerEdges`, in pt. */
  readonly margins: readonly [number, number];
  readonly equal: boolean;
}

/** The margins beside the block of pieces; `undefined` where there are none. */
export function registerMargins(
  trims: readonly Rect<'side1'>[],
  turn: Turn,
  sheet: Size,
): RegisterMargins | undefined {
  const block = around(trims);
  if (block === undefined) return undefined;
  const margins =
    turn === 'side-to-side'
      ? ([block.x, sheet.w - block.x - block.w] as const)
      : ([sheet.h - block.y - block.h, block.y] as const);
  return { block, margins, equal: same(margins[0], margins[1]) };
}
