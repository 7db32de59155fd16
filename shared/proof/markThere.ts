// Whether a mark is printed where the geometry of the marks says, looked at along its strokes.
import type { Point, Rect } from '../geometry/space.ts';
import { apply } from '../geometry/transform.ts';
import { boundsOf, type Mark } from '../marks/mark.ts';
import { POINTS_PER } from '../units/length.ts';
import { inkLevel } from './raster.ts';
import { pixelsUnder, type SideDrawing } from './sideDrawing.ts';

/** A hairline of black that falls between two pixels darkens each of them by more levels than this. */
const MIN_INK_LEVELS = 32;

/** The share of the samples along a mark at which it must be seen. */
const MIN_SEEN_SHARE = 0.9;

/** A stroke may be so far from its place. */
const MAX_OFF_MM = 0.17;

/** So many samples are taken across a shape, each way. */
const SAMPLES_ACROSS = 9;

/** Whether `mark` is there. Where another of `all` is knocked out of it, it is not looked for. */
export function isThere(mark: Mark, all: readonly Mark[], side: SideDrawing): boolean {
  const bounds = boundsOf(mark);
  if (mark.ink === 'paper') return inkLevels(bounds, side).some((level) => level < MIN_INK_LEVELS);
  if (mark.kind === 'words') return isSet(mark, bounds, side);
  const knockedOut = all.filter(({ ink }) => ink === 'paper').map(boundsOf);
  const samples = samplesOf(mark, side.toPixels.a).filter(
    (point) => !knockedOut.some((rect) => isIn(rect, point)),
  );
  const seen = samples.filter((point) => inkNear(point, side) >= MIN_INK_LEVELS).length;
  return seen >= samples.length * MIN_SEEN_SHARE;
}

/** Whether there is type along all of a line of type, in parts wider than any space. */
function isSet(mark: Extract<Mark, { kind: 'words' }>, bounds: Rect, side: SideDrawing): boolean {
  const upright = mark.head === 90 || mark.head === 270;
  const parts = Math.max(1, Math.floor(mark.width / (mark.size * 3)));
  return Array.from({ length: parts }, (_, i): Rect => {
    const [from, step] = [i / parts, 1 / parts];
    return upright
      ? { ...bounds, y: bounds.y + bounds.h * from, h: bounds.h * step }
      : { ...bounds, x: bounds.x + bounds.w * from, w: bounds.w * step };
  }).every((part) => inkLevels(part, side).some((level) => level >= MIN_INK_LEVELS));
}

function samplesOf(mark: Exclude<Mark, { kind: 'words' }>, scale: number): readonly Point[] {
  switch (mark.kind) {
    case 'line': {
      const { from, to } = mark;
      const count = Math.max(2, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) * scale));
      return fractions(count).map((t) => ({
        x: from.x + (to.x - from.x) * t,
        y: from.y + (to.y - from.y) * t,
      }));
    }
    case 'ring': {
      const { centre, radius } = mark;
      return fractions(Math.max(8, Math.ceil(2 * Math.PI * radius * scale))).map((t) => ({
        x: centre.x + radius * Math.cos(2 * Math.PI * t),
        y: centre.y + radius * Math.sin(2 * Math.PI * t),
      }));
    }
    case 'shape': {
      const { x, y, w, h } = boundsOf(mark);
      return fractions(SAMPLES_ACROSS)
        .flatMap((s) => fractions(SAMPLES_ACROSS).map((t) => ({ x: x + w * s, y: y + h * t })))
        .filter((point) => isInside(mark.corners, point));
    }
  }
}

/** The middles of so many equal parts of 0 to 1. */
function fractions(count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => (i + 0.5) / count);
}

function isIn({ x, y, w, h }: Rect, point: Point): boolean {
  return point.x >= x && point.x <= x + w && point.y >= y && point.y <= y + h;
}

/** Whether a point lies inside of a polygon, by the even-odd rule. */
function isInside(corners: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  });
  return inside;
}

/** The most ink at a point (pt) or right beside it, in levels. */
function inkNear(point: Point, side: SideDrawing): number {
  const { x, y } = apply(side.toPixels, point);
  const [column, row] = [Math.floor(x), Math.floor(y)];
  const off = Math.round(MAX_OFF_MM * POINTS_PER.mm * side.toPixels.a);
  let most = 0;
  for (let dy = -off; dy <= off; dy++) {
    for (let dx = -off; dx <= off; dx++) most = Math.max(most, inkAt(side, column + dx, row + dy));
  }
  return most;
}

function inkLevels(rect: Rect, side: SideDrawing): readonly number[] {
  const { left, top, right, bottom } = pixelsUnder(side, rect);
  const levels: number[] = [];
  for (let row = top; row < bottom; row++) {
    for (let column = left; column < right; column++) levels.push(inkAt(side, column, row));
  }
  return levels;
}

/** How dark a pixel is; 0 past the edges of the side. */
function inkAt({ raster: { width, height, words } }: SideDrawing, column: number, row: number): number {
  if (column < 0 || row < 0 || column >= width || row >= height) return 0;
  return inkLevel(words[row * width + column] ?? 0);
}
