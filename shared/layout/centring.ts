// Where the block of pieces lies on the sheet.

import { registerEdges } from '../geometry/register.ts';
import type { Rect, Size } from '../geometry/space.ts';
import type { Turn } from '../geometry/turn.ts';

/** Where the block lies across the feed and along it: in the middle of the sheet, or as near an edge as can be. */
export interface Centring {
  readonly across: 'centre' | 'left' | 'right';
  readonly along: 'centre' | 'lead' | 'tail';
}

/** The direction in which equal margins are required when one form serves both passes. */
export function registerDirection(turn: Turn): 'across' | 'along' {
  return registerEdges(turn)[0] === 'left' ? 'across' : 'along';
}

/**
 * The lower left of a block of this size (its bleeds included), in pt. A block that is centred lies in the middle
 * of the sheet as far as the usable area lets it; the margins of the edges that register are then equal, since the
 * usable area of a turned sheet is the same on both of them.
 */
export function placeBlock(
  block: Size,
  usable: Rect<'side1'>,
  sheet: Size,
  centring: Centring,
): { x: number; y: number } {
  const low = { centre: 'middle', left: 'start', right: 'end', lead: 'end', tail: 'start' } as const;
  return {
    x: slide(block.w, usable.x, usable.w, sheet.w, low[centring.across]),
    y: slide(block.h, usable.y, usable.h, sheet.h, low[centring.along]),
  };
}

function slide(
  length: number,
  from: number,
  room: number,
  sheet: number,
  to: 'start' | 'middle' | 'end',
): number {
  const last = from + room - length;
  switch (to) {
    case 'start':
      return from;
    case 'end':
      return last;
    case 'middle':
      return Math.max(from, Math.min(last, (sheet - length) / 2));
  }
}
