// How far, and with what slope, something was found off its place in a picture.

/**
 * Where the art was found, in pixels with y down: what belongs at (x, y) from the middle of the picture was printed
 * at (x + dx + xx x + xy y, y + dy + yx x + yy y).
 */
export interface Displacement {
  readonly dx: number;
  readonly dy: number;
  readonly xx: number;
  readonly xy: number;
  readonly yx: number;
  readonly yy: number;
}

export const NO_DISPLACEMENT: Displacement = { dx: 0, dy: 0, xx: 0, xy: 0, yx: 0, yy: 0 };

/** The displacement and one more step, given in pixels of a level that are `scale` times as large. */
export function compose(d: Displacement, step: Displacement, scale: number): Displacement {
  return {
    dx: d.dx + step.dx * scale,
    dy: d.dy + step.dy * scale,
    xx: d.xx + step.xx,
    xy: d.xy + step.xy,
    yx: d.yx + step.yx,
    yy: d.yy + step.yy,
  };
}

/** The farthest that it moves anything no farther than (x, y) from the middle, in pixels, by each term alone. */
export function largestMove(d: Displacement, x: number, y: number): number {
  const terms = [d.dx, d.dy, d.xx * x, d.xy * y, d.yx * x, d.yy * y];
  return Math.max(...terms.map((term) => Math.abs(term)));
}
