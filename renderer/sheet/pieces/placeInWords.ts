// Where a piece lies, in words: for the list beside the canvas and for those who hear rather than see it.
import type { Head } from '../../../shared/geometry/head.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import type { Position } from '../../../shared/layout/position.ts';
import type { Unit } from '../../../shared/units/length.ts';
import { showLength } from '../../../shared/units/show.ts';

const HEAD_WORDS: Readonly<Record<Head, string>> = {
  0: 'head up',
  90: 'head to the left',
  180: 'head down',
  270: 'head to the right',
};

export function headInWords(head: Head): string {
  return HEAD_WORDS[head];
}

/** `0.375 in from the left, 1.5 in from the tail`. */
export function placeInWords(trim: Rect<'side1'>, unit: Unit): string {
  return `${showLength(trim.x, unit)} from the left, ${showLength(trim.y, unit)} from the tail`;
}

/** `1, Supper, front`. */
export function nameInWords({ piece, face }: Position, index: number): string {
  return `${index + 1}, ${piece}, ${face}`;
}
