// A picture made coarser step by step, so that what lies far from its place is still found.
import type { Picture } from './picture.ts';

/** A level of a pyramid: red, green and blue values in rows from the top. */
export interface PyramidLevel {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/** The picture at full size, then halved as long as its shorter side keeps `least` pixels. Finest first. */
export function pyramidOf(picture: Picture, least: number): readonly PyramidLevel[] {
  let level = levelOf(picture);
  const levels = [level];
  while (Math.min(level.width, level.height) >= 2 * least) {
    level = halve(level);
    levels.push(level);
  }
  return levels;
}

/** The picture as the finest level. */
function levelOf(picture: Picture): PyramidLevel {
  return { width: picture.width, height: picture.height, values: new Float32Array(picture.pixels) };
}

/** The picture halved so many times. */
export function shrink(picture: Picture, times: number): Picture {
  let level = levelOf(picture);
  for (let i = 0; i < times; i++) level = halve(level);
  const pixels = new Uint8Array(level.values.length);
  for (let i = 0; i < pixels.length; i++) pixels[i] = (level.values[i] ?? 0) + 0.5;
  return { width: level.width, height: level.height, pixels };
}

/** Every two by two pixels become one; an odd last row or column is left out. */
function halve(level: PyramidLevel): PyramidLevel {
  const width = level.width >> 1;
  const height = level.height >> 1;
  const values = new Float32Array(width * height * 3);
  const row = level.width * 3;
  const old = level.values;
  let to = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const from = 2 * y * row + 6 * x;
      for (let i = from; i < from + 3; i++) {
        const upper = (old[i] ?? 0) + (old[i + 3] ?? 0);
        const lower = (old[i + row] ?? 0) + (old[i + row + 3] ?? 0);
        values[to++] = (upper + lower) / 4;
      }
    }
  }
  return { width, height, values };
}
