// Sharing an area out among those who claim parts of it: every point goes to the strongest claim.
import type { Rect, Space } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';

/** A rectangle that is claimed, but for what lies in others. */
export interface Claim<S extends Space> {
  readonly within: Rect<S>;
  readonly except?: readonly Rect<S>[];
}

/** What one claims. */
export interface Claims<S extends Space> {
  /** All it may get. Nothing else lies beyond. */
  readonly all: Rect<S>;
  /** The strongest first; those of a group are as strong as each other. */
  readonly groups: readonly (readonly Claim<S>[])[];
}

/**
 * What number `own` gets, as rectangles side by side, from the bottom up. A point goes to the strongest claim on it, of
 * claims as strong as each other to the first in order.
 *
 * The lines of all claims make a grid, and within one of its cells nothing changes; what is narrower than the tolerance
 * counts as nothing.
 */
export function shareOut<S extends Space>(
  own: number,
  rivals: readonly number[],
  claims: readonly Claims<S>[],
): readonly Rect<S>[] {
  const mine = claims[own];
  if (mine === undefined) return [];
  const others = rivals.flatMap((number) => {
    const theirs = claims[number];
    return theirs === undefined ? [] : [{ theirs, isFirst: number < own }];
  });
  const { xs, ys } = linesWithin(mine.all, [mine, ...others.map(({ theirs }) => theirs)]);
  const isMine = (x: number, y: number): boolean => {
    const strength = strengthAt(mine, x, y);
    for (const { theirs, isFirst } of others) {
      if (!isIn(theirs.all, x, y)) continue;
      const against = strengthAt(theirs, x, y);
      if (against < strength || (against === strength && isFirst)) return false;
    }
    return strength < mine.groups.length;
  };
  return joinCells(xs, ys, isMine);
}

function isIn<S extends Space>({ x, y, w, h }: Rect<S>, px: number, py: number): boolean {
  return px > x && px < x + w && py > y && py < y + h;
}

/** The place in order of the strongest claim on a point; past the last where there is none. */
function strengthAt<S extends Space>({ groups }: Claims<S>, x: number, y: number): number {
  for (let strength = 0; strength < groups.length; strength++) {
    for (const { within, except } of groups[strength] ?? []) {
      if (isIn(within, x, y) && !except?.some((r) => isIn(r, x, y))) return strength;
    }
  }
  return groups.length;
}

/** The upright and the level lines of all claims within a rectangle, in order. */
function linesWithin<S extends Space>(
  all: Rect<S>,
  claims: readonly Claims<S>[],
): { readonly xs: readonly number[]; readonly ys: readonly number[] } {
  const xs: number[] = [];
  const ys: number[] = [];
  const draw = ({ x, y, w, h }: Rect<S>) => {
    // What lies beyond has no line here.
    if (x > all.x + all.w || y > all.y + all.h || x + w < all.x || y + h < all.y) return;
    addLine(xs, x, all.x, all.x + all.w);
    addLine(xs, x + w, all.x, all.x + all.w);
    addLine(ys, y, all.y, all.y + all.h);
    addLine(ys, y + h, all.y, all.y + all.h);
  };
  draw(all);
  for (const { groups } of claims) {
    for (const group of groups) {
      for (const { within, except } of group) {
        draw(within);
        except?.forEach(draw);
      }
    }
  }
  const inOrder = (a: number, b: number) => a - b;
  return { xs: xs.sort(inOrder), ys: ys.sort(inOrder) };
}

/** Adds a line that lies in the range, but for one that is the same to a printer as one that is there already. */
function addLine(lines: number[], line: number, from: number, to: number): void {
  if (line < from || line > to) return;
  for (const known of lines) if (Math.abs(known - line) <= TOLERANCE) return;
  lines.push(line);
}

interface Run {
  readonly x: number;
  y: number;
  w: number;
  h: number;
}

/** The cells between the lines for whose middle `isTaken` holds, joined to runs along a row, and equal runs to one. */
function joinCells<S extends Space>(
  xs: readonly number[],
  ys: readonly number[],
  isTaken: (x: number, y: number) => boolean,
): readonly Rect<S>[] {
  const done: Run[] = [];
  let open: readonly Run[] = [];
  for (let row = 1; row < ys.length; row++) {
    const [bottom = 0, top = 0] = [ys[row - 1], ys[row]];
    const runs = runsAlong(xs, bottom, top, (x) => isTaken(x, (bottom + top) / 2));
    const goesOn = (below: Run) => runs.find((run) => run.x === below.x && run.w === below.w);
    for (const below of open) {
      const above = goesOn(below);
      if (above === undefined) done.push(below);
      else {
        above.y = below.y;
        above.h = top - below.y;
      }
    }
    open = runs;
  }
  return [...done, ...open];
}

function runsAlong(
  xs: readonly number[],
  bottom: number,
  top: number,
  isTaken: (x: number) => boolean,
): readonly Run[] {
  const runs: Run[] = [];
  let last: Run | undefined;
  for (let column = 1; column < xs.length; column++) {
    const [left = 0, right = 0] = [xs[column - 1], xs[column]];
    if (!isTaken((left + right) / 2)) last = undefined;
    else if (last !== undefined) last.w = right - last.x;
    else {
      last = { x: left, y: bottom, w: right - left, h: top - bottom };
      runs.push(last);
    }
  }
  return runs;
}
