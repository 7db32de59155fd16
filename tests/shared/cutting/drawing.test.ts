// The drawings of the steps, against the table of the simulated guillotine.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CuttingInput } from '../../../shared/cutting/cuttingInput.ts';
import { drawStep } from '../../../shared/cutting/drawing.ts';
import type { CutStep, CuttingOrder } from '../../../shared/cutting/order.ts';
import { planCuts } from '../../../shared/cutting/planCuts.ts';
import type { Point } from '../../../shared/geometry/space.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import type { PathShape, WordsShape } from '../../../shared/pdf/document/shape.ts';
import { gridToCut, holds, sheetToCut } from '../../kit/cutJobs.ts';
import { cutAsTold } from '../../kit/cutSimulation.ts';
import { unitLayouts } from '../../kit/cutTrees.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { measure } from '../../kit/markedJobs.ts';
import { printForCutting } from '../../kit/printForCutting.ts';

const ROOM = { w: 170, h: 150 };
const MEASURES = { plain: measure, strong: measure };

function planned(input: CuttingInput): CuttingOrder {
  const order = planCuts(input);
  if (!order.ok) throw new Error(order.fault.message);
  return order.value;
}

function drawn(order: CuttingOrder, step: CutStep) {
  const { shapes } = drawStep(order, step, ROOM, 'in', MEASURES);
  const paths = shapes.filter((shape): shape is PathShape => shape.kind === 'path');
  const words = shapes.filter((shape): shape is WordsShape => shape.kind === 'words');
  return { paths, words };
}

function cornersOf({ contours }: PathShape): readonly Point[] {
  return contours.flatMap(({ from, along }) => [from, ...along.map((to) => ('to' in to ? to.to : to))]);
}

function boxOf(path: PathShape) {
  const corners = cornersOf(path);
  const [x, y] = [Math.min(...corners.map((p) => p.x)), Math.min(...corners.map((p) => p.y))];
  return { x, y, w: Math.max(...corners.map((p) => p.x)) - x, h: Math.max(...corners.map((p) => p.y)) - y };
}

const isKnife = (path: PathShape) => path.stroke?.dash !== undefined;
const isPiece = (path: PathShape) => path.fill === 'pale';
const isHatched = (path: PathShape) =>
  path.fill === undefined && path.contours.every((c) => !c.closed) && path.stroke?.tone === 'soft';

