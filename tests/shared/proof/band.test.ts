import { describe, expect, it } from 'vitest';
import {
  blur,
  correlation,
  countOutliers,
  equalIn,
  isBlank,
  isFlat,
  type PixelArea,
  squaredDifference,
  unmovedIn,
  wholeArea,
} from '../../../shared/proof/band.ts';
import type { Picture } from '../../../shared/proof/picture.ts';

/** A picture of `size` by `size` pixels, grey by the formula. */
function grey(size: number, level: (x: number, y: number) => number): Picture {
  const pixels = Uint8Array.from({ length: size * size * 3 }, (_, i) => {
    const n = Math.floor(i / 3);
    return level(n % size, Math.floor(n / size));
  });
  return { width: size, height: size, pixels };
}

const white = grey(20, () => 255);
const inside: PixelArea = { left: 4, top: 4, right: 16, bottom: 16 };
const dotAt = (x: number, y: number, level = 0) => grey(20, (u, v) => (u === x && v === y ? level : 255));

describe('Two pictures', () => {
  it('are equal when they differ by rounding only', () => {
    expect(
      equalIn(
        white,
        grey(20, () => 253),
        wholeArea(white),
      ),
    ).toBe(true);
    expect(
      equalIn(
        white,
        grey(20, () => 252),
        wholeArea(white),
      ),
    ).toBe(false);
    expect(
      equalIn(
        grey(20, () => 252),
        white,
        wholeArea(white),
      ),
    ).toBe(false);
  });

  it('are compared in the area only, to its very edges', () => {
    expect(equalIn(white, dotAt(3, 8), inside)).toBe(true);
    expect(equalIn(white, dotAt(16, 8), inside)).toBe(true);
    expect(equalIn(white, dotAt(8, 3), inside)).toBe(true);
    expect(equalIn(white, dotAt(8, 16), inside)).toBe(true);
    expect(equalIn(white, dotAt(4, 4), inside)).toBe(false);
    expect(equalIn(white, dotAt(15, 15), inside)).toBe(false);
  });

  it('differ by the sum of the squares of what lies between them', () => {
    expect(squaredDifference(white, white, inside)).toBe(0);
    expect(squaredDifference(dotAt(4, 15, 245), white, inside)).toBe(300);
    expect(squaredDifference(dotAt(3, 15, 245), white, inside)).toBe(0);
    expect(
      squaredDifference(
        white,
        grey(20, () => 254),
        inside,
      ),
    ).toBe(432);
  });

  it('are as alike as they vary together', () => {
    const shade = grey(20, (x) => 10 * x);
    expect(correlation(shade, shade, inside)).toBeCloseTo(1, 10);
    expect(
      correlation(
        shade,
        grey(20, (x) => 5 * x + 20),
        inside,
      ),
    ).toBeCloseTo(1, 10);
    expect(
      correlation(
        shade,
        grey(20, (x) => 200 - 10 * x),
        inside,
      ),
    ).toBeCloseTo(-1, 10);
    expect(
      correlation(
        shade,
        grey(20, (_, y) => 10 * y),
        inside,
      ),
    ).toBeCloseTo(0, 10);
    expect(correlation(shade, white, inside)).toBe(0);
    // Colours that differ as a whole are no likeness: two plain cards of one colour have nothing in common.
    const blue = { ...white, pixels: white.pixels.map((_, i) => (i % 3 === 2 ? 200 : 40)) };
    expect(correlation(blue, blue, inside)).toBe(0);
  });
});

describe('A picture that was not moved', () => {
  const bars = (from: number) => grey(20, (x) => (x >= from && x % 4 < 2 ? 0 : 255));

  it('may have a few strays among many edges', () => {
    const struck = (count: number) =>
      grey(20, (x, y) => (y === 8 && x >= 8 && x < 8 + count ? 128 : x % 4 < 2 ? 0 : 255));
    expect(unmovedIn(bars(0), bars(0), inside)).toBe(true);
    // There are 72 edges, six in each of twelve rows.
    expect(unmovedIn(struck(7), bars(0), inside)).toBe(true);
    expect(unmovedIn(struck(8), bars(0), inside)).toBe(false);
  });

  it('differs at hardly any edge, where a moved one differs at all of them', () => {
    const moved = grey(20, (x) => (x % 4 < 2 ? 30 : 255));
    expect(unmovedIn(moved, bars(0), inside)).toBe(false);
  });

  it('of one colour may not differ at all', () => {
    expect(unmovedIn(white, white, inside)).toBe(true);
    expect(unmovedIn(dotAt(8, 8), white, inside)).toBe(false);
    expect(unmovedIn(dotAt(3, 8), white, inside)).toBe(true);
  });
});

