// The free margins of a side, and how a mark finds its place in one of them.
import type { Head } from '../geometry/head.ts';
import { lying } from '../geometry/head.ts';
import { grow, overlap } from '../geometry/rect.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Rect, Size } from '../geometry/space.ts';
import { within } from '../geometry/tolerance.ts';
import { layStamp, type Mark, type Stamp } from './mark.ts';

/** How far every mark stays away from bleeds and from other marks, in pt (0.7 mm). */
export const CLEARANCE_PT = 2;

/** How far a stamp would like to stay away, in pt. */
const GAP_PT = 6;

/** The four margins between the printable area and the block of all bleeds, each as long as the printable area. */
export function marginsAround(area: Rect, block: Rect): Readonly<Record<SheetEdge, Rect>> {
  const areaTop = area.y + area.h;
  const areaRight = area.x + area.w;
  const bottom = block.y - CLEARANCE_PT;
  const top = block.y + block.h + CLEARANCE_PT;
  const left = block.x - CLEARANCE_PT;
  const right = block.x + block.w + CLEARANCE_PT;
  return {
    lead: { ...area, y: top, h: areaTop - top },
    tail: { ...area, h: bottom - area.y },
    left: { ...area, w: left - area.x },
    right: { ...area, x: right, w: areaRight - right },
  };
}

/** Where in a margin something would like to lie: 0 at its left or bottom, 1 at its right or top. */
export interface Wish {
  readonly x: number;
  readonly y: number;
}

/**
 * The free room of this size in a margin that is nearest to the wish, or `undefined` where there is none.
 * `taken` holds what is not to be overlapped, with whatever clearance it needs. Of two rooms equally near, the left
 * one is taken, then the lower.
 */
export function findRoom(margin: Rect, size: Size, taken: readonly Rect[], wish: Wish): Rect | undefined {
  const slackX = margin.w - size.w;
  const slackY = margin.h - size.h;
  if (!within(0, slackX) || !within(0, slackY)) return undefined;
  const near = taken.filter((t) => overlap(t, margin));
  const wishX = margin.x + wish.x * slackX;
  const wishY = margin.y + wish.y * slackY;
  const xs = stops(wishX, margin.x, slackX, [
    ...near.map((t) => t.x - size.w),
    ...near.map((t) => t.x + t.w),
  ]);
  const ys = stops(wishY, margin.y, slackY, [
    ...near.map((t) => t.y - size.h),
    ...near.map((t) => t.y + t.h),
  ]);
  let best: Rect | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const x of xs) {
    for (const y of ys) {
      const distance = Math.hypot(x - wishX, y - wishY);
      const room = { x, y, ...size };
      if (distance < bestDistance && !near.some((t) => overlap(t, room))) {
        best = room;
        bestDistance = distance;
      }
    }
  }
  return best;
}

function stops(wish: number, start: number, slack: number, others: readonly number[]): readonly number[] {
  const inside = others.filter((v) => within(start, v) && within(v, start + slack));
  return [...new Set([wish, ...inside])].sort((a, b) => a - b);
}

/** A margin that a stamp may go to, how it is turned there, and where it would like to lie. */
export interface Place {
  readonly margin: Rect;
  readonly head: Head;
  readonly wish: Wish;
}

/**
 * Tries the places in turn, in each the stamps in turn, first with plenty of air around them and then with the least;
 * gives the marks of the first that finds room. `taken` holds the bleeds and marks that are there.
 */
export function placeFirst(
  stamps: readonly Stamp[],
  places: readonly Place[],
  taken: readonly Rect[],
): readonly Mark[] | undefined {
  const kept = [GAP_PT, CLEARANCE_PT].map((by) => keepClear(taken, by));
  for (const place of places) {
    for (const around of kept) {
      for (const stamp of stamps) {
        const room = findRoom(place.margin, lying(stamp.size, place.head), around, place.wish);
        if (room !== undefined) return layStamp(stamp, room, place.head);
      }
    }
  }
  return undefined;
}

/** What must stay free so that nothing comes nearer than this, in pt. */
export function keepClear(rects: readonly Rect[], by: number): readonly Rect[] {
  return rects.map((r) => grow(r, by));
}
