// Something that can be photographed: a side of a sheet, seen from its own side or through the paper, or a page of art.
import type { Head } from '../geometry/head.ts';
import type { Size } from '../geometry/space.ts';
import { applyToRect, chain } from '../geometry/transform.ts';
import { type Flip, flipPicture, type Picture, turnPicture } from './picture.ts';
import type { Raster } from './raster.ts';

/**
 * An affine map `[a b c d e f]` (ISO 32000) between the frames of a proof: sights and pieces in pt with y up,
 * pictures in pixels with y down.
 */
export interface Lens {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Quarter turns counter-clockwise about the origin, y up. */
export const ROTATED: Readonly<Record<Head, Lens>> = {
  0: { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 },
  90: { a: 0, b: 1, c: -1, d: 0, e: 0, f: 0 },
  180: { a: -1, b: 0, c: 0, d: -1, e: 0, f: 0 },
  270: { a: 0, b: -1, c: 1, d: 0, e: 0, f: 0 },
};

/**
 * Something flat of a known size in pt, lower left at the origin, y up.
 *
 * `photograph` gives `width` by `height` pixels; the lens says where a point of the sight (pt) falls on the picture
 * (pixels from its upper left, y down). What lies past the edges is white paper.
 */
export interface Photographed {
  readonly size: Size;
  photograph(lens: Lens, width: number, height: number): Picture;
}

/** The same, as its renderer draws it: `draw` gives a pixel for every pixel drawn, where `photograph` smooths. */
export interface Sight extends Photographed {
  draw(lens: Lens, width: number, height: number): Raster;
}

/** The sight as one sees it through the paper: photographed as it is, and the pixels flipped. */
export function flipSight(sight: Photographed, flip: Flip): Photographed {
  const { w, h } = sight.size;
  return {
    size: sight.size,
    photograph: (lens, width, height) => {
      const flipped = chain(chain(flipFrame(flip, w, h), lens), flipFrame(flip, width, height));
      return flipPicture(sight.photograph(flipped, width, height), flip);
    },
  };
}

/** The sight turned counter-clockwise, its lower left corner again at the origin. */
export function turnSight(sight: Sight, ccw: Head): Sight {
  const { w, h } = sight.size;
  const size = ccw === 90 || ccw === 270 ? { w: h, h: w } : sight.size;
  return seenThrough(sight, size, turnPage(ccw, w, h));
}

/** The sight with every length multiplied. */
export function enlargeSight(sight: Sight, by: number): Sight {
  const size = { w: sight.size.w * by, h: sight.size.h * by };
  return seenThrough(sight, size, { a: by, b: 0, c: 0, d: by, e: 0, f: 0 });
}

/** The sight in another frame of this size, into which `change` leads. */
function seenThrough(sight: Sight, size: Size, change: Lens): Sight {
  return {
    size,
    photograph: (lens, width, height) => sight.photograph(chain(change, lens), width, height),
    draw: (lens, width, height) => sight.draw(chain(change, lens), width, height),
  };
}

/**
 * The picture that the lens gives, taken with the sight lying turned clockwise by `lie` and the pixels then turned back.
 * What it shows is the same for every lie; only the grain differs that a renderer gives to edges and small type, so a
 * piece that lay on its side is best compared with art that lay on its side.
 */
export function photographLying(
  sight: Photographed,
  lens: Lens,
  width: number,
  height: number,
  lie: Head,
): Picture {
  const onItsSide = lie === 90 || lie === 270;
  const lying = chain(lens, turnPixelsBack(lie, width, height));
  const picture = sight.photograph(lying, onItsSide ? height : width, onItsSide ? width : height);
  return turnPicture(picture, lie);
}

/** The flip of a frame of this size; its own inverse, whichever way y runs. */
function flipFrame(flip: Flip, w: number, h: number): Lens {
  return flip === 'left-right'
    ? { a: -1, b: 0, c: 0, d: 1, e: w, f: 0 }
    : { a: 1, b: 0, c: 0, d: -1, e: 0, f: h };
}

/** A page of this size turned counter-clockwise, y up. */
function turnPage(ccw: Head, w: number, h: number): Lens {
  const { x, y } = applyToRect(ROTATED[ccw], { x: 0, y: 0, w, h });
  return { ...ROTATED[ccw], e: -x, f: -y };
}

/** A picture of this size turned clockwise: y runs down, so that it is the page's counter-clockwise matrix. */
function turnPixelsBack(cw: Head, width: number, height: number): Lens {
  return turnPage(cw, width, height);
}
