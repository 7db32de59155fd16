// How large a step is drawn, and where its words, its numbers, its dimension and its arrow stand. Every letter is taken to
// be 0.6 of its size wide, so that all sums can be done by hand.
import { describe, expect, it } from 'vitest';
import { drawStep } from '../../../shared/cutting/drawing.ts';
import { hatchLines } from '../../../shared/cutting/hatch.ts';
import type { CutStep } from '../../../shared/cutting/order.ts';
import { planCuts } from '../../../shared/cutting/planCuts.ts';
import { gridToCut } from '../../kit/cutJobs.ts';
import { granted } from '../../kit/granted.ts';
import { measure } from '../../kit/markedJobs.ts';
import { type Extent, extentOf, liesApart, liesIn, pathsIn, pointsOf, wordsIn } from '../../kit/shapes.ts';

const ROOM = { w: 170, h: 150 };
const WHOLE: Extent = { left: 0, right: ROOM.w, bottom: -ROOM.h, top: 0 };
/** As high as figures and capitals are, of a size of 1: cap height of DejaVu Sans, 1493 of 2048. */
const CAPITALS = 0.73;

type Grid = Parameters<typeof gridToCut>;

/** A step of a grid of pieces of 2 x 3 in, drawn: the stack is the first path. */
function drawn(grid: Grid, number: number, changes: Partial<CutStep> = {}) {
  const order = granted(planCuts(gridToCut(...grid)));
  const { shapes, w, h } = drawStep(order, { ...order.steps[number - 1]!, ...changes }, ROOM, 'in', {
    plain: measure,
    strong: measure,
  });
  const [words, paths] = [wordsIn(shapes), pathsIn(shapes)];
  return { words, paths, stack: extentOf(paths[0]!), size: { w, h } };
}

const RIGHT = { hold: { across: 'right', along: 'lead' } } as const;
const HANDS: readonly (readonly ['left' | 'right', Grid])[] = [
  ['left', [2, 2, 1]],
  ['right', [2, 2, 1, RIGHT]],
];
const roomOf = ({ words, at, size, head }: ReturnType<typeof drawn>['words'][number]): Extent => {
  const [long, high] = [measure(words) * size, CAPITALS * size];
  return head === 90
    ? { left: at.x - high, right: at.x, bottom: at.y, top: at.y + long }
    : { left: at.x, right: at.x + long, bottom: at.y, top: at.y + high };
};
const middleOf = ({ left, right, bottom, top }: Extent) => ({ x: (left + right) / 2, y: (bottom + top) / 2 });

describe('the stack in the drawing of a step', () => {
  it('is as high as its room where it is tall: 112 of 150 pt, without 20 above and 18 below', () => {
    // A sheet of 7 x 9 in: 112 x 7/9 = 87.11 wide.
    const { stack, size } = drawn([2, 2, 1], 1);
    expect(size).toEqual(ROOM);
    expect([stack.top, stack.bottom, stack.left]).toEqual([-20, -132, 40]);
    expect(stack.right - stack.left).toBeCloseTo(87.111, 3);
  });

  it('is as wide as its room where it is wide: 90 of 170 pt, without 40 at either side', () => {
    // A sheet of 10 x 5 in.
    const { stack } = drawn([4, 1, 0], 1);
    expect([stack.left, stack.right, stack.top]).toEqual([40, 130, -20]);
    expect(stack.bottom).toBeCloseTo(-20 - 45);
  });

  it('lies against the guide, whichever hand that is at', () => {
    expect(drawn([2, 2, 1, RIGHT], 1).stack.right).toBeCloseTo(170 - 40);
  });
});

