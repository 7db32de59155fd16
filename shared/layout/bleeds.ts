// How far each bleed is printed: whole where there is room, to the middle of the gap where two would meet.
import { grow, growEdges, intersection, overlap } from '../geometry/rect.ts';
import type { Edges, Rect, Side } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';
import { type Claims, shareOut } from './shareOut.ts';

/** A trim rectangle and the bleed its art has, in pt. */
export interface Bleeding<S extends Side> {
  readonly trim: Rect<S>;
  readonly bleed: number;
}

/** A printed area: rectangles that lie side by side, in pt. One where nothing is near, more where the bleed has steps. */
export type Area<S extends Side> = readonly Rect<S>[];

const EDGES = ['left', 'right', 'bottom', 'top'] as const;

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
export function bleedAreas<S extends Side>(placed: readonly Bleeding<S>[]): readonly Area<S>[] {
  const rivals = findRivals(placed);
  const claims = placed.map((one, i) => claimsOf(one, rivals[i] ?? []));
  const indexOf = new Map(placed.map((one, i) => [one, i]));
  return placed.map((one, i) => {
    const near = (rivals[i] ?? []).map((rival) => indexOf.get(rival) ?? 0);
    return near.length === 0 ? [grow(one.trim, one.bleed)] : shareOut<S>(i, near, claims);
  });
}

/** For each of them the others whose bleed it would meet. */
function findRivals<S extends Side>(placed: readonly Bleeding<S>[]): readonly (readonly Bleeding<S>[])[] {
  const rivals = placed.map((): Bleeding<S>[] => []);
  placed.forEach((one, i) => {
    for (let j = i + 1; j < placed.length; j++) {
      const other = placed[j];
      if (other === undefined || !meet(one, other)) continue;
      rivals[i]?.push(other);
      rivals[j]?.push(one);
    }
  });
  return rivals;
}

/** Whether their bleeds meet; passes quickly over what lies far apart, which on a sheet of many is nearly all. */
function meet<S extends Side>(one: Bleeding<S>, other: Bleeding<S>): boolean {
  const { trim: a } = one;
  const { trim: b } = other;
  const reach = one.bleed + other.bleed;
  if (a.x - b.x - b.w >= reach || b.x - a.x - a.w >= reach) return false;
  if (a.y - b.y - b.h >= reach || b.y - a.y - a.h >= reach) return false;
  return overlap(grow(a, one.bleed), grow(b, other.bleed)) && !overlap(a, b);
}

/** What a piece claims against its rivals, the strongest claims first. */
function claimsOf<S extends Side>(one: Bleeding<S>, rivals: readonly Bleeding<S>[]): Claims<S> {
  const { trim, bleed } = one;
  const all = grow(trim, bleed);
  const facing = rivals.map((rival) => faceOf(one, rival));
  const edges = { left: bleed, right: bleed, bottom: bleed, top: bleed };
  for (const { edge, limit } of facing) edges[edge] = Math.min(edges[edge], limit);
  // Cut back on the whole of an edge, no two of them meet.
  const undisputed = growEdges(trim, edges);
  const halfGap = Math.max(0, Math.min(bleed, ...facing.map(({ gap }) => gap / 2)));
  const core = intersection(undisputed, grow(trim, halfGap)) ?? trim;
  const beyond = facing.flatMap(({ beyond }) => (beyond === undefined ? [] : [beyond]));
  return {
    all,
    groups: [
      [{ within: core }, { within: beside(undisputed, trim) }, { within: above(undisputed, trim) }],
      [{ within: beside(all, trim), except: beyond }],
      [{ within: above(all, trim), except: beyond }],
      [{ within: undisputed }],
      [{ within: all }],
    ],
  };
}

/** What of a printed area lies straight before the left and right edges of its trim. */
function beside<S extends Side>(area: Rect<S>, trim: Rect<S>): Rect<S> {
  return { ...area, y: trim.y, h: trim.h };
}

/** What of a printed area lies straight before the upper and lower edges of its trim. */
function above<S extends Side>(area: Rect<S>, trim: Rect<S>): Rect<S> {
  return { ...area, x: trim.x, w: trim.w };
}

/** How a piece faces a rival. */
interface Facing<S extends Side> {
  /** The edge across the widest gap between them, and that gap in pt. */
  readonly edge: keyof Edges;
  readonly gap: number;
  /** How far its bleed may go there. */
  readonly limit: number;
  /** What lies farther, over the breadth of the rival; none where they face each other only across a corner. */
  readonly beyond: Rect<S> | undefined;
}

function faceOf<S extends Side>({ trim, bleed }: Bleeding<S>, rival: Bleeding<S>): Facing<S> {
  const { trim: other } = rival;
  const gaps: Edges = {
    left: trim.x - (other.x + other.w),
    right: other.x - (trim.x + trim.w),
    bottom: trim.y - (other.y + other.h),
    top: other.y - (trim.y + trim.h),
  };
  const edge = EDGES.reduce((widest, e) => (gaps[e] > gaps[widest] ? e : widest));
  const gap = gaps[edge];
  const limit = Math.max(0, gap / 2, gap - rival.bleed);
  const isAcrossCorner =
    Math.max(gaps.left, gaps.right) > -TOLERANCE && Math.max(gaps.bottom, gaps.top) > -TOLERANCE;
  const past = Math.max(0, bleed - limit);
  const beyond = (): Rect<S> => {
    switch (edge) {
      case 'left':
        return { ...other, x: trim.x - bleed, w: past };
      case 'right':
        return { ...other, x: trim.x + trim.w + limit, w: past };
      case 'bottom':
        return { ...other, y: trim.y - bleed, h: past };
      case 'top':
        return { ...other, y: trim.y + trim.h + limit, h: past };
    }
  };
  return { edge, gap, limit, beyond: isAcrossCorner ? undefined : beyond() };
}
