// Snapping: what is dragged is drawn to the nearest place where it would rightly lie, in each direction by itself.
import type { Rect } from '../../geometry/space.ts';
import { same } from '../../geometry/tolerance.ts';
import { AXES, meet, type SheetAxis, spanOf } from '../axis.ts';
import { GUIDE_KINDS, type Guide, type SnapTarget } from './guide.ts';

export interface Snap {
  /** How far what is dragged has to move on from where the hand put it, in pt. */
  readonly dx: number;
  readonly dy: number;
  /** What holds it there, the weightiest first; empty in a direction where nothing is near. */
  readonly guides: readonly Guide[];
}

/**
 * Draws `moving`, the trims that are dragged as the hand has put them, to the nearest target of each axis that is no
 * farther than `reach` pt (the pixels that a hand can tell, over the zoom). Of targets that are equally near, the
 * weightier kind wins. Every target that then holds is a guide, once for its kind.
 */
export function snap(moving: Rect<'side1'>, targets: readonly SnapTarget[], reach: number): Snap {
  const [x, y] = AXES.map((axis) => snapAlong(axis, moving, targets, reach));
  return {
    dx: x?.by ?? 0,
    dy: y?.by ?? 0,
    guides: [...(x?.guides ?? []), ...(y?.guides ?? [])],
  };
}

function snapAlong(axis: SheetAxis, moving: Rect<'side1'>, targets: readonly SnapTarget[], reach: number) {
  const { from } = spanOf(moving, axis);
  const across = spanOf(moving, axis === 'x' ? 'y' : 'x');
  const near = targets
    .filter(
      (t) =>
        t.axis === axis &&
        Math.abs(t.at - from) <= reach &&
        (t.beside === undefined || meet(t.beside, across)),
    )
    .sort((a, b) => Math.abs(a.at - from) - Math.abs(b.at - from) || weight(a) - weight(b));
  const nearest = near[0];
  if (nearest === undefined) return undefined;
  const holding = near.filter((t) => same(t.at, nearest.at)).sort((a, b) => weight(a) - weight(b));
  const firstOfKind = holding.filter((t, i) => holding.findIndex((u) => u.kind === t.kind) === i);
  return { by: nearest.at - from, guides: firstOfKind.map(guideOf) };
}

function weight(target: SnapTarget): number {
  return GUIDE_KINDS.indexOf(target.kind);
}

function guideOf({ kind, name, axis, lines, gaps }: SnapTarget): Guide {
  return { kind, name, axis, lines, gaps };
}
