// Random sheets in rows and columns, as a plan lays them, and what a hand makes of them.
import fc from 'fast-check';
import { numberFrom } from './anyNumber.ts';
import type { Placed } from './staggered.ts';

const gutter = fc.oneof(fc.constantFrom(0, 6, 18), numberFrom(0, 24));

/** Cards of one size in rows and columns: some places may be empty, some bleeds others, and one card off its place. */
export const grids: fc.Arbitrary<readonly Placed[]> = fc
  .record({
    columns: fc.integer({ min: 1, max: 4 }),
    rows: fc.integer({ min: 1, max: 4 }),
    w: numberFrom(30, 80),
    h: numberFrom(30, 80),
    across: fc.oneof(
      gutter.map((one) => [one]),
      fc.array(gutter, { minLength: 1, maxLength: 4 }),
    ),
    up: fc.oneof(
      gutter.map((one) => [one]),
      fc.array(gutter, { minLength: 1, maxLength: 4 }),
    ),
    bleeds: fc.oneof(fc.constant([9]), fc.array(fc.constantFrom(0, 4, 9), { minLength: 1, maxLength: 16 })),
    isEmpty: fc.oneof(
      fc.constant([false]),
      fc.array(
        fc.nat({ max: 3 }).map((n) => n === 0),
        { minLength: 1, maxLength: 16 },
      ),
    ),
    dragged: fc.option(
      fc.record({ number: fc.nat(), by: fc.tuple(numberFrom(-40, 40), numberFrom(-40, 40)) }),
    ),
  })
  .map(({ columns, rows, w, h, across, up, bleeds, isEmpty, dragged }) => {
    const repeated = <T>(some: readonly T[], i: number): T => some[i % some.length]!;
    const places = Array.from({ length: columns * rows }, (_, i) => i).filter((i) => !repeated(isEmpty, i));
    const start = (count: number, length: number, gutters: readonly number[]) =>
      Array.from({ length: count }).reduce<number>((at, _, i) => at + length + repeated(gutters, i), 100);
    return places.map((i, place): Placed => {
      const [dx, dy] =
        dragged !== null && dragged.number % places.length === place ? dragged.by : ([0, 0] as const);
      const x = start(i % columns, w, across) + dx;
      const y = start(Math.floor(i / columns), h, up) + dy;
      return { trim: { x, y, w, h }, bleed: repeated(bleeds, i) };
    });
  });
