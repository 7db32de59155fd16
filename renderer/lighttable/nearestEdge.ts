// Which edge of a held piece a hand takes.
import type { SheetEdge } from '../../shared/geometry/sheet.ts';
import type { Point, Rect } from '../../shared/geometry/space.ts';

/** How far inside the paper, as a share of its width or height, a hand still takes an edge. */
const REACH_INSIDE_SHARE = 0.25;
/** How far outside, in px. */
const REACH_OUTSIDE_PX = 16;

/** The edge that a hand takes at this point, or `undefined` in the middle of the paper and beside it. */
export function nearestEdge(at: Point<'screen'>, { x, y, w, h }: Rect<'screen'>): SheetEdge | undefined {
  const inside: Readonly<Record<SheetEdge, number>> = {
    left: at.x - x,
    right: x + w - at.x,
    lead: at.y - y,
    tail: y + h - at.y,
  };
  const edges = Object.keys(inside) as SheetEdge[];
  if (edges.some((edge) => inside[edge] < -REACH_OUTSIDE_PX)) return undefined;
  const share = (edge: SheetEdge) => inside[edge] / (edge === 'left' || edge === 'right' ? w : h);
  const [nearest] = edges.sort((a, b) => share(a) - share(b));
  return nearest !== undefined && share(nearest) <= REACH_INSIDE_SHARE ? nearest : undefined;
}