describe('the machine in the drawing of a step', () => {
  it.each(HANDS)(
    'has its gauge and its knife beyond the stack at both sides, guide at the %s',
    (_hand, grid) => {
      const { stack, paths } = drawn(grid, 1);
      const gauge = extentOf(paths.find(({ fill }) => fill === 'ink')!);
      const knife = extentOf(paths.find(({ stroke }) => stroke?.dash !== undefined)!);
      expect([gauge.bottom, gauge.top]).toEqual([stack.top, stack.top + 5]);
      for (const { left, right } of [gauge, knife]) {
        expect(stack.left - left).toBeCloseTo(8);
        expect(right - stack.right).toBeCloseTo(8);
      }
    },
  );

  it.each(HANDS)('has its guide along the upper part of the stack, at the %s', (hand, grid) => {
    // Two fifths of 112.
    const { stack, paths } = drawn(grid, 1);
    const guide = extentOf(paths.find(({ fill }) => fill === 'soft')!);
    expect([guide.top, guide.top - guide.bottom]).toEqual([expect.closeTo(stack.top), expect.closeTo(44.8)]);
    expect(guide.right - guide.left).toBeCloseTo(5);
    expect(hand === 'left' ? guide.right : guide.left).toBeCloseTo(stack[hand]);
  });

  it('has a guide that is seen where the stack is flat, and none longer than the stack', () => {
    const guideOf = (grid: Grid) => {
      const { stack, paths } = drawn(grid, 1);
      const { top, bottom } = extentOf(paths.find(({ fill }) => fill === 'soft')!);
      return [stack.top - stack.bottom, top - bottom];
    };
    // 22 x 5 in: 90 x 5/22 = 20.45 high, two fifths of which are 8.2. 42 x 5 in: 10.71 high.
    expect(guideOf([10, 1, 0])).toEqual([expect.closeTo(20.4545, 3), 12]);
    const [high, long] = guideOf([20, 1, 0]);
    expect([high, long]).toEqual([expect.closeTo(10.7143, 3), high]);
  });
});

describe('the numbers in the drawing of a step', () => {
  const numbersOf = (grid: Grid) => drawn(grid, 1).words.filter(({ words }) => /^\d+$/.test(words));

  it('stand in the middle of their pieces', () => {
    const { words, paths } = drawn([2, 2, 1], 1);
    const pieces = paths.filter(({ fill }) => fill === 'pale').map((of) => middleOf(extentOf(of)));
    const numbers = words.filter(({ words }) => /^\d+$/.test(words));
    expect(numbers.map(({ size, weight, tone, head }) => [size, weight, tone, head])).toEqual(
      numbers.map(() => [10, 'strong', 'ink', 0]),
    );
    numbers.forEach((number, i) => {
      const { x, y } = middleOf(roomOf(number));
      expect([x, y]).toEqual([expect.closeTo(pieces[i]!.x), expect.closeTo(pieces[i]!.y)]);
    });
  });

  it('are of one size on equal pieces, so that the longest has its piece with a fifth to spare', () => {
    // 13 x 25 in on 112 pt: a piece is 8.96 wide, "24" is 1.2 of its size. 8.96 x 0.8 / 1.2.
    const numbers = numbersOf([4, 6, 1]);
    expect(numbers).toHaveLength(24);
    for (const { size } of numbers) expect(size).toBeCloseTo(5.9733, 3);
  });

  it('take seven tenths of a piece that is flat', () => {
    // The second step has the left edge at the gauge: 16 x 4 in stand 16 high on 112 pt, and each piece is 14 high.
    const numbers = drawn([7, 1, 0], 2).words.filter(({ words }) => /^\d+$/.test(words));
    expect(numbers).toHaveLength(7);
    for (const { size } of numbers) expect(size).toBeCloseTo(9.8);
  });

  it('are left out as soon as they would be smaller than 4 pt', () => {
    // 10 x 35 in: 2 x 112 / 35 = 6.4 wide, 6.4 x 0.8 / 1.2 = 4.27. 10 x 38 in: 5.89 wide, 3.93.
    expect(numbersOf([4, 11, 0]).map(({ words }) => words)).toHaveLength(44);
    expect(numbersOf([4, 12, 0])).toEqual([]);
  });
});

