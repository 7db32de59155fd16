// Whether two pictures show the same: a band of tolerance around each, as wide as a renderer lets an edge wander.
import type { Picture } from './picture.ts';

/** A part of a picture in pixels from its upper left; `right` and `bottom` are the first that are not part of it. */
export interface PixelArea {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** All of a picture. */
export function wholeArea({ width, height }: Picture): PixelArea {
  return { left: 0, top: 0, right: width, bottom: height };
}

/** Levels of 255 that are rounding and nothing more. A tint of 1 % on white is 2.55 levels. */
export const ROUNDING_LEVELS = 2;

/** How much of the contrast near a pixel an edge may add to it where it falls between two pixels. */
const EDGE_SHARE = 1 / 3;

/** How many pixels off the contrast is looked for. */
const CONTRAST_RADIUS_PX = 3;

/** Whether the two pictures are the same, pixel for pixel, in this area. */
export function equalIn(a: Picture, b: Picture, area: PixelArea): boolean {
  for (let y = area.top; y < area.bottom; y++) {
    const end = (y * a.width + area.right) * 3;
    for (let i = (y * a.width + area.left) * 3; i < end; i++) {
      if (Math.abs((a.pixels[i] ?? 0) - (b.pixels[i] ?? 0)) > ROUNDING_LEVELS) return false;
    }
  }
  return true;
}

/** Of the pixels at edges, the share that may differ in a picture that was not moved. */
const MAX_STRAY_SHARE = 0.1;

/**
 * Whether the two pictures are the same but for a few pixels, such as a letter that a renderer sets one pixel off. Any
 * shift that can be seen would change most of the pixels at edges.
 */
export function unmovedIn(a: Picture, b: Picture, area: PixelArea): boolean {
  let [edges, strays] = [0, 0];
  const row = a.width * 3;
  for (let y = area.top; y < area.bottom; y++) {
    const end = y * row + area.right * 3;
    for (let i = y * row + area.left * 3; i < end; i++) {
      const here = b.pixels[i] ?? 0;
      if (Math.abs((a.pixels[i] ?? 0) - here) > ROUNDING_LEVELS) strays++;
      const next = Math.abs((b.pixels[i + 3] ?? here) - here);
      const below = Math.abs((b.pixels[i + row] ?? here) - here);
      if (next > ROUNDING_LEVELS || below > ROUNDING_LEVELS) edges++;
    }
  }
  return strays <= edges * MAX_STRAY_SHARE;
}

/**
 * How many pixels of the area show something in one picture that the other does not show there or right beside;
 * counting ends at `enough`.
 *
 * A pixel of either picture must lie between the darkest and the lightest of the nine around its place in the other,
 * widened by the rounding and a share of the contrast there, in each colour. Both ways round, so that neither what
 * was added nor what was left out goes unseen; and by contrast, so that the lightest tint is held to its own measure.
 */
export function countOutliers(a: Picture, b: Picture, area: PixelArea, enough: number): number {
  let outliers = 0;
  for (let y = area.top; y < area.bottom; y++) {
    for (let x = area.left; x < area.right; x++) {
      if (isOutlier(a, b, x, y) && ++outliers >= enough) return outliers;
    }
  }
  return outliers;
}

/** Whether one picture shows something at this pixel that the other does not show there or right beside. */
export function isOutlier(a: Picture, b: Picture, x: number, y: number): boolean {
  const i = (y * a.width + x) * 3;
  for (let c = 0; c < 3; c++) {
    const inA = a.pixels[i + c] ?? 0;
    const inB = b.pixels[i + c] ?? 0;
    if (Math.abs(inA - inB) <= ROUNDING_LEVELS) continue;
    if (outsideBand(inA, b, x, y, c) || outsideBand(inB, a, x, y, c)) return true;
  }
  return false;
}

function outsideBand(value: number, other: Picture, x: number, y: number, colour: number): boolean {
  let [darkest, lightest, lowest, highest] = [255, 0, 255, 0];
  for (let dy = -CONTRAST_RADIUS_PX; dy <= CONTRAST_RADIUS_PX; dy++) {
    if (y + dy < 0 || y + dy >= other.height) continue;
    for (let dx = -CONTRAST_RADIUS_PX; dx <= CONTRAST_RADIUS_PX; dx++) {
      if (x + dx < 0 || x + dx >= other.width) continue;
      const near = other.pixels[((y + dy) * other.width + x + dx) * 3 + colour] ?? 0;
      if (near < lowest) lowest = near;
      if (near > highest) highest = near;
      if (dx * dx > 1 || dy * dy > 1) continue;
      if (near < darkest) darkest = near;
      if (near > lightest) lightest = near;
    }
  }
  const slack = ROUNDING_LEVELS + EDGE_SHARE * (highest - lowest);
  return value < darkest - slack || value > lightest + slack;
}

/** The picture with every pixel mixed with its eight neighbours (1 2 1 both ways), so that thin lines meet halfway. */
export function blur(picture: Picture): Picture {
  const { width, height } = picture;
  const across = mix(picture.pixels, width, height, 3, width);
  return { width, height, pixels: mix(across, width, height, width * 3, height) };
}

/** Mixes along one axis; `stride` leads to the next pixel along it, of which there are `count`. */
function mix(pixels: Uint8Array, width: number, height: number, stride: number, count: number): Uint8Array {
  const mixed = new Uint8Array(pixels.length);
  const alongRows = stride === 3;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const along = alongRows ? x : y;
      const before = along > 0 ? stride : 0;
      const after = along < count - 1 ? stride : 0;
      for (let i = (y * width + x) * 3, end = i + 3; i < end; i++) {
        mixed[i] = ((pixels[i - before] ?? 0) + 2 * (pixels[i] ?? 0) + (pixels[i + after] ?? 0) + 2) >> 2;
      }
    }
  }
  return mixed;
}

