import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alignedScale } from '../../../shared/proof/alignedScale.ts';
import { drawnCases } from '../../kit/drawnCases.ts';

/** How many different parts of a pixel the places fall on, told to a hundredth of a pixel. */
function phasesOf(places: readonly number[], scale: number): number {
  const [first = 0] = places;
  const parts = places.map((place) => {
    const pixels = (place - first) * scale;
    return Math.abs(pixels - Math.round(pixels)) < 0.005
      ? 0
      : Math.round((pixels - Math.floor(pixels)) * 100);
  });
  return new Set(parts).size;
}

describe('The scale of a drawing', () => {
  it('puts the places of any grid on one part of a pixel, and is at most a tenth finer than asked', () => {
    const step = fc.double({ min: 20, max: 900, noNaN: true });
    const first = fc.double({ min: 0, max: 50, noNaN: true });
    const asked = fc.double({ min: 1, max: 5, noNaN: true });
    fc.assert(
      fc.property(first, step, fc.integer({ min: 2, max: 20 }), asked, (from, by, count, scale) => {
        const places = Array.from({ length: count }, (_, i) => from + i * by);
        const aligned = alignedScale(places, scale);
        expect(aligned).toBeGreaterThanOrEqual(scale - 1 / by / 100);
        expect(aligned).toBeLessThanOrEqual(scale * 1.1);
        expect(phasesOf(places, aligned)).toBe(1);
      }),
      drawnCases(200),
    );
  });

  it('takes whole steps of 255 pt at 4 pixels to the pt as they are', () => {
    expect(alignedScale([30, 285, 540], 4)).toBe(4);
  });

  it('finds the scale at which two steps are whole pixels: 100.5 pt and 60 pt at 4.0 or, as here, from 3.9 up', () => {
    const places = [0, 100.5, 201, 261, 321];
    expect(phasesOf(places, 3.9)).toBeGreaterThan(1);
    expect(phasesOf(places, alignedScale(places, 3.9))).toBe(1);
  });

  it('is the one that was asked for one place, or for none', () => {
    expect(alignedScale([17], 4.1)).toBe(4.1);
    expect(alignedScale([], 4.1)).toBe(4.1);
  });
});
