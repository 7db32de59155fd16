// Whether a layout can be cut by a guillotine, found by looking for cuts; knows nothing of how it was made.

export interface Piece {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Rounding that lengths in pt may carry. */
const HAIR = 1e-6;

/** Whether every piece lies in the region and none over another. */
export function liesClean(
  pieces: readonly Piece[],
  region: { readonly w: number; readonly h: number },
): boolean {
  const inside = pieces.every(
    (p) => p.x >= -HAIR && p.y >= -HAIR && p.x + p.w <= region.w + 0.011 && p.y + p.h <= region.h + 0.011,
  );
  const apart = (a: Piece, b: Piece) =>
    a.x + a.w <= b.x + HAIR || b.x + b.w <= a.x + HAIR || a.y + a.h <= b.y + HAIR || b.y + b.h <= a.y + HAIR;
  return inside && pieces.every((a, i) => pieces.slice(i + 1).every((b) => apart(a, b)));
}

/** Whether cuts from edge to edge free every piece: some straight line parts them, and so on for each part. */
export function isCuttable(pieces: readonly Piece[]): boolean {
  if (pieces.length <= 1) return true;
  for (const [start, length] of [
    ['x', 'w'],
    ['y', 'h'],
  ] as const) {
    for (const line of pieces.map((p) => p[start] + p[length])) {
      const before = pieces.filter((p) => p[start] + p[length] <= line + HAIR);
      const after = pieces.filter((p) => p[start] >= line - HAIR);
      if (after.length === 0 || before.length + after.length !== pieces.length) continue;
      return isCuttable(before) && isCuttable(after);
    }
  }
  return false;
}
