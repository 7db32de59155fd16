// Numbers for property tests, spread evenly over their range. Random float64 bits would be tiny nearly always.
import fc from 'fast-check';

/** Any number from `min` to `max`, in a million even steps. */
export function numberFrom(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((n) => min + ((max - min) * n) / 1_000_000);
}
