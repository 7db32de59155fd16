// Content stream operators of a sheet, as text.
import type { Rect, Space } from '../../geometry/space.ts';
import type { Transform } from '../../geometry/transform.ts';

/** Numbers as a content stream takes them: plain decimals, to a ten-thousandth of a point. */
export function numbers(...values: readonly number[]): string {
  return values.map((value) => `${Number(value.toFixed(4)) + 0}`).join(' ');
}

/** Cuts off all that follows at the outline of these rectangles, until the graphics state is restored. */
export function clipTo(area: readonly Rect[]): string {
  return `${area.map((r) => `${numbers(r.x, r.y, r.w, r.h)} re`).join(' ')} W n`;
}

/** Lets all that follows be drawn through this transform, until the graphics state is restored. */
export function drawThrough(m: Transform<Space, Space>): string {
  return `${numbers(m.a, m.b, m.c, m.d, m.e, m.f)} cm`;
}
