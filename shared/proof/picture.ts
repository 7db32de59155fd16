// A picture of something printed, and how it is turned and flipped: pixels only, nothing is known of what they show.
import type { Head } from '../geometry/head.ts';

/** Red, green and blue bytes in rows from the top, each row from the left. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** What changes places when something is flipped over: left and right, or top and bottom. */
export type Flip = 'left-right' | 'top-bottom';

/** The picture turned counter-clockwise. */
export function turnPicture(picture: Picture, ccw: Head): Picture {
  const { width: w, height: h } = picture;
  switch (ccw) {
    case 0:
      return picture;
    case 90:
      return rearrange(picture, h, w, { first: w - 1, right: w, down: -1 });
    case 180:
      return rearrange(picture, w, h, { first: w * h - 1, right: -1, down: -w });
    case 270:
      return rearrange(picture, h, w, { first: (h - 1) * w, right: -w, down: 1 });
  }
}

/** The picture as its mirror image. */
export function flipPicture(picture: Picture, flip: Flip): Picture {
  const { width: w, height: h } = picture;
  switch (flip) {
    case 'left-right':
      return rearrange(picture, w, h, { first: w - 1, right: -1, down: w });
    case 'top-bottom':
      return rearrange(picture, w, h, { first: (h - 1) * w, right: 1, down: -w });
  }
}

/** The picture without its margin of so many pixels on every side. */
export function cutMargin(picture: Picture, margin: number): Picture {
  const { width: w, height: h } = picture;
  return rearrange(picture, w - 2 * margin, h - 2 * margin, {
    first: margin * w + margin,
    right: 1,
    down: w,
  });
}

/** A walk over the pixels of a picture by their numbers: the first, and what is added for one to the right or down. */
interface Walk {
  readonly first: number;
  readonly right: number;
  readonly down: number;
}

/** A new picture of the pixels that a walk comes by. */
function rearrange(picture: Picture, width: number, height: number, { first, right, down }: Walk): Picture {
  const pixels = new Uint8Array(width * height * 3);
  const old = picture.pixels;
  let to = 0;
  for (let y = 0; y < height; y++) {
    let from = (first + y * down) * 3;
    for (let x = 0; x < width; x++) {
      pixels[to++] = old[from] ?? 0;
      pixels[to++] = old[from + 1] ?? 0;
      pixels[to++] = old[from + 2] ?? 0;
      from += right * 3;
    }
  }
  return { width, height, pixels };
}
