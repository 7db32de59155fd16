// How something that was made upright is laid into the room it takes on a side.
import { type Head, liesOnItsSide } from './head.ts';
import type { Rect, Space } from './space.ts';
import type { Transform } from './transform.ts';

/**
 * The transform that turns something upright by its head, counter-clockwise, and lays it so that it fills `room`.
 * Made upright it has its lower left at the origin and, in pt, the size of the room or the room's size with width and
 * height exchanged, as the head asks.
 */
export function layInto<From extends Space, To extends Space>(
  room: Rect<To>,
  head: Head,
): Transform<From, To> {
  const [cos, sin] = liesOnItsSide(head) ? [0, head === 90 ? 1 : -1] : [head === 0 ? 1 : -1, 0];
  return {
    a: cos,
    b: sin,
    c: -sin,
    d: cos,
    e: head === 90 || head === 180 ? room.x + room.w : room.x,
    f: head === 180 || head === 270 ? room.y + room.h : room.y,
  };
}
