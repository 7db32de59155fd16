// The arrow that shows how a stack is turned on the table before it is cut.
import type { Point } from '../geometry/space.ts';
import { curve, polygon, type Shape } from '../pdf/document/shape.ts';
import type { QuarterTurns } from './order.ts';

/** How far the handles of a cubic curve reach that stands for a quarter of a circle of radius 1. */
const BEZIER_CIRCLE = 0.5523;
const TIP_PT = 6;
const STROKE = { tone: 'ink', width: 2 } as const;

/** An arc about `middle` with a tip at its end, as the stack turns seen from above; nothing for no turn. */
export function drawTurnArrow(turned: QuarterTurns, middle: Point, radius: number): readonly Shape[] {
  if (turned === 0) return [];
  // Clockwise from the left over the top; counter-clockwise is its mirror.
  const sense = turned === -1 ? -1 : 1;
  const at = (right: number, up: number): Point => ({
    x: middle.x + sense * right * radius,
    y: middle.y + up * radius,
  });
  const first = curve(
    at(-1, 0),
    { c1: at(-1, BEZIER_CIRCLE), c2: at(-BEZIER_CIRCLE, 1), to: at(0, 1) },
    STROKE,
  );
  if (turned !== 2) return [first, tip(at(0, 1), { x: sense, y: 0 })];
  const second = curve(
    at(0, 1),
    { c1: at(BEZIER_CIRCLE, 1), c2: at(1, BEZIER_CIRCLE), to: at(1, 0) },
    STROKE,
  );
  return [first, second, tip(at(1, 0), { x: 0, y: -1 })];
}

/** A tip whose base is at `base` and which points along `way`. */
function tip(base: Point, way: Point): Shape {
  const half = TIP_PT * 0.6;
  return polygon(
    [
      { x: base.x + way.x * TIP_PT, y: base.y + way.y * TIP_PT },
      { x: base.x - way.y * half, y: base.y + way.x * half },
      { x: base.x + way.y * half, y: base.y - way.x * half },
    ],
    { fill: 'ink' },
  );
}
