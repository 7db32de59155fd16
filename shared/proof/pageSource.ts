// Something that can be rendered: a side of a sheet, seen from its own side or through the paper, or a page of art.
import type { Head } from '../geometry/head.ts';
import type { Size } from '../geometry/space.ts';
import { applyToRect, chain } from '../geometry/transform.ts';
import { type Flip, flipPicture, type Picture, turnPicture } from './picture.ts';
import type { Raster } from './raster.ts';

/**
 * An affine map `[a b c d e f]` (ISO 32000) between the frames of a proof: sources and pieces in pt with y up,
 * pictures in pixels with y down.
 */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Quarter turns counter-clockwise about the origin, y up. */
export const QUARTER_TURNS: Readonly<Record<Head, Affine>> = {
  0: { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 },
  90: { a: 0, b: 1, c: -1, d: 0, e: 0, f: 0 },
  180: { a: -1, b: 0, c: 0, d: -1, e: 0, f: 0 },
  270: { a: 0, b: -1, c: 1, d: 0, e: 0, f: 0 },
};

/**
 * A page or a side of a known size in pt, lower left at the origin, y up.
 *
 * `render` gives `width` by `height` pixels; the matrix says where a point of the source (pt) falls on the picture
 * (pixels from its upper left, y down). What lies past the edges is white paper.
 */
export interface Renderable {
  readonly size: Size;
  render(matrix: Affine, width: number, height: number): Picture;
}

/** The same, as its renderer draws it: `rasterise` gives a pixel for every pixel drawn, where `render` smooths. */
export interface PageSource extends Renderable {
  rasterise(matrix: Affine, width: number, height: number): Raster;
}

/** The source as one sees it through the paper: rendered as it is, and the pixels flipped. */
export function flipSource(source: Renderable, flip: Flip): Renderable {
  const { w, h } = source.size;
  return {
    size: source.size,
    render: (matrix, width, height) => {
      const flipped = chain(chain(flipFrame(flip, w, h), matrix), flipFrame(flip, width, height));
      return flipPicture(source.render(flipped, width, height), flip);
    },
  };
}

/** The source turned counter-clockwise, its lower left corner again at the origin. */
export function turnSource(source: PageSource, ccw: Head): PageSource {
  const { w, h } = source.size;
  const size = ccw === 90 || ccw === 270 ? { w: h, h: w } : source.size;
  return transformSource(source, size, turnPage(ccw, w, h));
}

/** The source with every length multiplied. */
export function scaleSource(source: PageSource, by: number): PageSource {
  const size = { w: source.size.w * by, h: source.size.h * by };
  return transformSource(source, size, { a: by, b: 0, c: 0, d: by, e: 0, f: 0 });
}

/** The source in another frame of this size, into which `change` leads. */
function transformSource(source: PageSource, size: Size, change: Affine): PageSource {
  return {
    size,
    render: (matrix, width, height) => source.render(chain(change, matrix), width, height),
    rasterise: (matrix, width, height) => source.rasterise(chain(change, matrix), width, height),
  };
}

/**
 * The picture that the matrix gives, rendered with the source turned clockwise by `lie` and the pixels then turned back.
 * What it shows is the same for every lie; only the grain differs that a renderer gives to edges and small type, so a
 * piece that lay on its side is best compared with art that lay on its side.
 */
export function renderLying(
  source: Renderable,
  matrix: Affine,
  width: number,
  height: number,
  lie: Head,
): Picture {
  const onItsSide = lie === 90 || lie === 270;
  const lying = chain(matrix, turnPixelsBack(lie, width, height));
  const picture = source.render(lying, onItsSide ? height : width, onItsSide ? width : height);
  return turnPicture(picture, lie);
}

/** The flip of a frame of this size; its own inverse, whichever way y runs. */
function flipFrame(flip: Flip, w: number, h: number): Affine {
  return flip === 'left-right'
    ? { a: -1, b: 0, c: 0, d: 1, e: w, f: 0 }
    : { a: 1, b: 0, c: 0, d: -1, e: 0, f: h };
}

/** A page of this size turned counter-clockwise, y up. */
function turnPage(ccw: Head, w: number, h: number): Affine {
  const { x, y } = applyToRect(QUARTER_TURNS[ccw], { x: 0, y: 0, w, h });
  return { ...QUARTER_TURNS[ccw], e: -x, f: -y };
}

/** A picture of this size turned clockwise: y runs down, so that it is the page's counter-clockwise matrix. */
function turnPixelsBack(cw: Head, width: number, height: number): Affine {
  return turnPage(cw, width, height);
}
