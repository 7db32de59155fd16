// Snapping to equal margins on the two edges that register the second pass.
import type { Rect, Size } from '../../geometry/space.ts';
import { same } from '../../geometry/tolerance.ts';
import { lengthAlong, type SheetAxis, type Span, spanOf } from '../axis.ts';
import type { DraggedBox } from './dragged.ts';
import type { SnapTarget } from './guide.ts';

const NAMES = { x: 'equal side margins', y: 'equal lead and tail margins' } as const;

/**
 * The places that leave the same margin on both registering edges, given the block of pieces that rest. Alone on the
 * sheet that is its middle. Beside a block whose margins differ it is where the narrower one is met on the other side;
 * beside a block whose margins are equal it is flush with the block on either side. A piece whose partner follows has
 * equal margins wherever it lies, so alone it has no such place.
 */
export function marginTargets(
  axis: SheetAxis,
  dragged: DraggedBox,
  resting: Rect<'side1'> | undefined,
  sheet: Size,
): SnapTarget[] {
  const whole = lengthAlong(sheet, axis);
  const own = lengthAlong(dragged.size, axis);
  const target = (at: number, margin: number): SnapTarget => ({
    kind: 'equal-margins',
    axis,
    at,
    name: NAMES[axis],
    lines: [margin, whole - margin],
    gaps: marginsOf(margin, whole),
  });
  const middle = (whole - own) / 2;
  if (resting === undefined) return dragged.partnered ? [] : [target(middle, middle)];
  const { from, to } = spanOf(resting, axis);
  const [low, high] = [from, whole - to];
  return [
    ...(low < high || same(low, high) ? [target(whole - low - own, low)] : []),
    ...(high < low || same(low, high) ? [target(high, high)] : []),
  ];
}

function marginsOf(margin: number, whole: number): Span[] {
  return [
    { from: 0, to: margin },
    { from: whole - margin, to: whole },
  ];
}