describe('the distance in the drawing of a step', () => {
  const dimension = (grid: Grid, changes: Partial<CutStep> = {}) => {
    const { words, paths, stack } = drawn(grid, 1, changes);
    const said = words.find(({ head }) => head === 90)!;
    const thin = paths.filter((of) => of.stroke?.width === 0.8 && pointsOf(of).length === 2).map(extentOf);
    return { stack, said, thin };
  };

  it.each(HANDS)(
    'is a line from the gauge to the knife with a tick at each end, guide at the %s',
    (hand, grid) => {
      // 8 of 9 in on 112 pt: 99.56 long.
      const { stack, thin } = dimension(grid);
      const [line, ...ticks] = thin;
      expect([line!.top, line!.top - line!.bottom]).toEqual([-20, expect.closeTo(99.556, 3)]);
      expect(line!.left).toBe(line!.right);
      expect(hand === 'left' ? line!.left - stack.right : stack.left - line!.right).toBeCloseTo(13);
      expect(ticks.map(({ top, bottom }) => [top, bottom])).toEqual([
        [line!.top, line!.top],
        [line!.bottom, line!.bottom],
      ]);
      for (const { left, right } of ticks) {
        expect(line!.left - left).toBeCloseTo(3);
        expect(right - line!.left).toBeCloseTo(3);
      }
    },
  );

  it.each(HANDS)(
    'is said beside the middle of the line, away from the stack, guide at the %s',
    (hand, grid) => {
      const { said, thin } = dimension(grid);
      const [room, line] = [roomOf(said), thin[0]!];
      expect(middleOf(room).y).toBeCloseTo(middleOf(line).y);
      expect(hand === 'left' ? room.left - line.right : line.left - room.right).toBeCloseTo(4);
    },
  );

  it('is said within the drawing where the knife is close to the gauge', () => {
    // "33/64 in" is 8 x 6 = 48 long; its middle would be 20 + 3.2 below the upper edge, and so it would run over it.
    const { said } = dimension([2, 2, 1], { distance: (33 / 64) * 72 });
    expect(said.words).toBe('33/64 in');
    expect(roomOf(said).top).toBeCloseTo(0);
  });
});

describe('the words in the drawing of a step', () => {
  it.each(HANDS)('stand above and below the middle of the stack, guide at the %s', (_hand, grid) => {
    const { words, stack } = drawn(grid, 1);
    const [above, below] = words.slice(-2).map(roomOf);
    expect(middleOf(above!).x).toBeCloseTo(middleOf(stack).x);
    expect(middleOf(below!).x).toBeCloseTo(middleOf(stack).x);
    expect(above!.bottom).toBeGreaterThan(stack.top + 5);
    expect(below!.top).toBeLessThan(stack.bottom);
  });

  it('are moved into the drawing where the stack lies close to its side', () => {
    // "left guide: left edge, 2 stacks" is 31 x 4.5 = 139.5 long, and the middle of a strip of 2 x 7 in 56 from the left.
    const [below] = drawn([2, 2, 1], 7).words.slice(-1);
    expect(below!.words).toBe('left guide: left edge, 2 stacks');
    expect(roomOf(below!).left).toBe(0);
    const [other] = drawn([2, 2, 1, RIGHT], 7, { side: { hand: 'right', edge: 'right' } }).words.slice(-1);
    expect(roomOf(other!).right).toBeCloseTo(ROOM.w);
  });

  it('are plain, and none lies over another or outside the drawing', () => {
    for (const [, grid] of HANDS) {
      for (let number = 1; number <= 8; number += 1) {
        const { words } = drawn(grid, number);
        for (const { size, weight } of words.slice(-2)) expect([size, weight]).toEqual([7.5, 'plain']);
        const rooms = words.map(roomOf);
        for (const room of rooms) expect(liesIn(room, WHOLE)).toBe(true);
        expect(rooms.every((a) => rooms.every((b) => a === b || liesApart(a, b)))).toBe(true);
      }
    }
  });
});

