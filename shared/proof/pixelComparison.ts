// The comparison by pixels: whether a piece of a drawn side shows just what its art shows when it is drawn there, pixel by pixel.
import { headOf, lying } from '../geometry/head.ts';
import { centre } from '../geometry/rect.ts';
import type { Edges, Rect } from '../geometry/space.ts';
import { apply, applyToRect, chain } from '../geometry/transform.ts';
import { PHASES } from './alignedScale.ts';
import { type ArtFace, IDENTITY, toTrimCentre } from './artFaces.ts';
import { type PixelArea, ROUNDING_LEVELS } from './band.ts';
import { FACE_EDGES } from './edges.ts';
import type { FaceView } from './faceViews.ts';
import { haveOutliers } from './outliers.ts';
import { type Affine, QUARTER_TURNS } from './pageSource.ts';
import type { Picture } from './picture.ts';
import { shrink } from './pyramid.ts';
import { differ, pictureIn, pixelsWithin, type Raster } from './raster.ts';
import { RecentlyUsed } from './recentlyUsed.ts';

/** As many pixels of drawn art as are kept for the next position, about 130 MB of them. */
const MAX_PIXELS_KEPT = 32_000_000;

/** Compares what lies on drawn sides with the art; the art is drawn once for each way it lies on the pixels. */
export class PixelComparison {
  private readonly drawn = new RecentlyUsed<Raster>(MAX_PIXELS_KEPT);

  /** Whether the piece, its bleed as far as it is wanted included, shows this face printed at `placed`. */
  matches(look: FaceView, face: ArtFace, placed: Affine = IDENTITY): boolean {
    const { raster } = look.drawing;
    const toPixels = chain(toSide(look), look.drawing.toPixels);
    const window = windowAround(look, toPixels);
    const art = this.draw(face, chain(placed, onWindow(toPixels, window)), window);
    const areas = comparedAreas(look)
      .map((area) => pixelsWithin(applyToRect(toPixels, area), raster))
      .filter(({ left, right, top, bottom }) => left < right && top < bottom);
    return areas.every((area) => isSame(raster, art, area, window)) || !isOther(raster, art, areas, window);
  }

  /** The trim of this face as it would lie there, as fine as a rendering. */
  artTrim(look: FaceView, face: ArtFace): Picture {
    const toPixels = chain(toSide(look), look.drawing.toPixels);
    const window = windowAround(look, toPixels);
    const matrix = onWindow(toPixels, window);
    const art = this.draw(face, matrix, window);
    return shrink(pictureIn(art, pixelsWithin(applyToRect(matrix, trimOf(look)), art)), 1);
  }

  /** The face as it is drawn where `toPixels` puts it: pt from the middle of its trim to pixels of the window. */
  private draw(face: ArtFace, matrix: Affine, window: PixelArea): Raster {
    const place = [matrix.e, matrix.f].map((pixels) => Math.round(pixels * PHASES));
    const scale = [matrix.a, matrix.b, matrix.c, matrix.d].map((x) => x.toFixed(9));
    const key = JSON.stringify([face.piece, face.face, ...place, ...scale]);
    const [width, height] = [window.right - window.left, window.bottom - window.top];
    return this.drawn.get(key, width * height, () => {
      return face.source.rasterise(chain(toTrimCentre(face), matrix), width, height);
    });
  }
}

function onWindow(toPixels: Affine, { left, top }: PixelArea): Affine {
  return { ...toPixels, e: toPixels.e - left, f: toPixels.f - top };
}

/** The trim of the piece in view, in pt from its middle. */
function trimOf({ piece: { trim } }: FaceView): Rect {
  return { x: -trim.w / 2, y: -trim.h / 2, w: trim.w, h: trim.h };
}

/** From a piece, head up, in pt from the middle of its trim, to where it lies on its side. */
function toSide({ lie, trim }: FaceView): Affine {
  const { x, y } = centre(trim);
  return chain(QUARTER_TURNS[headOf(-lie)], { ...IDENTITY, e: x, f: y });
}

/** The pixels of the side around a piece and its bleed. Their number is the same wherever the piece lies. */
function windowAround(look: FaceView, toPixels: Affine): PixelArea {
  const drawing = look.drawing.toPixels;
  const { w, h } = lying(look.piece.trim, look.lie);
  const half = {
    x: Math.ceil((w / 2 + look.piece.bleed) * drawing.a) + 2,
    y: Math.ceil((h / 2 + look.piece.bleed) * -drawing.d) + 2,
  };
  const middle = apply(toPixels, { x: 0, y: 0 });
  const [x, y] = [Math.floor(middle.x + 0.5 / PHASES), Math.floor(middle.y + 0.5 / PHASES)];
  return { left: x - half.x, top: y - half.y, right: x + half.x + 1, bottom: y + half.y + 1 };
}

/** The trim, and before each stretch of an edge the bleed that must be seen; in pt from the middle of the trim. */
function comparedAreas(look: FaceView): readonly Rect[] {
  const whole = trimOf(look);
  const strips = FACE_EDGES.flatMap((edge) =>
    look.wanted[edge]
      .filter(({ reach }) => reach > 0)
      .map(({ from, to, reach }) => strip(whole, edge, from, to - from, reach)),
  );
  return [whole, ...strips];
}

/** A part of the bleed, with as much of the trim beside it as is left out at the fringe of the trim. */
function strip(trim: Rect, edge: keyof Edges, from: number, length: number, reach: number): Rect {
  const inside = Math.min(trim.w, trim.h) / 8;
  const deep = reach + inside;
  switch (edge) {
    case 'left':
      return { x: trim.x - reach, y: trim.y + from, w: deep, h: length };
    case 'right':
      return { x: trim.x + trim.w - inside, y: trim.y + from, w: deep, h: length };
    case 'bottom':
      return { x: trim.x + from, y: trim.y - reach, w: length, h: deep };
    case 'top':
      return { x: trim.x + from, y: trim.y + trim.h - inside, w: length, h: deep };
  }
}

function isSame(side: Raster, art: Raster, area: PixelArea, window: PixelArea): boolean {
  for (let y = area.top; y < area.bottom; y++) {
    const a = rowOf(side, y, area.left, area.right);
    const b = rowOf(art, y - window.top, area.left - window.left, area.right - window.left);
    for (let x = 0; x < a.length; x++) {
      if (a[x] !== b[x] && differ(a[x] ?? 0, b[x] ?? 0, ROUNDING_LEVELS)) return false;
    }
  }
  return true;
}

function rowOf({ width, words }: Raster, y: number, left: number, right: number): Uint32Array {
  return words.subarray(y * width + left, y * width + right);
}

/** Whether the pixels that differ tell something that is not grain. */
function isOther(side: Raster, art: Raster, areas: readonly PixelArea[], window: PixelArea): boolean {
  const seen: PixelArea = {
    left: Math.max(0, window.left),
    top: Math.max(0, window.top),
    right: Math.min(side.width, window.right),
    bottom: Math.min(side.height, window.bottom),
  };
  const printed = pictureIn(side, seen);
  const wanted = pictureIn(art, moved(seen, -window.left, -window.top));
  return areas.some((area) => haveOutliers(printed, wanted, moved(area, -seen.left, -seen.top)));
}

function moved({ left, top, right, bottom }: PixelArea, x: number, y: number): PixelArea {
  return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
}