/** Whether the area is all the colour of its first pixel. */
export function isFlat(picture: Picture, area: PixelArea): boolean {
  const first = (area.top * picture.width + area.left) * 3;
  return isAll(
    picture,
    area,
    [0, 1, 2].map((c) => picture.pixels[first + c] ?? 0),
  );
}

/** Whether nothing is printed in the area. */
export function isBlank(picture: Picture, area: PixelArea): boolean {
  return isAll(picture, area, [255, 255, 255]);
}

function isAll(picture: Picture, area: PixelArea, colour: readonly number[]): boolean {
  for (let y = area.top; y < area.bottom; y++) {
    for (let x = area.left; x < area.right; x++) {
      const i = (y * picture.width + x) * 3;
      for (let c = 0; c < 3; c++) {
        if (Math.abs((picture.pixels[i + c] ?? 0) - (colour[c] ?? 0)) > ROUNDING_LEVELS) return false;
      }
    }
  }
  return true;
}

/** The sum of squared differences of two pictures in an area. */
export function squaredDifference(a: Picture, b: Picture, area: PixelArea): number {
  let sum = 0;
  for (let y = area.top; y < area.bottom; y++) {
    const end = (y * a.width + area.right) * 3;
    for (let i = (y * a.width + area.left) * 3; i < end; i++) {
      sum += ((a.pixels[i] ?? 0) - (b.pixels[i] ?? 0)) ** 2;
    }
  }
  return sum;
}

/**
 * How alike two pictures are in an area: the correlation of what they show apart from their mean colours, 1 for the
 * same, 0 for nothing in common or where one of them is flat.
 */
export function correlation(a: Picture, b: Picture, area: PixelArea): number {
  let [both, ofA, ofB] = [0, 0, 0];
  for (let colour = 0; colour < 3; colour++) {
    let [n, sumA, sumB, sumAA, sumBB, sumAB] = [0, 0, 0, 0, 0, 0];
    for (let y = area.top; y < area.bottom; y++) {
      const end = (y * a.width + area.right) * 3;
      for (let i = (y * a.width + area.left) * 3 + colour; i < end; i += 3) {
        const inA = a.pixels[i] ?? 0;
        const inB = b.pixels[i] ?? 0;
        n++;
        sumA += inA;
        sumB += inB;
        sumAA += inA * inA;
        sumBB += inB * inB;
        sumAB += inA * inB;
      }
    }
    both += n * sumAB - sumA * sumB;
    ofA += n * sumAA - sumA * sumA;
    ofB += n * sumBB - sumB * sumB;
  }
  return ofA > 0 && ofB > 0 ? both / Math.sqrt(ofA * ofB) : 0;
}
