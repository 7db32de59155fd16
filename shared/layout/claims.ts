// What one claims of an area, listed as plain numbers: they are compared at every cell of every area.
import type { Rect, Space } from '../geometry/space.ts';

/** A rectangle that is claimed. The strongest claims have the strength 0. */
export interface Claim<S extends Space> {
  readonly within: Rect<S>;
  readonly strength: number;
  /** Whether what lies in the exceptions is not claimed. */
  readonly hasExceptions?: boolean;
}

/** What one claims. */
export interface Claims {
  /** The left, right, bottom and top in pt of each rectangle: all it may get, its claims, the exceptions. */
  readonly boxes: readonly number[];
  /** Of each claim, the strongest first: its strength, and whether there are exceptions. */
  readonly strengths: readonly number[];
  readonly haveExceptions: readonly boolean[];
}

/** Lists what one claims: all it may get, beyond which nothing lies; its claims, the strongest first; the exceptions. */
export function listClaims<S extends Space>(
  all: Rect<S>,
  claims: readonly Claim<S>[],
  exceptions: readonly Rect<S>[],
): Claims {
  const boxes: number[] = [];
  const list = ({ x, y, w, h }: Rect<S>) => boxes.push(x, x + w, y, y + h);
  list(all);
  for (const { within } of claims) list(within);
  for (const exception of exceptions) list(exception);
  return {
    boxes,
    strengths: claims.map(({ strength }) => strength),
    haveExceptions: claims.map(({ hasExceptions = false }) => hasExceptions),
  };
}

/** The strength of the strongest claim on a point; infinite where there is none. */
export function strengthAt({ boxes, strengths, haveExceptions }: Claims, x: number, y: number): number {
  const firstException = 4 * (1 + strengths.length);
  for (let claim = 0; claim < strengths.length; claim++) {
    if (!isIn(boxes, 4 * (1 + claim), x, y)) continue;
    if (haveExceptions[claim] === true && isInAny(boxes, firstException, x, y)) continue;
    return strengths[claim] ?? 0;
  }
  return Number.POSITIVE_INFINITY;
}

function isInAny(boxes: readonly number[], from: number, x: number, y: number): boolean {
  for (let at = from; at < boxes.length; at += 4) if (isIn(boxes, at, x, y)) return true;
  return false;
}

function isIn(boxes: readonly number[], at: number, x: number, y: number): boolean {
  return (
    x > (boxes[at] ?? 0) && x < (boxes[at + 1] ?? 0) && y > (boxes[at + 2] ?? 0) && y < (boxes[at + 3] ?? 0)
  );
}
