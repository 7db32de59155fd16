// Pages as pictures, by a renderer that shares nothing with the program: poppler's pdftoppm.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A picture, three bytes to a pixel, the first row at the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** All pages of a PDF, the whole media box of each, at `scale` pixels to a unit. */
export function picturesByPoppler(
  bytes: Uint8Array,
  scale = 1,
  ...args: readonly string[]
): readonly Picture[] {
  const folder = mkdtempSync(join(tmpdir(), 'poppler-'));
  try {
    writeFileSync(join(folder, 'art.pdf'), bytes);
    execFileSync('pdftoppm', ['-r', `${72 * scale}`, ...args, 'art.pdf', 'page'], {
      cwd: folder,
      stdio: 'ignore',
    });
    const pages = readdirSync(folder).filter((name) => name.endsWith('.ppm'));
    return pages.toSorted().map((name) => readPicture(readFileSync(join(folder, name))));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function readPicture(file: Buffer): Picture {
  const head = /^P6\s(\d+)\s(\d+)\s255\s/.exec(file.subarray(0, 40).toString('latin1'));
  if (head === null) throw new Error('pdftoppm wrote something else than a picture');
  const pixels = new Uint8Array(file.subarray(head[0].length));
  return { width: Number(head[1]), height: Number(head[2]), pixels };
}

/** A picture turned counter-clockwise by whole quarters. */
export function turnPicture(picture: Picture, degrees: number): Picture {
  if (degrees === 0) return picture;
  const { width, height, pixels } = turnPicture(picture, degrees - 90);
  const turned = new Uint8Array(pixels.length);
  for (let row = 0; row < width; row += 1) {
    for (let column = 0; column < height; column += 1) {
      const from = 3 * (column * width + (width - 1 - row));
      turned.set(pixels.subarray(from, from + 3), 3 * (row * height + column));
    }
  }
  return { width: height, height: width, pixels: turned };
}

/** The part of a picture within a box in pixels, y up from its lower left. */
export function cutPicture(
  picture: Picture,
  { x, y, w, h }: { x: number; y: number; w: number; h: number },
): Picture {
  const pixels = new Uint8Array(3 * w * h);
  for (let row = 0; row < h; row += 1) {
    const from = 3 * ((picture.height - y - h + row) * picture.width + x);
    pixels.set(picture.pixels.subarray(from, from + 3 * w), 3 * row * w);
  }
  return { width: w, height: h, pixels };
}

/** The share of pixels that differ by more than `by` of 255 in some colour; 1 for pictures of unlike sizes. */
export function unlikeness(a: Picture, b: Picture, by = 8): number {
  if (a.width !== b.width || a.height !== b.height) return 1;
  let unlike = 0;
  for (let i = 0; i < a.pixels.length; i += 3) {
    const red = Math.abs(a.pixels[i]! - b.pixels[i]!);
    const green = Math.abs(a.pixels[i + 1]! - b.pixels[i + 1]!);
    const blue = Math.abs(a.pixels[i + 2]! - b.pixels[i + 2]!);
    if (red > by || green > by || blue > by) unlike += 1;
  }
  return (3 * unlike) / a.pixels.length;
}

/** The colour of the pixel at (x, y), y up from the lower left. */
export function colourAt(picture: Picture, x: number, y: number): readonly number[] {
  const from = 3 * ((picture.height - 1 - y) * picture.width + x);
  return [...picture.pixels.subarray(from, from + 3)];
}
