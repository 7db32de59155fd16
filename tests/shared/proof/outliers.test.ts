import { describe, expect, it } from 'vitest';
import { wholeArea } from '../../../shared/proof/band.ts';
import { haveOutliers } from '../../../shared/proof/outliers.ts';
import type { Picture } from '../../../shared/proof/picture.ts';

const SIZE = 60;

/** Paper with black pixels where `isInk` says. */
function paperWith(isInk: (x: number, y: number) => boolean): Picture {
  const pixels = new Uint8Array(SIZE * SIZE * 3).fill(255);
  for (let i = 0; i < SIZE * SIZE; i++) {
    if (isInk(i % SIZE, Math.floor(i / SIZE))) pixels.fill(0, 3 * i, 3 * i + 3);
  }
  return { width: SIZE, height: SIZE, pixels };
}

const blank = paperWith(() => false);
const differs = (a: Picture, b: Picture) => haveOutliers(a, b, wholeArea(a));

describe('Outliers', () => {
  it('are five pixels close together, whichever of the two pictures has them; four may be grain', () => {
    const row = (length: number) => paperWith((x, y) => y === 30 && x >= 20 && x < 20 + length);
    expect(differs(row(5), blank)).toBe(true);
    expect(differs(blank, row(5))).toBe(true);
    expect(differs(row(4), blank)).toBe(false);
  });

  it('count across the borders of the squares in which they are counted', () => {
    for (let left = 8; left < 26; left++) {
      expect(
        differs(
          paperWith((x, y) => y === 11 && x >= left && x < left + 5),
          blank,
        ),
      ).toBe(true);
      expect(
        differs(
          paperWith((x, y) => x === 11 && y >= left && y < left + 5),
          blank,
        ),
      ).toBe(true);
    }
  });

  it('are none where five pixels are scattered over the picture', () => {
    const scattered = paperWith((x, y) => x % 29 === 1 && y % 29 === 1 && x + y < 70);
    expect(differs(scattered, blank)).toBe(false);
  });

  it('are none where an edge or a line was set one pixel off, and are where it was set three off', () => {
    const edge = (at: number) => paperWith((x) => x < at);
    expect(differs(edge(30), edge(31))).toBe(false);
    expect(differs(edge(30), edge(33))).toBe(true);
    const line = (at: number) => paperWith((x) => x === at);
    expect(differs(line(30), line(31))).toBe(false);
    expect(differs(line(30), line(33))).toBe(true);
  });

  it('are looked for in the area alone', () => {
    const corner = paperWith((x, y) => x < 9 && y < 9);
    expect(haveOutliers(corner, blank, { left: 20, top: 20, right: 60, bottom: 60 })).toBe(false);
    expect(haveOutliers(corner, blank, { left: 0, top: 0, right: 60, bottom: 60 })).toBe(true);
  });
});
