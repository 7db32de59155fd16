// Random staggered sheets, and how far a point lies from a card, worked out without the program.
import fc from 'fast-check';
import { numberFrom } from './anyNumber.ts';

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** A card where it lies, and its bleed, in pt. */
export interface Placed {
  readonly trim: Box;
  readonly bleed: number;
}

/** Rows of cards of several sizes that begin anywhere, with gutters of their own: hardly two edges are in line. */
export const staggered: fc.Arbitrary<readonly Placed[]> = fc
  .array(
    fc.record({
      begin: numberFrom(0, 60),
      height: numberFrom(40, 90),
      gap: fc.oneof(fc.constant(0), numberFrom(0, 24)),
      cards: fc.array(
        fc.record({
          width: numberFrom(40, 120),
          gap: fc.oneof(fc.constant(0), numberFrom(0, 24)),
          lift: fc.oneof(fc.constant(0), numberFrom(0, 6)),
          bleed: fc.constantFrom(0, 4, 9, 9, 9),
        }),
        { minLength: 1, maxLength: 4 },
      ),
    }),
    { minLength: 2, maxLength: 4 },
  )
  .map((rows) => {
    const placed: Placed[] = [];
    let y = 100;
    for (const { begin, height, gap, cards } of rows) {
      let x = 100 + begin;
      for (const { width, gap: beside, lift, bleed } of cards) {
        placed.push({ trim: { x, y: y + lift, w: width, h: height - lift }, bleed });
        x += width + beside;
      }
      y += height + gap;
    }
    return placed;
  });

/** How far the knife must be off, across or along, for a point to be on the card: 0 within its trim. */
export function farthestOff({ x, y, w, h }: Box, px: number, py: number): number {
  return Math.max(0, x - px, px - x - w, y - py, py - y - h);
}

/** The gap between two cards: how far the knife must be off for one to show the other. */
export function gapOf(a: Box, b: Box): number {
  return Math.max(0, a.x - b.x - b.w, b.x - a.x - a.w, a.y - b.y - b.h, b.y - a.y - a.h);
}

/** Whether a point lies straight before an edge of the card, not around its corner. */
export function standsBefore({ x, y, w, h }: Box, px: number, py: number): boolean {
  return (px > x && px < x + w) || (py > y && py < y + h);
}
