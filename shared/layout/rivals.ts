// Whose bleeds meet, found in one sweep across the sheet.
import { grow, intersection, overlap } from '../geometry/rect.ts';
import type { Rect, Side } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';
import type { Bleeding } from './bleeding.ts';

/** The others whose bleed one would meet. */
export interface Rivals {
  /** Their numbers, in order. */
  readonly numbers: readonly number[];
  /** Whether it lies over another, or its bleed a hair over the bleed of one that is no rival. */
  readonly isAstray: boolean;
}

/** An area of no more than this, in pt2, is none: a speck as wide and as high as the tolerance. */
export const SPECK_PT2 = TOLERANCE * TOLERANCE;

/** For each of them its rivals. Pieces that overlap are no rivals: that is a fault of its own. */
export function findRivals<S extends Side>(placed: readonly Bleeding<S>[]): readonly Rivals[] {
  const found = placed.map(() => ({ numbers: [] as number[], isAstray: false }));
  const bleeds = placed.map(({ trim, bleed }) => grow(trim, bleed));
  sweep(bleeds, (i, j) => {
    const [one, other, a, b] = [placed[i], placed[j], bleeds[i], bleeds[j]];
    const [ofOne, ofOther] = [found[i], found[j]];
    if (!one || !other || !a || !b || !ofOne || !ofOther) return;
    if (overlap(a, b) && !overlap(one.trim, other.trim)) {
      ofOne.numbers.push(j);
      ofOther.numbers.push(i);
    } else if (isMoreThanSpeck(a, b)) {
      ofOne.isAstray = true;
      ofOther.isAstray = true;
    }
  });
  for (const { numbers } of found) numbers.sort((a, b) => a - b);
  return found;
}

/** Visits each pair of rectangles that meet, from left to right; passes quickly over what lies far apart. */
function sweep<S extends Side>(rects: readonly Rect<S>[], visit: (i: number, j: number) => void): void {
  const lefts = Float64Array.from(rects, ({ x }) => x);
  const rights = Float64Array.from(rects, ({ x, w }) => x + w);
  const bottoms = Float64Array.from(rects, ({ y }) => y);
  const tops = Float64Array.from(rects, ({ y, h }) => y + h);
  const order = Uint32Array.from(rects, (_, i) => i).sort((i, j) => (lefts[i] ?? 0) - (lefts[j] ?? 0));
  for (let place = 0; place < order.length; place++) {
    const i = order[place] ?? 0;
    const right = rights[i] ?? 0;
    const bottom = bottoms[i] ?? 0;
    const top = tops[i] ?? 0;
    for (let next = place + 1; next < order.length; next++) {
      const j = order[next] ?? 0;
      if ((lefts[j] ?? 0) >= right) break;
      if ((bottoms[j] ?? 0) < top && bottom < (tops[j] ?? 0)) visit(i, j);
    }
  }
}

function isMoreThanSpeck<S extends Side>(a: Rect<S>, b: Rect<S>): boolean {
  const common = intersection(a, b);
  return common !== undefined && common.w * common.h > SPECK_PT2;
}
