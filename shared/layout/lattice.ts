// A lattice of upright and level lines over a rectangle: what lies on which of its cells, and cells joined again.
import type { Rect, Space } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';

/** The lines in each direction, in order, and the middles between them, in pt. */
export interface Lattice {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly columns: readonly number[];
  readonly rows: readonly number[];
}

/**
 * The lattice of the edges of all these boxes (left, right, bottom and top of each, one after another), as far as they
 * lie within the first box of `whole`. Of lines that are the same to a printer the first counts.
 */
export function latticeOf(whole: readonly number[], boxes: readonly (readonly number[])[]): Lattice {
  const left = whole[0] ?? 0;
  const right = whole[1] ?? 0;
  const bottom = whole[2] ?? 0;
  const top = whole[3] ?? 0;
  const xs: number[] = [];
  const ys: number[] = [];
  for (const some of boxes) {
    for (let at = 0; at < some.length; at += 4) {
      const boxLeft = some[at] ?? 0;
      const boxRight = some[at + 1] ?? 0;
      const boxBottom = some[at + 2] ?? 0;
      const boxTop = some[at + 3] ?? 0;
      // What lies beyond has no line here.
      if (boxLeft > right || boxBottom > top || boxRight < left || boxTop < bottom) continue;
      addLine(xs, boxLeft, left, right);
      addLine(xs, boxRight, left, right);
      addLine(ys, boxBottom, bottom, top);
      addLine(ys, boxTop, bottom, top);
    }
  }
  return { xs, ys, columns: middles(xs), rows: middles(ys) };
}

/** Adds a line to those in order, if it lies in the range and none is there already. */
function addLine(lines: number[], line: number, from: number, to: number): void {
  if (line < from || line > to) return;
  let place = lines.length;
  for (; place > 0; place--) {
    const before = lines[place - 1] ?? from;
    if (before < line - TOLERANCE) break;
    if (before <= line + TOLERANCE) return;
  }
  lines.splice(place, 0, line);
}

function middles(lines: readonly number[]): readonly number[] {
  const between: number[] = [];
  for (let i = 1; i < lines.length; i++) between.push(((lines[i - 1] ?? 0) + (lines[i] ?? 0)) / 2);
  return between;
}

/** How many of them, in order, are no larger than this. */
export function countUpTo(numbers: readonly number[], most: number): number {
  let count = 0;
  for (const number of numbers) {
    if (number > most) break;
    count++;
  }
  return count;
}

/** How many of them, in order, are smaller than this. */
export function countBelow(numbers: readonly number[], limit: number): number {
  let count = 0;
  for (const number of numbers) {
    if (number >= limit) break;
    count++;
  }
  return count;
}

interface Run {
  readonly x: number;
  y: number;
  w: number;
  h: number;
}

/** The cells that are taken (by column and row), joined to runs along a row, and equal runs to one. */
export function joinCells<S extends Space>(
  { xs, ys }: Lattice,
  isTaken: (column: number, row: number) => boolean,
): readonly Rect<S>[] {
  const done: Run[] = [];
  let open: readonly Run[] = [];
  for (let row = 1; row < ys.length; row++) {
    const [bottom = 0, top = 0] = [ys[row - 1], ys[row]];
    const runs = runsAlong(xs, bottom, top, (column) => isTaken(column, row - 1));
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
  isTaken: (column: number) => boolean,
): readonly Run[] {
  const runs: Run[] = [];
  let last: Run | undefined;
  for (let column = 1; column < xs.length; column++) {
    const [left = 0, right = 0] = [xs[column - 1], xs[column]];
    if (!isTaken(column - 1)) last = undefined;
    else if (last !== undefined) last.w = right - last.x;
    else {
      last = { x: left, y: bottom, w: right - left, h: top - bottom };
      runs.push(last);
    }
  }
  return runs;
}
