// How much there is in a picture by which a displacement of it could be told.
import { type Area, ROUNDING } from './band.ts';
import { toldDirections } from './normalEquations.ts';
import type { Picture } from './picture.ts';

/**
 * In how many directions a displacement would show: 0 for an even or softly shaded area, 1 for stripes, else 2.
 * Slopes that are no steeper than the rounding are not seen.
 */
export function directionsIn(picture: Picture, area: Area): number {
  const { pixels, width } = picture;
  let [xx, xy, yy] = [0, 0, 0];
  for (let y = area.top; y < area.bottom - 1; y++) {
    const end = (y * width + area.right - 1) * 3;
    for (let i = (y * width + area.left) * 3; i < end; i++) {
      const here = pixels[i] ?? 0;
      const slopeX = (pixels[i + 3] ?? 0) - here;
      const slopeY = (pixels[i + width * 3] ?? 0) - here;
      if (Math.abs(slopeX) <= ROUNDING && Math.abs(slopeY) <= ROUNDING) continue;
      xx += slopeX * slopeX;
      xy += slopeX * slopeY;
      yy += slopeY * slopeY;
    }
  }
  return toldDirections(xx, xy, yy).length;
}
