// Sheets to be cut, for the tests of the cutting order.
import fc from 'fast-check';
import type { Cutter } from '../../shared/cutting/cutter.ts';
import type { CuttingInput } from '../../shared/cutting/cuttingInput.ts';
import type { SheetHold } from '../../shared/geometry/register.ts';
import type { Position } from '../../shared/layout/position.ts';
import type { UnitBox } from './cutTrees.ts';

/** A guillotine that takes any sheet of the tests and holds half an inch. */
export const LARGE_CUTTER: Cutter = {
  name: 'Large guillotine',
  widest: 10_000,
  deepest: 10_000,
  leastGauge: 36,
  opening: 200,
  mostStack: 144,
  guides: ['left', 'right'],
};

export const holds: fc.Arbitrary<SheetHold> = fc.record({
  across: fc.constantFrom('left' as const, 'right' as const, 'centre' as const),
  along: fc.constantFrom('lead' as const, 'centre' as const),
});

/** A sheet of these boxes, one position each, `unit` pt to a unit. */
export function sheetToCut(
  size: { readonly w: number; readonly h: number },
  boxes: readonly UnitBox[],
  unit: number,
  changes: Partial<CuttingInput> = {},
): CuttingInput {
  const arrangement = boxes.map(
    ({ x, y, w, h }): Position => ({
      piece: 'Card',
      face: 'front',
      head: 0,
      trim: { x: x * unit, y: y * unit, w: w * unit, h: h * unit },
    }),
  );
  return {
    sheet: { w: size.w * unit, h: size.h * unit },
    arrangement,
    designs: [{ name: 'Card', bleed: 9, turned: 'head-to-head', hasBack: true }],
    work: { style: 'work-and-back', turn: 'side-to-side' },
    hold: { across: 'left', along: 'lead' },
    cutter: LARGE_CUTTER,
    unit: 'in',
    ...changes,
  };
}

/** A grid of `across` by `along` pieces of 2 x 3 units in reading order, `gutter` apart, with margins of 1. */
export function gridToCut(
  across: number,
  along: number,
  gutter: number,
  changes: Partial<CuttingInput> = {},
): CuttingInput {
  const boxes = Array.from({ length: across * along }, (_, i) => ({
    x: 1 + (i % across) * (2 + gutter),
    y: 1 + (along - 1 - Math.floor(i / across)) * (3 + gutter),
    w: 2,
    h: 3,
  }));
  const size = { w: 2 + across * (2 + gutter) - gutter, h: 2 + along * (3 + gutter) - gutter };
  return sheetToCut(size, boxes, 72, changes);
}
