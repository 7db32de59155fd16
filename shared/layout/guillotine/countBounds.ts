// How many identical pieces a region can hold at the very most, however they are laid.
import type { Stops } from './stops.ts';

/**
 * No layout, cut by a guillotine or not, holds more cells of a x b in w x h: by area, and by bars. A cell is made of
 * bars of its own length (and of its own width), and bars of length k leave at least min(r s, (k - r)(k - s)) of
 * w x h bare, r and s being what is left of w and h after dividing by k. Whole numbers (ticks).
 *
 * @source F. W. Barnes, Packing the maximum number of m x n tiles in a large p x q rectangle, Discrete Mathematics 26
 * (1979) 93-100 (from memory).
 */
export function mostCells(w: number, h: number, a: number, b: number): number {
  const bare = Math.max(bareAfterBars(w, h, a), bareAfterBars(w, h, b));
  return Math.floor((w * h - bare) / (a * b) + ROUNDING);
}

/** The least of the bounds on cells of a x b, lying either way, in w x h. Whole numbers (ticks); both ways must fit. */
export function mostAnyhow(w: number, h: number, a: number, b: number): number {
  return Math.min(mostCells(w, h, a, b), mostByCounting(w, h, a, b));
}

/**
 * The same bound for the parts of a room: no layout of the part up to two stops (by their places) holds more cells of
 * a x b, lying either way. Parts are counted in line at the few ratios at which the count along the whole room turns.
 */
export function mostUpTo(
  { across, up }: Stops,
  a: number,
  b: number,
): (column: number, row: number) => number {
  const [w, h] = [across.at(-1) as number, up.at(-1) as number];
  const ofWhole = mostAnyhow(w, h, a, b);
  const ratios = new Set([w, h].flatMap((room) => slopes(cornersInLine(room, a, b))).filter((r) => r > 0));
  const alongW = Array.from(across, (stop) => cornersInLine(stop, a, b));
  const alongH = Array.from(up, (stop) => cornersInLine(stop, a, b));
  const counts = Array.from(ratios, (r) => ({
    r,
    across: Float64Array.from(alongW, (corners) => mostInLine(corners, r)),
    up: Float64Array.from(alongH, (corners) => mostInLine(corners, r)),
  }));
  return (column, row) => {
    if (column === across.length - 1 && row === up.length - 1) return ofWhole;
    let most = mostCells(across[column] as number, up[row] as number, a, b);
    for (const { r, across, up } of counts) {
      const counted = ((across[column] as number) * (up[row] as number)) / r;
      if (counted < most) most = Math.floor(counted + ROUNDING);
    }
    return most;
  };
}

/** Areas in ticks are beyond the whole numbers that float64 holds; a bound may only err upwards. */
const ROUNDING = 1e-9;

function bareAfterBars(w: number, h: number, k: number): number {
  const r = w % k;
  const s = h % k;
  return Math.min(r * s, (k - r) * (k - s));
}

/**
 * No layout of cells of a x b, lying either way, holds more in w x h: by counting in line. Let the side a count as `r`
 * and the side b as 1, whatever their lengths; then w counts as much as the most that fits in line along it, h likewise,
 * and the cells, each r large, hold no more than the region does. True for every r > 0. Whole numbers (ticks); both ways
 * to lie must fit.
 *
 * @source Fekete & Schepers, Mathematical Methods of Operations Research 60 (2004) 311-329: conservative scales (from
 * memory).
 */
function mostByCounting(w: number, h: number, a: number, b: number): number {
  const alongW = cornersInLine(w, a, b);
  const alongH = cornersInLine(h, a, b);
  const between = alongW.flatMap(([i, j]) => alongH.map(([k, l]) => Math.sqrt((j * l) / (i * k))));
  const ratios = [...slopes(alongW), ...slopes(alongH), ...between].filter(
    (r) => r > 0 && Number.isFinite(r),
  );
  const least = Math.min(...ratios.map((r) => (mostInLine(alongW, r) * mostInLine(alongH, r)) / r));
  return Math.floor(least + ROUNDING);
}

type InLine = readonly [ofA: number, ofB: number];

/** The corners of the hull around all numbers of sides a and b that fit in line along `room`. */
function cornersInLine(room: number, a: number, b: number): InLine[] {
  const corners: InLine[] = [];
  for (let i = 0; i * a <= room; i++) {
    const next: InLine = [i, Math.floor((room - i * a) / b)];
    while (corners.length > 1 && !bendsDown(corners.at(-2) as InLine, corners.at(-1) as InLine, next))
      corners.pop();
    corners.push(next);
  }
  return corners;
}

function bendsDown([i, j]: InLine, [k, l]: InLine, [m, n]: InLine): boolean {
  return (k - i) * (n - j) < (m - i) * (l - j);
}

/** How many sides b each hull edge gives up for one side a. */
function slopes(corners: readonly InLine[]): number[] {
  return corners.slice(1).map(([i, j], k) => {
    const [before, above] = corners[k] as InLine;
    return (above - j) / (i - before);
  });
}

function mostInLine(corners: readonly InLine[], r: number): number {
  return Math.max(...corners.map(([i, j]) => r * i + j));
}
