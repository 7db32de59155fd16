// A Gauss-Newton step of the registration: the normal equations summed over the pixels, and their solution.
import { type Displacement, NO_DISPLACEMENT } from './displacement.ts';
import type { Direction } from './hand.ts';
import type { PyramidLevel } from './pyramid.ts';

/** What is fitted of a level, in its own pixels: the middle of the picture and the rows and columns used. */
export interface LevelWindow {
  /** Pixels of the full picture in one of this level. */
  readonly scale: number;
  readonly middleX: number;
  readonly middleY: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * Sums over all pixels: `xx`, `xy` and `yy` of products of gradients, each times 1, X, Y, XX, XY, YY; `xe` and `ye` of
 * gradients times the residual, each times 1, X, Y. X and Y count from the middle.
 */
interface NormalEquations {
  readonly xx: Float64Array;
  readonly xy: Float64Array;
  readonly yy: Float64Array;
  readonly xe: Float64Array;
  readonly ye: Float64Array;
}

/** Added to what is divided by, so that a coarse level on which nothing is left to see moves nothing. */
const DAMPING = 1;

/** The normal equations of `source`, displaced, against `target`. */
export function normalEquations(
  target: PyramidLevel,
  source: PyramidLevel,
  frame: LevelWindow,
  d: Displacement,
): NormalEquations {
  const sums: NormalEquations = {
    xx: new Float64Array(6),
    xy: new Float64Array(6),
    yy: new Float64Array(6),
    xe: new Float64Array(3),
    ye: new Float64Array(3),
  };
  const { values } = source;
  const row = source.width * 3;
  const lastX = source.width - 1;
  const lastY = source.height - 1;
  for (let y = frame.top; y < frame.bottom; y++) {
    for (let x = frame.left; x < frame.right; x++) {
      const X = x + 0.5 - frame.middleX;
      const Y = y + 0.5 - frame.middleY;
      const fromX = x - d.dx / frame.scale - d.xx * X - d.xy * Y;
      const fromY = y - d.dy / frame.scale - d.yx * X - d.yy * Y;
      if (fromX < 0 || fromY < 0 || fromX >= lastX || fromY >= lastY) continue;
      const ix = Math.floor(fromX);
      const iy = Math.floor(fromY);
      const fx = fromX - ix;
      const fy = fromY - iy;
      const at = iy * row + ix * 3;
      const to = (y * target.width + x) * 3;
      let xx = 0;
      let xy = 0;
      let yy = 0;
      let xe = 0;
      let ye = 0;
      for (let c = 0; c < 3; c++) {
        const upperLeft = values[at + c] ?? 0;
        const upperRight = values[at + c + 3] ?? 0;
        const lowerLeft = values[at + c + row] ?? 0;
        const lowerRight = values[at + c + row + 3] ?? 0;
        const upper = upperLeft + fx * (upperRight - upperLeft);
        const gradientY = lowerLeft + fx * (lowerRight - lowerLeft) - upper;
        const gradientX = (1 - fy) * (upperRight - upperLeft) + fy * (lowerRight - lowerLeft);
        const residual = upper + fy * gradientY - (target.values[to + c] ?? 0);
        xx += gradientX * gradientX;
        xy += gradientX * gradientY;
        yy += gradientY * gradientY;
        xe += gradientX * residual;
        ye += gradientY * residual;
      }
      if (xx + yy === 0) continue;
      addMoments(sums.xx, xx, X, Y);
      addMoments(sums.xy, xy, X, Y);
      addMoments(sums.yy, yy, X, Y);
      addMoments(sums.xe, xe, X, Y);
      addMoments(sums.ye, ye, X, Y);
    }
  }
  return sums;
}

/** Adds `value` times 1, X, Y, XX, XY, YY, as far as `to` is long (what lies past its end is dropped). */
function addMoments(to: Float64Array, value: number, X: number, Y: number): void {
  to[0] = (to[0] ?? 0) + value;
  to[1] = (to[1] ?? 0) + value * X;
  to[2] = (to[2] ?? 0) + value * Y;
  if (to.length === 3) return;
  to[3] = (to[3] ?? 0) + value * X * X;
  to[4] = (to[4] ?? 0) + value * X * Y;
  to[5] = (to[5] ?? 0) + value * Y * Y;
}

/** The step of a translation along the observable directions: none, one, or two at right angles. */
export function gaussNewtonTranslation(
  sums: NormalEquations,
  directions: readonly Direction[],
): Displacement {
  const [xx = 0] = sums.xx;
  const [xy = 0] = sums.xy;
  const [yy = 0] = sums.yy;
  const [xe = 0] = sums.xe;
  const [ye = 0] = sums.ye;
  const [only, second] = directions;
  if (only === undefined) return NO_DISPLACEMENT;
  if (second === undefined) {
    const strength = xx * only.x ** 2 + 2 * xy * only.x * only.y + yy * only.y ** 2;
    const along = (xe * only.x + ye * only.y) / (strength + DAMPING);
    return { ...NO_DISPLACEMENT, dx: along * only.x, dy: along * only.y };
  }
  const [dx = 0, dy = 0] = solve(
    [
      [xx + DAMPING, xy],
      [xy, yy + DAMPING],
    ],
    [xe, ye],
  );
  return { ...NO_DISPLACEMENT, dx, dy };
}

/** The step of all six parameters. Parameters without structure are held back by a little damping. */
export function gaussNewtonAffine(sums: NormalEquations): Displacement {
  const block = (m: Float64Array) => {
    const [one = 0, x = 0, y = 0, xx = 0, xy = 0, yy = 0] = m;
    return [
      [one, x, y],
      [x, xx, xy],
      [y, xy, yy],
    ] as const;
  };
  const [a, b, d] = [block(sums.xx), block(sums.xy), block(sums.yy)];
  const matrix = [0, 1, 2, 3, 4, 5].map((r) =>
    [0, 1, 2, 3, 4, 5].map((c) => {
      const m = r < 3 && c < 3 ? a : r >= 3 && c >= 3 ? d : b;
      const value = m[r % 3]?.[c % 3] ?? 0;
      return r === c ? value * (1 + 1e-6) + DAMPING : value;
    }),
  );
  const [dx = 0, xx = 0, xy = 0, dy = 0, yx = 0, yy = 0] = solve(matrix, [...sums.xe, ...sums.ye]);
  return { dx, dy, xx, xy, yx, yy };
}

/** Solves a small symmetric system by elimination; its matrix is positive definite. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  const n = rows.length;
  for (let pivot = 0; pivot < n; pivot++) {
    const by = rows[pivot] ?? [];
    for (let r = 0; r < n; r++) {
      const row = rows[r];
      if (r === pivot || row === undefined) continue;
      const factor = (row[pivot] ?? 0) / (by[pivot] ?? 1);
      for (let c = pivot; c <= n; c++) row[c] = (row[c] ?? 0) - factor * (by[c] ?? 0);
    }
  }
  return rows.map((row, i) => (row[n] ?? 0) / (row[i] ?? 1));
}
