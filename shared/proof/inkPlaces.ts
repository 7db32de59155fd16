// Pixels of ink gathered into places: what lies within a few millimetres of each other is one place.
import type { PixelArea } from './band.ts';

/** Ink in the same or in neighbouring squares of this side is one place. */
const SQUARE_MM = 2;

/** Less ink than this is the grain of a renderer; a dot of 0.3 mm has more. */
const MIN_STRAY_MM2 = 0.08;

/** A pixel, its column and its row. */
export type Pixel = readonly [x: number, y: number];

/** The places of these pixels of a drawing `width` wide, `perMm` of them to the mm; those with most ink come first. */
export function inkPlaces(ink: Iterable<Pixel>, width: number, perMm: number): readonly PixelArea[] {
  const side = Math.max(1, Math.round(SQUARE_MM * perMm));
  const columns = Math.ceil(width / side);
  const squares = new Map<number, Place>();
  for (const [x, y] of ink) {
    const key = Math.floor(y / side) * columns + Math.floor(x / side);
    squares.set(key, join(squares.get(key), { left: x, top: y, right: x + 1, bottom: y + 1, pixels: 1 }));
  }
  const places: Place[] = [];
  for (const key of [...squares.keys()]) {
    const place = gather(squares, key, columns);
    if (place !== undefined && place.pixels >= MIN_STRAY_MM2 * perMm ** 2) places.push(place);
  }
  return places.sort((a, b) => b.pixels - a.pixels);
}

interface Place extends PixelArea {
  readonly pixels: number;
}

function join(a: Place | undefined, b: Place): Place {
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
function gather(squares: Map<number, Place>, start: number, columns: number): Place | undefined {
  let place: Place | undefined;
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
