// A page whose raster is its smoothed picture, pixel for pixel.
import type { Size } from '../../shared/geometry/space.ts';
import type { PageSource } from '../../shared/proof/pageSource.ts';

/** A page whose raster shows the pixels of its rendering. */
export function sourceBy(size: Size, render: PageSource['render']): PageSource {
  return {
    size,
    render: render,
    rasterise: (matrix, width, height) => {
      const { pixels } = render(matrix, width, height);
      const byte = (i: number) => pixels[i] ?? 0;
      const words = Uint32Array.from(
        { length: width * height },
        (_, i) => byte(3 * i) | (byte(3 * i + 1) << 8) | (byte(3 * i + 2) << 16),
      );
      return { width, height, words };
    },
  };
}