describe('Strangers', () => {
  const many = 1000;

  it('are seen when something is added, and as much when it is left out', () => {
    expect(countOutliers(white, dotAt(8, 8), inside, many)).toBe(1);
    expect(countOutliers(dotAt(8, 8), white, inside, many)).toBe(1);
  });

  it('are none when an edge wanders by one pixel, and some when it wanders by two', () => {
    const edge = (at: number) => grey(20, (x) => (x < at ? 0 : 255));
    expect(countOutliers(edge(10), edge(11), inside, many)).toBe(0);
    expect(countOutliers(edge(10), edge(9), inside, many)).toBe(0);
    expect(countOutliers(edge(10), edge(12), inside, many)).toBeGreaterThanOrEqual(12);
  });

  it('wander upwards and downwards as they do sideways', () => {
    const edge = (at: number) => grey(20, (_, y) => (y < at ? 0 : 255));
    expect(countOutliers(edge(10), edge(11), inside, many)).toBe(0);
    expect(countOutliers(edge(10), edge(12), inside, many)).toBeGreaterThanOrEqual(12);
  });

  it('are seen in a tint of 2 percent, which differs from white by 5 levels', () => {
    expect(countOutliers(white, dotAt(8, 8, 250), inside, many)).toBe(1);
    expect(countOutliers(white, dotAt(8, 8, 253), inside, many)).toBe(0);
  });

  it('are judged by the contrast around them', () => {
    const edge = grey(20, (x) => (x < 10 ? 0 : 255));
    const tinted = (level: number) => grey(20, (x) => (x < 10 ? 0 : x === 12 ? level : 255));
    // Three pixels from an edge a third of its contrast is forgiven: 255 / 3 + 2 = 87.
    expect(countOutliers(edge, tinted(170), inside, many)).toBe(0);
    expect(countOutliers(edge, tinted(160), inside, many)).toBe(12);
  });

  it('are counted in the area only, and not beyond what is enough', () => {
    expect(countOutliers(white, dotAt(3, 8), inside, many)).toBe(0);
    expect(countOutliers(white, dotAt(15, 15), inside, many)).toBe(1);
    expect(
      countOutliers(
        white,
        grey(20, () => 0),
        inside,
        many,
      ),
    ).toBe(144);
    expect(
      countOutliers(
        white,
        grey(20, () => 0),
        inside,
        10,
      ),
    ).toBe(10);
  });

  it('are seen in any one colour, also in the corners of the picture', () => {
    const green = { ...white, pixels: white.pixels.slice() };
    green.pixels[1] = 0;
    green.pixels[20 * 20 * 3 - 1] = 0;
    expect(countOutliers(white, green, wholeArea(white), many)).toBe(2);
  });
});

describe('A blurred picture', () => {
  it('spreads a dot over its neighbours as 1 2 1 both ways', () => {
    const soft = blur(dotAt(8, 8, 255 - 160));
    const at = (x: number, y: number) => 255 - (soft.pixels[(y * 20 + x) * 3] ?? 0);
    expect([at(8, 8), at(7, 8), at(9, 8), at(8, 7), at(8, 9), at(7, 7), at(9, 9), at(10, 8)]).toEqual([
      40, 20, 20, 20, 20, 10, 10, 0,
    ]);
  });

  it('keeps its colour up to its edges', () => {
    expect(blur(grey(20, () => 37))).toEqual(grey(20, () => 37));
  });

  it('does not mix one end of a row with the other', () => {
    const soft = blur(grey(4, (x) => (x === 0 ? 0 : 255)));
    expect([0, 1, 2, 3].map((x) => soft.pixels[(4 + x) * 3])).toEqual([64, 191, 255, 255]);
  });
});

describe('An area', () => {
  it('is flat when it is of one colour, blank when that is white', () => {
    expect(isFlat(white, inside)).toBe(true);
    expect(isBlank(white, inside)).toBe(true);
    expect(
      isFlat(
        grey(20, () => 90),
        inside,
      ),
    ).toBe(true);
    expect(
      isBlank(
        grey(20, () => 90),
        inside,
      ),
    ).toBe(false);
    expect(
      isBlank(
        grey(20, () => 252),
        inside,
      ),
    ).toBe(false);
    expect(
      isBlank(
        grey(20, () => 253),
        inside,
      ),
    ).toBe(true);
  });

  it('is neither when a single pixel in it differs', () => {
    for (const [x, y] of [
      [4, 4],
      [15, 15],
    ] as const) {
      expect(isFlat(dotAt(x, y), inside)).toBe(false);
      expect(isBlank(dotAt(x, y), inside)).toBe(false);
    }
    expect(isBlank(dotAt(16, 15), inside)).toBe(true);
  });
});
