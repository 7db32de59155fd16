// Pixels of ink gathered into places: what lies within a few millimetres of each other is one place.
import type { Rect } from '../geometry/space.ts';
import { POINTS_PER } from '../units/length.ts';

/** Ink in the same or in neighbouring squares of this side is one place. */
const SQUARE_MM = 2;

/** Fewer pixels than this are the grain of a renderer: at 150 to the inch, a dot of 0.3 mm has 3. */
export const MIN_STRAY_PIXELS = 3;

/** The places of the pixels that are 1, in pt with y down from the top, those with most ink first. */
export function inkPlaces(ink: Uint8Array, width: number, scale: number): readonly Rect[] {
  const side = Math.max(1, Math.round(SQUARE_MM * POINTS_PER.mm * scale));
  const columns = Math.ceil(width / side);
  const squares = new Map<number, Box>();
  for (let i = 0; i < ink.length; i++) {
    if (ink[i] !== 1) continue;
    const x = i % width;
    const y = (i - x) / width;
    const key = Math.floor(y / side) * columns + Math.floor(x / side);
    squares.set(key, join(squares.get(key), { left: x, top: y, right: x + 1, bottom: y + 1, pixels: 1 }));
  }
  const places: Box[] = [];
  for (const key of [...squares.keys()]) {
    const place = gather(squares, key, columns);
    if (place !== undefined && place.pixels >= MIN_STRAY_PIXELS) places.push(place);
  }
  return places
    .sort((a, b) => b.pixels - a.pixels)
    .map(({ left, top, right, bottom }) => ({
      x: left / scale,
      y: top / scale,
      w: (right - left) / scale,
      h: (bottom - top) / scale,
    }));
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly pixels: number;
}

function join(a: Box | undefined, b: Box): Box {
  if (a === undefined) return b;
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
    pixels: a.pixels + b.pixels,
  };
}

/** Takes a square and all that are joined to it out of the squares; `undefined` where it was taken before. */
function gather(squares: Map<number, Box>, start: number, columns: number): Box | undefined {
  let place: Box | undefined;
  const open = [start];
  for (let key = open.pop(); key !== undefined; key = open.pop()) {
    const box = squares.get(key);
    if (box === undefined) continue;
    squares.delete(key);
    place = join(place, box);
    const column = key % columns;
    for (const dx of [-1, 0, 1]) {
      if (column + dx < 0 || column + dx >= columns) continue;
      for (const dy of [-1, 0, 1]) open.push(key + dx + dy * columns);
    }
  }
  return place;
}
