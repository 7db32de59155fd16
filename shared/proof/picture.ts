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
      return rearrange(picture, h, w, (x, y) => x * w + w - 1 - y);
    case 180:
      return rearrange(picture, w, h, (x, y) => (h - 1 - y) * w + w - 1 - x);
    case 270:
      return rearrange(picture, h, w, (x, y) => (h - 1 - x) * w + y);
  }
}

/** The picture as its mirror image. */
export function flipPicture(picture: Picture, flip: Flip): Picture {
  const { width: w, height: h } = picture;
  switch (flip) {
    case 'left-right':
      return rearrange(picture, w, h, (x, y) => y * w + w - 1 - x);
    case 'top-bottom':
      return rearrange(picture, w, h, (x, y) => (h - 1 - y) * w + x);
  }
}

/** The picture without its margin of so many pixels on every side. */
export function cutMargin(picture: Picture, margin: number): Picture {
  const { width: w } = picture;
  return rearrange(
    picture,
    w - 2 * margin,
    picture.height - 2 * margin,
    (x, y) => (y + margin) * w + x + margin,
  );
}

/** A new picture whose pixel (x, y) is the pixel of the old one with the number that `from` gives. */
function rearrange(
  picture: Picture,
  width: number,
  height: number,
  from: (x: number, y: number) => number,
): Picture {
  const pixels = new Uint8Array(width * height * 3);
  const old = picture.pixels;
  let to = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = from(x, y) * 3;
      pixels[to++] = old[i] ?? 0;
      pixels[to++] = old[i + 1] ?? 0;
      pixels[to++] = old[i + 2] ?? 0;
    }
  }
  return { width, height, pixels };
}
