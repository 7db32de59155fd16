// How much of a picture is covered, by its pixels.
import { describe, expect, it } from 'vitest';
import { greyCoverage, inkCoverage, inksOfLights, plateCoverage } from '../../../shared/ink/coverage.ts';

const pixels = (...colours: readonly (readonly [number, number, number])[]) =>
  Uint8Array.from(colours.flat());

describe('The coverage of a picture', () => {
  it('in grey is the light that is missing, weighed by colour', () => {
    expect(greyCoverage(pixels([255, 255, 255]))).toBeCloseTo(0, 12);
    expect(greyCoverage(pixels([0, 0, 0], [255, 255, 255]))).toBeCloseTo(0.5, 12);
    // ITU-R BT.709: 0.2126, 0.7152 and 0.0722 of the light are red, green and blue.
    expect(greyCoverage(pixels([255, 0, 0]))).toBeCloseTo(1 - 0.2126, 12);
    expect(greyCoverage(pixels([0, 0, 255]))).toBeCloseTo(1 - 0.0722, 12);
    // IEC 61966-2-1: dark values follow a straight line, 10 / 255 / 12.92.
    expect(greyCoverage(pixels([10, 10, 10]))).toBeCloseTo(1 - 10 / 255 / 12.92, 12);
    expect(greyCoverage(pixels([188, 188, 188]))).toBeCloseTo(0.5, 2);
  });

  it('on a plate is as its values are: half a value, half the ink', () => {
    expect(plateCoverage(pixels([255, 255, 255], [51, 51, 51]))).toBeCloseTo(0.4, 12);
  });

  it('in inks gives to black what the three colours have in common', () => {
    // ISO 32000-1, 10.3.5 by hand: (0.2, 0.4, 0.6) is 0.8, 0.6, 0.4 of ink; 0.4 of it is black.
    const [c, m, y, k] = inksOfLights(pixels([51, 102, 153]));
    expect(c).toBeCloseTo(0.4, 12);
    expect(m).toBeCloseTo(0.2, 12);
    expect(y).toBeCloseTo(0, 12);
    expect(k).toBeCloseTo(0.4, 12);
    expect(inksOfLights(pixels([0, 0, 0], [255, 255, 255]))).toEqual([0, 0, 0, 0.5]);
  });

  it('for the model is that of all four inks together', () => {
    expect(inkCoverage({ cmyk: [0.5, 0.25, 0.125, 1] })).toBe(1.875);
  });
});