describe('the drawing of a step', () => {
  it('shows the pieces where they lie on the table, and the knife where it comes down', () => {
    fc.assert(
      fc.property(unitLayouts(2, 1, 4), holds, ({ pieces, ...size }, hold) => {
        const input = sheetToCut(size, pieces, 72, { hold });
        const order = planned(input);
        const { sheet, arrangement, work } = input;
        const wrong = { w: 0, h: 0 };
        const { lain } = cutAsTold(
          order,
          printForCutting({ sheet, arrangement, hold, turn: turnOf(work), wrong }),
        );
        order.steps.forEach((step, i) => {
          const pile = lain[i]!;
          const { paths } = drawn(order, step);
          const stack = boxOf(paths[0]!);
          const scale = stack.w / pile.w;
          expect(stack.h).toBeCloseTo(pile.h * scale, 6);
          const shown = paths.filter(isPiece).map(boxOf);
          expect(shown).toHaveLength(pile.ink.length);
          for (const { front } of pile.ink) {
            const lies = {
              x: stack.x + front.x * scale,
              y: stack.y + front.y * scale,
              w: front.w * scale,
              h: front.h * scale,
            };
            const near = (b: typeof lies) =>
              (['x', 'y', 'w', 'h'] as const).every((key) => Math.abs(b[key] - lies[key]) < 1e-6);
            expect(shown.filter(near)).toHaveLength(1);
          }
          const [knife] = paths.filter(isKnife).map(boxOf);
          expect(knife!.y).toBeCloseTo(stack.y + stack.h - step.distance * scale, 6);
          const hasWaste = [step.parts[0].behind, step.parts[0].inFront].some((o) => o.becomes === 'waste');
          expect(paths.some(isHatched)).toBe(hasWaste);
        });
      }),
      drawnCases(40),
    );
  });

  it('stays in its room', () => {
    const order = planned(gridToCut(4, 6, 1));
    for (const step of order.steps) {
      for (const path of drawn(order, step).paths) {
        for (const { x, y } of cornersOf(path)) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(ROOM.w);
          expect(y).toBeGreaterThanOrEqual(-ROOM.h);
          expect(y).toBeLessThanOrEqual(0);
        }
      }
    }
  });

  it('numbers the positions, names the edges and gives the distance', () => {
    const order = planned(gridToCut(2, 2, 1));
    const said = (n: number) => drawn(order, order.steps[n - 1]!).words.map((w) => w.words);
    expect(said(1)).toEqual(['1', '2', '3', '4', '8 in', 'back gauge: lead edge', 'left guide: left edge']);
    expect(said(7)).toEqual(['2', '4', '4 in', 'back gauge: lead edge', 'left guide: left edge, 2 stacks']);
  });

  it('hatches what falls away, and nothing else', () => {
    const order = planned(gridToCut(2, 2, 1));
    const [hatching] = drawn(order, order.steps[0]!).paths.filter(isHatched);
    const stack = boxOf(drawn(order, order.steps[0]!).paths[0]!);
    const scale = stack.h / (9 * 72);
    // The tail margin of one inch, at the bottom of the stack; the lines reach its lower and its upper edge.
    const box = boxOf(hatching!);
    expect(box.y).toBeCloseTo(stack.y, 6);
    expect(box.h).toBeCloseTo(72 * scale, 6);
    expect(box.x).toBeGreaterThanOrEqual(stack.x);
    expect(box.x + box.w).toBeLessThanOrEqual(stack.x + stack.w + 1e-9);
  });

  it('leaves out numbers that are too small to read', () => {
    const order = planned(gridToCut(10, 14, 0));
    expect(drawn(order, order.steps[0]!).words).toHaveLength(3);
    expect(drawn(order, order.steps[0]!).paths.filter(isPiece)).toHaveLength(140);
  });

  it('has the guide at its hand and the distance at the other', () => {
    for (const across of ['left', 'right'] as const) {
      const order = planned(gridToCut(2, 2, 1, { hold: { across, along: 'lead' } }));
      const { paths, words } = drawn(order, order.steps[0]!);
      const stack = boxOf(paths[0]!);
      const guide = boxOf(paths.find((p) => p.fill === 'soft')!);
      const gauge = boxOf(paths.find((p) => p.fill === 'ink')!);
      const distance = words.find((w) => w.words === '8 in')!;
      expect(gauge.y).toBeCloseTo(stack.y + stack.h, 6);
      expect(distance.head).toBe(90);
      if (across === 'left') {
        expect(guide.x + guide.w).toBeCloseTo(stack.x, 6);
        expect(distance.at.x).toBeGreaterThan(stack.x + stack.w);
      } else {
        expect(guide.x).toBeCloseTo(stack.x + stack.w, 6);
        expect(distance.at.x).toBeLessThan(stack.x);
      }
    }
  });
});

describe('the arrow of the turn', () => {
  /** Where the curve begins and where the tip of the arrow is. */
  const arrow = (turned: CutStep['turned']) => {
    const order = planned(gridToCut(2, 2, 1));
    const { paths } = drawn(order, { ...order.steps[1]!, turned });
    const curves = paths.filter((p) => p.contours.some((c) => c.along.some((to) => 'to' in to)));
    const tip = paths.findLast((p) => p.fill === 'ink' && p.contours[0]!.along.length === 2);
    return { curves, from: curves[0]?.contours[0]?.from, tip: tip?.contours[0]?.from };
  };

  it('goes from the left over the top to the right when the stack is turned clockwise', () => {
    const { from, tip, curves } = arrow(1);
    expect(curves).toHaveLength(1);
    expect(tip!.x - from!.x).toBeCloseTo(12 + 6, 6);
    expect(tip!.y - from!.y).toBeCloseTo(12, 6);
  });

  it('goes from the right over the top to the left when it is turned counter-clockwise', () => {
    const { from, tip } = arrow(-1);
    expect(tip!.x - from!.x).toBeCloseTo(-12 - 6, 6);
    expect(tip!.y - from!.y).toBeCloseTo(12, 6);
  });

  it('goes half round when the stack is, and is missing when it is not turned', () => {
    const { from, tip, curves } = arrow(2);
    expect(curves).toHaveLength(2);
    expect(tip!.x - from!.x).toBeCloseTo(24, 6);
    expect(tip!.y - from!.y).toBeCloseTo(-6, 6);
    expect(arrow(0).curves).toHaveLength(0);
  });
});
