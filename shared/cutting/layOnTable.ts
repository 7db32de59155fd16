// Where the stack of a step lies in its drawing, and how side 1 is carried there.
import { type Head, liesOnItsSide } from '../geometry/head.ts';
import { layInto } from '../geometry/lie.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Rect, Size, Space } from '../geometry/space.ts';
import { applyToRect } from '../geometry/transform.ts';
import type { CutStep } from './order.ts';

/** How far the sheet is turned counter-clockwise, seen from above, when this edge is at the back. */
const HEADS: Readonly<Record<SheetEdge, Head>> = { lead: 0, right: 90, tail: 180, left: 270 };

/** Room kept free around the stack, in pt. */
export interface Surround {
  readonly beside: number;
  readonly above: number;
  readonly below: number;
}

/** In pt, the upper left of the drawing at the origin, y up. */
export interface LaidStack {
  readonly stack: Rect;
  /** Carries an area of side 1 into the drawing. */
  readonly toTable: (area: Rect<'side1'>) => Rect;
  /** From pt of the sheet to pt of the drawing. */
  readonly scale: number;
}

/** The first stack of a step as large as the room allows, against the back and its side guide. */
export function layOnTable(step: CutStep, room: Size, { beside, above, below }: Surround): LaidStack {
  const { area } = step.parts[0];
  const head = HEADS[step.gauge];
  const lying = liesOnItsSide(head) ? { w: area.h, h: area.w } : { w: area.w, h: area.h };
  const scale = Math.min((room.w - 2 * beside) / lying.w, (room.h - above - below) / lying.h);
  const w = lying.w * scale;
  const h = lying.h * scale;
  const x = step.side.hand === 'left' ? beside : room.w - beside - w;
  const stack = { x, y: -above - h, w, h };
  const turned = layInto<Space, Space>(stack, head);
  const toTable = (part: Rect<'side1'>) =>
    applyToRect(turned, {
      x: (part.x - area.x) * scale,
      y: (part.y - area.y) * scale,
      w: part.w * scale,
      h: part.h * scale,
    });
  return { stack, toTable, scale };
}
