// Random orders to be laid out, in sixteenths of an inch: any style, turn, reader and lie.
import fc from 'fast-check';
import type { ReaderTurn } from '../../shared/geometry/head.ts';
import type { ArrangeInput } from '../../shared/layout/arrange.ts';
import type { Centring } from '../../shared/layout/centring.ts';
import type { Lies } from '../../shared/layout/lies.ts';
import { works } from './markedJobs.ts';

interface Range {
  /** The least side of a sheet, in inches. */
  readonly sheetFrom: number;
  readonly mostDesigns: number;
  readonly centring: fc.Arbitrary<Centring>;
}

const inches = (min: number, max: number) =>
  fc.integer({ min: min * 16, max: max * 16 }).map((n) => (n * 72) / 16);

/** Designs of 2 to 6 inches on sheets of up to 20. */
export function arrangeInputs({ sheetFrom, mostDesigns, centring }: Range): fc.Arbitrary<ArrangeInput> {
  const designs = fc.array(
    fc.record({
      trim: fc.record({ w: inches(2, 5), h: inches(2, 6) }),
      bleed: fc.constantFrom(0, 4.5, 9),
      lies: fc.constantFrom<Lies>('upright', 'on-its-side', 'either'),
      quantity: fc.integer({ min: 1, max: 300 }),
      turned: fc.constantFrom<ReaderTurn>('head-to-head', 'head-to-toe'),
      hasBack: fc.constant(true),
    }),
    { minLength: 1, maxLength: mostDesigns },
  );
  return fc.record({
    sheet: fc.record({ w: inches(sheetFrom, 20), h: inches(sheetFrom, 20) }),
    unprintable: fc.record({
      lead: inches(0, 0.5),
      tail: inches(0, 0.5),
      left: inches(0, 0.5),
      right: inches(0, 0.5),
    }),
    work: works,
    gutter: fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 3, arbitrary: inches(0, 0.5) }),
    centring,
    unit: fc.constant('in' as const),
    designs: designs.map((list) => list.map((d, i) => ({ ...d, name: `Card ${i}` }))),
  });
}
