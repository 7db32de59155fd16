// Step and repeat: where the copies of a piece, or of a group of them, come to lie.
import type { Size } from '../geometry/space.ts';
import type { PieceShift } from './align.ts';

/** How often something is repeated and how far apart: counts of at least 1 hold the original, gaps are from trim to trim in pt. */
export interface Repeat {
  readonly across: number;
  readonly along: number;
  readonly gapAcross: number;
  readonly gapAlong: number;
  /** Which way the copies go from the original. */
  readonly towards: readonly ['left' | 'right', 'lead' | 'tail'];
}

/** The shifts of all copies of something of this size, row by row, the original left out. */
export function repeat(size: Size, { across, along, gapAcross, gapAlong, towards }: Repeat): PieceShift[] {
  const stepX = (size.w + gapAcross) * (towards[0] === 'right' ? 1 : -1);
  const stepY = (size.h + gapAlong) * (towards[1] === 'lead' ? 1 : -1);
  return Array.from({ length: across * along - 1 }, (_copy, i) => ({
    dx: ((i + 1) % across) * stepX,
    dy: Math.floor((i + 1) / across) * stepY,
  }));
}
