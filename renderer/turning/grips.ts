// Taking the sheet by an edge: which turn it makes, and how far the hand is from the axis.
import { lengthAlong, mirroredAxis } from '../../shared/bench/axis.ts';
import { type Grip, turnByEdge } from '../../shared/bench/turning.ts';
import { toScreen, type View } from '../../shared/bench/view.ts';
import type { SheetEdge } from '../../shared/geometry/sheet.ts';
import type { Point, Side, Size } from '../../shared/geometry/space.ts';
import { apply } from '../../shared/geometry/transform.ts';
import type { Turn } from '../../shared/geometry/turn.ts';

/** On the screen, where y runs down, these edges are at the high end of their axis. */
const HIGH_ENDS: readonly SheetEdge[] = ['right', 'tail'];

/** The middle of the sheet on the screen. */
export function middleOnScreen(view: View, sheet: Size): Point<'screen'> {
  return apply(toScreen<Side>(view), { x: sheet.w / 2, y: sheet.h / 2 });
}

/** The grip of a hand that takes this edge at a point of the screen; lengths in px. */
export function gripAt(edge: SheetEdge, at: Point<'screen'>, view: View, sheet: Size): Grip {
  const axis = mirroredAxis(turnByEdge(edge));
  const end = HIGH_ENDS.includes(edge) ? 1 : -1;
  const grabbed = end * (at[axis] - middleOnScreen(view, sheet)[axis]);
  return { axis, end, grabbed: Math.max(1, grabbed) };
}

/** The grip of a sheet that is turned without a hand: by its right edge, or by its tail. */
export function gripFor(turn: Turn, view: View, sheet: Size): Grip {
  const axis = mirroredAxis(turn);
  return { axis, end: 1, grabbed: (lengthAlong(sheet, axis) / 2) * view.zoom };
}

/** How far the hand is from the axis, counted towards where it took the sheet, in px. */
export function handFrom(at: Point<'screen'>, grip: Grip, view: View, sheet: Size): number {
  return grip.end * (at[grip.axis] - middleOnScreen(view, sheet)[grip.axis]);
}
