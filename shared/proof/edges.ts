// The four edges of something upright, and where they are when it lies otherwise.
import type { Edges, Size } from '../geometry/space.ts';
import type { Reaches } from '../layout/bleedReach.ts';
import { type Direction, type Step, undoSteps } from './hand.ts';

/** All four, in the order in which they are listed. */
export const FACE_EDGES = ['left', 'right', 'top', 'bottom'] as const;

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

/** How far a bleed reaches around a trim on side 1, as it reaches around the face that these steps bring up. */
export function onFace(reaches: Reaches, trim: Size, steps: readonly Step[]): Reaches {
  const at = (edge: keyof Edges) => {
    const onSide = edgeTowards(undoSteps(OUTWARD[edge], steps));
    const along = undoSteps(edge === 'top' || edge === 'bottom' ? { x: 1, y: 0 } : { x: 0, y: 1 }, steps);
    if (along.x + along.y > 0) return reaches[onSide];
    const length = onSide === 'top' || onSide === 'bottom' ? trim.w : trim.h;
    const turned = reaches[onSide].map((s) => ({ ...s, from: length - s.to, to: length - s.from }));
    return turned.reverse();
  };
  return { left: at('left'), right: at('right'), top: at('top'), bottom: at('bottom') };
}
