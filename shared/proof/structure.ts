// How much there is in a picture by which a displacement of it is observable, and in which directions.
import { type PixelArea, ROUNDING_LEVELS } from './band.ts';
import type { Direction } from './hand.ts';
import type { Picture } from './picture.ts';

/**
 * The sum of squared slopes (levels per pixel, three colours) from which a direction is observable. An edge of 8 levels,
 * which is a 3 % tint on white, gives 960 when it is 10 pixels long.
 */
const MIN_SQUARED_GRADIENT = 500;

/** The weaker of two directions must have this share of the stronger: edges that run aslant seem to have 1 %. */
const MIN_EIGENVALUE_RATIO = 0.02;

/**
 * The directions in which a displacement would show, in pixels with y down: none in an even or softly shaded area,
 * one across the lines of stripes, else two at right angles. Slopes no steeper than the rounding are not seen.
 */
export function observableDirections(picture: Picture, area: PixelArea): readonly Direction[] {
  const { pixels, width } = picture;
  const row = width * 3;
  let [xx, xy, yy] = [0, 0, 0];
  for (let y = area.top + 1; y < area.bottom - 1; y++) {
    const end = (y * width + area.right - 1) * 3;
    for (let i = (y * width + area.left + 1) * 3; i < end; i++) {
      const upperLeft = pixels[i - row - 3] ?? 0;
      const upperRight = pixels[i - row + 3] ?? 0;
      const lowerLeft = pixels[i + row - 3] ?? 0;
      const lowerRight = pixels[i + row + 3] ?? 0;
      const across = 2 * ((pixels[i + 3] ?? 0) - (pixels[i - 3] ?? 0));
      const down = 2 * ((pixels[i + row] ?? 0) - (pixels[i - row] ?? 0));
      const gradientX = (upperRight - upperLeft + across + lowerRight - lowerLeft) / 8;
      const gradientY = (lowerLeft - upperLeft + down + lowerRight - upperRight) / 8;
      if (Math.abs(gradientX) <= ROUNDING_LEVELS && Math.abs(gradientY) <= ROUNDING_LEVELS) continue;
      xx += gradientX * gradientX;
      xy += gradientX * gradientY;
      yy += gradientY * gradientY;
    }
  }
  return principalDirections(xx, xy, yy);
}

/** The principal directions of a sum of products of slopes that are strong enough. */
function principalDirections(xx: number, xy: number, yy: number): readonly Direction[] {
  const half = (xx + yy) / 2;
  const spread = Math.hypot((xx - yy) / 2, xy);
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const [x, y] = [Math.cos(angle), Math.sin(angle)];
  const stronger = half + spread;
  const weaker = half - spread;
  if (stronger < MIN_SQUARED_GRADIENT) return [];
  if (weaker < Math.max(MIN_SQUARED_GRADIENT, stronger * MIN_EIGENVALUE_RATIO)) return [{ x, y }];
  return [
    { x, y },
    { x: -y, y: x },
  ];
}
