// Hatching: paper that falls away.
import type { Rect } from '../geometry/space.ts';
import type { PathShape, Stroke } from '../pdf/document/shape.ts';

/** Between two lines of the hatch, along x, in pt. */
const LINE_STEP_PT = 5;

/** Slanting lines that fill a rectangle, in one path. */
export function hatchLines({ x, y, w, h }: Rect, stroke: Stroke): PathShape {
  const contours = [];
  for (let start = LINE_STEP_PT - h; start < w; start += LINE_STEP_PT) {
    // The line rises by 45 degrees from (x + start, y); only what lies inside is drawn.
    const from = Math.max(0, start);
    const to = Math.min(w, start + h);
    contours.push({
      from: { x: x + from, y: y + from - start },
      along: [{ x: x + to, y: y + to - start }],
      closed: false,
    });
  }
  return { kind: 'path', contours, stroke };
}
