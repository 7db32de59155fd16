// A sight of which only the photograph is told: its drawing shows the same pixels.
import type { Size } from '../../shared/geometry/space.ts';
import type { Sight } from '../../shared/proof/sight.ts';

/** A sight that is drawn as it is photographed. */
export function sightBy(size: Size, photograph: Sight['photograph']): Sight {
  return {
    size,
    photograph,
    draw: (lens, width, height) => {
      const { pixels } = photograph(lens, width, height);
      const byte = (i: number) => pixels[i] ?? 0;
      const words = Uint32Array.from(
        { length: width * height },
        (_, i) => byte(3 * i) | (byte(3 * i + 1) << 8) | (byte(3 * i + 2) << 16),
      );
      return { width, height, words };
    },
  };
}
