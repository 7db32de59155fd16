// How far each bleed is printed: whole where there is room, to the middle of the gap where two would meet.
import { grow, growEdges, intersection } from '../geometry/rect.ts';
import type { Rect, Side } from '../geometry/space.ts';
import { within } from '../geometry/tolerance.ts';
import type { Bleeding } from './bleeding.ts';
import { type Claims, listClaims } from './claims.ts';
import { beyondLimit, coversEdge, FACING_EDGES, type Facing, faceOf } from './facing.ts';
import { findRivals, type Rivals, SPECK_PT2 } from './rivals.ts';
import { shareGap } from './shareOut.ts';

/** A printed area: rectangles that lie side by side, in pt. One where nothing is near, more where the bleed has steps. */
export type BleedArea<S extends Side> = readonly Rect<S>[];

/** A piece among those whose bleed it would meet. */
interface Standing<S extends Side> extends Bleeding<S> {
  readonly facing: readonly Facing<S>[];
  /** The trim and all of its bleed. */
  readonly all: Rect<S>;
  /** The trim and its bleed, cut back on the whole of an edge wherever a rival is near: no two of them meet. */
  readonly undisputed: Rect<S>;
  /** Whether each edge that is cut back faces one rival over its whole length. */
  readonly isEven: boolean;
}

/**
 * The printed area of each of them, in pt: its trim and its bleed, as far as that is not a neighbour's.
 *
 * All that lies within the bleed of some trim is printed, and each point of it by one piece only:
 * - half of the narrowest gap all around a trim is its own;
 * - so is what lies straight before an edge, to the middle of the gap where a neighbour faces it (or to where a
 *   neighbour with less bleed than its half of the gap ends), and whole where none does;
 * - where what lies before an edge of one lies before an edge of another too, around the corner, the edge that no
 *   neighbour faces goes first, then the one at the side;
 * - a corner gets what is left.
 *
 * Pieces that overlap are left as they are; that is a fault of its own.
 */
export function bleedAreas<S extends Side>(placed: readonly Bleeding<S>[]): readonly BleedArea<S>[] {
  const rivals = findRivals(placed);
  const standings = placed.map((one, i) => stand(one, rivals[i], placed));
  const listed: (Claims | undefined)[] = [];
  const claimed = (i: number): readonly Claims[] => {
    const standing = standings[i];
    if (standing === undefined) return [];
    const claims = listed[i] ?? claimsOf(standing);
    listed[i] = claims;
    return [claims];
  };
  return standings.map((one, i) => {
    if (one.facing.length === 0) return [one.all];
    const numbers = rivals[i]?.numbers ?? [];
    if (isCutEvenly(one, numbers, standings)) return [one.undisputed];
    const others = numbers.flatMap((n) => claimed(n).map((claims) => ({ claims, isFirst: n < i })));
    return claimed(i).flatMap((mine) => shareGap<S>(mine, others));
  });
}

function stand<S extends Side>(
  one: Bleeding<S>,
  rivals: Rivals | undefined,
  placed: readonly Bleeding<S>[],
): Standing<S> {
  const { trim, bleed } = one;
  const all = grow(trim, bleed);
  const facing: Facing<S>[] = [];
  const edges = { left: bleed, right: bleed, bottom: bleed, top: bleed };
  for (const number of rivals?.numbers ?? []) {
    const rival = placed[number];
    if (rival === undefined) continue;
    const face = faceOf(one, rival);
    facing.push(face);
    edges[face.edge] = Math.min(edges[face.edge], face.limit);
  }
  const isEven =
    rivals?.isAstray !== true &&
    FACING_EDGES.every(
      (edge) =>
        edges[edge] === bleed ||
        facing.some((f) => f.edge === edge && within(f.limit, edges[edge]) && coversEdge(f, trim)),
    );
  return { trim, bleed, facing, all, undisputed: growEdges(trim, edges), isEven };
}

/**
 * Whether a piece prints what is undisputed and no more, as in a plain grid; the claims say the same, at length.
 *
 * Where it and its rivals are even, none of them claims anything before an edge beyond what is undisputed. So each
 * keeps that, and if all that is left of this bleed is undisputed of a rival, nothing of it remains.
 */
function isCutEvenly<S extends Side>(
  one: Standing<S>,
  rivals: readonly number[],
  standings: readonly Standing<S>[],
): boolean {
  if (!one.isEven) return false;
  let left = areaOf(one.all) - areaOf(one.undisputed);
  for (const number of rivals) {
    const rival = standings[number];
    if (rival?.isEven !== true) return false;
    const taken = intersection(one.all, rival.undisputed);
    if (taken !== undefined) left -= areaOf(taken);
  }
  return left <= SPECK_PT2;
}

function areaOf<S extends Side>({ w, h }: Rect<S>): number {
  return w * h;
}

/** What a piece claims against its rivals. */
function claimsOf<S extends Side>(one: Standing<S>): Claims {
  const { trim, bleed, facing, all, undisputed } = one;
  const halfGap = facing.reduce((least, { gap }) => Math.min(least, gap / 2), bleed);
  const core = intersection(undisputed, grow(trim, Math.max(0, halfGap))) ?? trim;
  return listClaims(
    all,
    [
      { strength: 0, within: core },
      { strength: 0, within: beside(undisputed, trim) },
      { strength: 0, within: above(undisputed, trim) },
      { strength: 1, within: beside(all, trim), hasExceptions: true },
      { strength: 2, within: above(all, trim), hasExceptions: true },
      { strength: 3, within: undisputed },
      { strength: 4, within: all },
    ],
    facing.flatMap((face) => (face.isAcrossCorner ? [] : [beyondLimit(face, one)])),
  );
}

/** What of a printed area lies straight before the left and right edges of its trim. */
function beside<S extends Side>(area: Rect<S>, trim: Rect<S>): Rect<S> {
  return { ...area, y: trim.y, h: trim.h };
}

/** What of a printed area lies straight before the upper and lower edges of its trim. */
function above<S extends Side>(area: Rect<S>, trim: Rect<S>): Rect<S> {
  return { ...area, x: trim.x, w: trim.w };
}
