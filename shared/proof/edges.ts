// The four edges of something upright, and where they are when it lies otherwise.
import type { Edges } from '../geometry/space.ts';
import { type Direction, type Step, undoSteps } from './hand.ts';

/** All four, in the order they are told. */
export const EDGES = ['left', 'right', 'top', 'bottom'] as const;

/** Where each edge lies, seen from the middle. */
export const OUTWARD: Readonly<Record<keyof Edges, Direction>> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  top: { x: 0, y: 1 },
  bottom: { x: 0, y: -1 },
};

/** The edge that lies in this direction, which is along an axis. */
export function edgeTowards({ x, y }: Direction): keyof Edges {
  if (x !== 0) return x < 0 ? 'left' : 'right';
  return y < 0 ? 'bottom' : 'top';
}

/** Lengths at the edges of a trim on side 1, as lengths at the edges of the face that these steps bring up. */
export function onFace(lengths: Edges, steps: readonly Step[]): Edges {
  const at = (edge: keyof Edges) => lengths[edgeTowards(undoSteps(OUTWARD[edge], steps))];
  return { left: at('left'), right: at('right'), top: at('top'), bottom: at('bottom') };
}
