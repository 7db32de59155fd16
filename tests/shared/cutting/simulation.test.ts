// The cutting order, followed by a simulation of a guillotine that reads nothing but what a person is told.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CuttingInput } from '../../../shared/cutting/cuttingInput.ts';
import type { CuttingOrder } from '../../../shared/cutting/order.ts';
import { planCuts } from '../../../shared/cutting/planCuts.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { arrange } from '../../../shared/layout/arrange.ts';
import { arrangeInputs } from '../../kit/arrangeInputs.ts';
import { holds, LARGE_CUTTER, sheetToCut } from '../../kit/cutJobs.ts';
import { cutAsTold, type Finished } from '../../kit/cutSimulation.ts';
import { unitLayouts } from '../../kit/cutTrees.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { works } from '../../kit/markedJobs.ts';
import { printForCutting } from '../../kit/printForCutting.ts';

const NOTHING_WRONG = { w: 0, h: 0 };

function planned(input: CuttingInput): CuttingOrder {
  const order = planCuts(input);
  if (!order.ok) throw new Error(order.fault.message);
  return order.value;
}

function cut(input: CuttingInput, order: CuttingOrder, wrong = NOTHING_WRONG) {
  const { sheet, arrangement, hold, work } = input;
  return cutAsTold(order, printForCutting({ sheet, arrangement, hold, turn: turnOf(work), wrong }));
}

/** Everything on it lies where the pile does, edge on edge, front and back. */
function expectWhole({ pile }: Finished): void {
  const [ink, another] = pile.ink;
  expect(another).toBeUndefined();
  for (const face of [ink!.front, ink!.back]) {
    expect(Math.abs(face.x)).toBeLessThan(0.03);
    expect(Math.abs(face.y)).toBeLessThan(0.03);
    expect(Math.abs(face.w - pile.w)).toBeLessThan(0.03);
    expect(Math.abs(face.h - pile.h)).toBeLessThan(0.03);
  }
}

function expectAllWhole(input: CuttingInput): void {
  const order = planned(input);
  const { finished, complaints } = cut(input, order);
  expect(complaints).toEqual([]);
  expect(finished.map((f) => f.position).toSorted((a, b) => a - b)).toEqual(
    input.arrangement.map((_p, i) => i),
  );
  for (const one of finished) {
    expect(one.pile.ink[0]!.position).toBe(one.position);
    expectWhole(one);
  }
}

describe('every sheet that is laid out, whatever the work style, the gutter and the sizes', () => {
  const inputs = arrangeInputs({
    sheetFrom: 11,
    mostDesigns: 3,
    centring: fc.record({
      across: fc.constantFrom('centre' as const, 'left' as const, 'right' as const),
      along: fc.constantFrom('centre' as const, 'lead' as const, 'tail' as const),
    }),
  });

  it('comes apart into its pieces at their trims, held as a guillotine is worked', () => {
    let laidOut = 0;
    fc.assert(
      fc.property(inputs, holds, (input, hold) => {
        const laid = arrange(input);
        if (!laid.ok) return;
        laidOut += 1;
        const { positions } = laid.value;
        expectAllWhole({ ...input, arrangement: positions, hold, cutter: LARGE_CUTTER });
      }),
      drawnCases(60),
    );
    expect(laidOut).toBeGreaterThan(30);
  });
});

describe('sheets of any parts beside and above one another', () => {
  const layouts = unitLayouts(4, 1, 5).filter(({ pieces }) => pieces.length > 1);

  it('come apart into their pieces', () => {
    fc.assert(
      fc.property(layouts, holds, works, ({ pieces, ...size }, hold, work) => {
        expectAllWhole(sheetToCut(size, pieces, 36, { hold, work }));
      }),
      drawnCases(60),
    );
  });
});

describe('paper that is cut too large or too small', () => {
  const margins = unitLayouts(2, 1, 3).map(({ w, h, pieces }) => ({
    size: { w: w + 2, h: h + 2 },
    pieces: pieces.map((p) => ({ ...p, x: p.x + 1, y: p.y + 1 })),
  }));
  const errors = fc.record({ w: fc.integer({ min: -4, max: 4 }), h: fc.integer({ min: -4, max: 4 }) });

  it('leaves on each edge of each piece just the error that its cut is said to have', () => {
    fc.assert(
      fc.property(margins, holds, works, errors, ({ size, pieces }, hold, work, wrong) => {
        const input = sheetToCut(size, pieces, 72, { hold, work });
        const order = planned(input);
        const { finished } = cut(input, order, wrong);
        expect(finished).toHaveLength(pieces.length);
        for (const { pile, position } of finished) {
          const ink = pile.ink.find((i) => i.position === position)!;
          const { w, h } = ink.front;
          expect([pile.w, pile.h].map((n) => n.toFixed(6))).toEqual([w, h].map((n) => n.toFixed(6)));
          const errorsOf = (face: typeof ink.front) => [
            pile.h - face.y - face.h,
            pile.w - face.x - face.w,
            face.y,
            face.x,
          ];
          pile.edges.forEach(({ cutIn }, edge) => {
            const { register } = order.steps[cutIn! - 1]!;
            const error = register.dimension === 'width' ? wrong.w : wrong.h;
            const said2 = register.side2 ?? register.side1;
            expect(Math.abs(errorsOf(ink.front)[edge]!)).toBeCloseTo(register.side1 * Math.abs(error), 6);
            expect(Math.abs(errorsOf(ink.back)[edge]!)).toBeCloseTo(said2 * Math.abs(error), 6);
          });
        }
      }),
      drawnCases(60),
    );
  });
});