describe('the arrow in the drawing of a step', () => {
  it.each(HANDS)(
    'stands in the lower corner beside the stack, clear of all else, guide at the %s',
    (hand, grid) => {
      for (const turned of [1, -1, 2] as const) {
        const side = { hand, edge: hand };
        const { paths, words, stack } = drawn(grid, 2, { turned, side });
        const without = drawn(grid, 2, { turned: 0, side }).paths.length;
        const arrow = paths.slice(without).map(extentOf);
        expect(arrow).toHaveLength(turned === 2 ? 3 : 2);
        for (const part of arrow) {
          expect(liesIn(part, WHOLE)).toBe(true);
          expect(hand === 'left' ? part.right < stack.left : part.left > stack.right).toBe(true);
          expect(part.top).toBeLessThan(-ROOM.h / 2);
          expect(words.every((said) => liesApart(part, roomOf(said)))).toBe(true);
        }
      }
    },
  );

  it('has a tip that is as broad to both sides of its way', () => {
    const tipOf = (turned: 1 | 2) => pointsOf(drawn([2, 2, 1], 2, { turned }).paths.at(-1)!);
    const [point, one, other] = tipOf(1);
    // To the right, 6 long and 7.2 broad.
    expect(point!.x - one!.x).toBeCloseTo(6);
    expect(other!.x).toBeCloseTo(one!.x);
    expect(Math.abs(one!.y - other!.y)).toBeCloseTo(7.2);
    expect((one!.y + other!.y) / 2).toBeCloseTo(point!.y);
    const [down, left, right] = tipOf(2);
    expect(left!.y - down!.y).toBeCloseTo(6);
    expect(right!.y).toBeCloseTo(left!.y);
    expect((left!.x + right!.x) / 2).toBeCloseTo(down!.x);
    expect(Math.abs(left!.x - right!.x)).toBeCloseTo(7.2);
  });

  it('runs on a circle', () => {
    // A cubic with handles of 0.5523 stays within 0.03 % of a quarter of a circle (common approximation): at its middle
    // (P0 + 3 C1 + 3 C2 + P1) / 8 is as far from the middle of the circle as its ends.
    const curves = drawn([2, 2, 1], 2, { turned: 2 }).paths.slice(-3, -1);
    const centre = { x: 18, y: -120 };
    for (const { contours } of curves) {
      const { from, along } = contours[0]!;
      const [step] = along;
      if (step === undefined || !('to' in step)) throw new Error('The arrow is straight');
      const half = (of: 'x' | 'y') =>
        (from[of] + 3 * step.c1[of] + 3 * step.c2[of] + step.to[of]) / 8 - centre[of];
      expect(Math.hypot(half('x'), half('y'))).toBeCloseTo(12, 1);
      expect(Math.hypot(step.to.x - centre.x, step.to.y - centre.y)).toBeCloseTo(12);
    }
  });
});

describe('the hatch of waste', () => {
  it('has an outline that is drawn as that of the stack', () => {
    // The margin at the tail, 7 x 1 in, on 12.44 pt to the inch.
    const { paths, stack } = drawn([2, 2, 1], 1);
    const outline = paths.find((of) => {
      const { bottom, top } = extentOf(of);
      return (
        of.contours.every(({ closed }) => closed) &&
        bottom === stack.bottom &&
        Math.abs(top - bottom - 12.444) < 0.001
      );
    });
    expect(paths[0]).toMatchObject({ fill: 'paper', stroke: { tone: 'ink', width: 0.8 } });
    expect(outline?.stroke).toEqual(paths[0]!.stroke);
  });

  it('is lines at 45 degrees, 5 pt apart along the edge, from edge to edge of what they fill', () => {
    const { contours, stroke } = hatchLines({ x: 3, y: 4, w: 12, h: 7 }, { tone: 'soft', width: 0.4 });
    // They would meet the lower edge at -2, 3 and 8 from the left; 13 is beyond it.
    expect(contours).toEqual([
      { from: { x: 3, y: 6 }, along: [{ x: 8, y: 11 }], closed: false },
      { from: { x: 6, y: 4 }, along: [{ x: 13, y: 11 }], closed: false },
      { from: { x: 11, y: 4 }, along: [{ x: 15, y: 8 }], closed: false },
    ]);
    expect(stroke).toEqual({ tone: 'soft', width: 0.4 });
  });
});
