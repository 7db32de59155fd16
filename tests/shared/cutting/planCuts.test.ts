// The cutting order against every possible order on small sheets, and against what the trade counts on grids.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CuttingInput } from '../../../shared/cutting/cuttingInput.ts';
import { letterFor } from '../../../shared/cutting/letters.ts';
import type { CuttingOrder } from '../../../shared/cutting/order.ts';
import { planCuts } from '../../../shared/cutting/planCuts.ts';
import { gridToCut, LARGE_CUTTER, sheetToCut } from '../../kit/cutJobs.ts';
import { bestToll, type Toll } from '../../kit/cutOrderByBruteForce.ts';
import { unitLayouts } from '../../kit/cutTrees.ts';
import { drawnCases } from '../../kit/drawnCases.ts';

function planned(input: CuttingInput): CuttingOrder {
  const order = planCuts(input);
  if (!order.ok) throw new Error(order.fault.message);
  return order.value;
}

function tollOf({ steps, cuts, turns }: CuttingOrder): Toll {
  const held = steps.flatMap((step) => step.parts.filter((part) => part.behind.becomes === 'waste'));
  return [cuts, held.length, turns];
}

describe('the cutting order of a small sheet', () => {
  const UNIT = 72;
  const layouts = unitLayouts(2, 1, 3).filter(
    ({ w, h, pieces }) => pieces.length > 1 && pieces.length <= 6 && w <= 10 && h <= 10,
  );

  it('has as few cuts and then as few turns as the best of all orders, or is refused where there is none', () => {
    let refused = 0;
    fc.assert(
      fc.property(
        layouts,
        fc.constantFrom(1, 2),
        fc.constantFrom('left' as const, 'right' as const),
        ({ pieces, ...size }, least, guide) => {
          const input = sheetToCut(size, pieces, UNIT, {
            cutter: { ...LARGE_CUTTER, leastGauge: least * UNIT },
            hold: { across: guide, along: 'lead' },
          });
          const best = bestToll({ ...size, pieces, least, guide, onlyAlongTrims: least > 1 });
          const order = planCuts(input);
          if (!order.ok) refused += 1;
          expect(order.ok ? tollOf(order.value) : undefined).toEqual(best);
          if (order.ok) expect(order.value.fewest).toBe(true);
        },
      ),
      drawnCases(150),
    );
    expect(refused).toBeGreaterThan(5);
  });
});

describe('a grid with a margin all round', () => {
  // Common practice, no source: four trims; then each piece but the first costs one cut where trims touch, two where a
  // gutter is cut out. Strips that lie side by side are cut as one, so that lines count instead of pieces.
  const grids = [
    [1, 1],
    [2, 1],
    [2, 2],
    [3, 2],
    [3, 4],
    [4, 6],
    [5, 5],
    [8, 12],
  ] as const;

  it.each(grids)(
    'of %i by %i pieces takes 4 cuts and 1 more for each further piece where trims touch',
    (m, n) => {
      const order = planned(gridToCut(m, n, 0));
      expect(order.cuts).toBe(4 + m * n - 1);
      expect(order.strokes).toBe(4 + (m - 1) + (n - 1));
    },
  );

  it.each(grids)('of %i by %i pieces takes 4 cuts and 2 more for each further piece with gutters', (m, n) => {
    const order = planned(gridToCut(m, n, 1));
    expect(order.cuts).toBe(4 + 2 * (m * n - 1));
    expect(order.strokes).toBe(4 + 2 * (m - 1) + 2 * (n - 1));
    expect(order.steps).toHaveLength(order.strokes);
  });

  it('turns three times to trim, then every strip once', () => {
    // Common practice, no source. Cut into the fewer strips: 4 of the 4 by 6.
    expect(planned(gridToCut(4, 6, 1)).turns).toBe(3 + 4);
  });

  it('without a margin takes no trims', () => {
    const boxes = [0, 2, 4].map((x) => ({ x, y: 0, w: 2, h: 3 }));
    const order = planned(sheetToCut({ w: 6, h: 3 }, boxes, 72));
    expect([order.cuts, order.turns]).toEqual([2, 0]);
  });

  it('of one piece that is the whole sheet takes no cut at all', () => {
    const order = planned(sheetToCut({ w: 2, h: 3 }, [{ x: 0, y: 0, w: 2, h: 3 }], 72));
    expect(order).toMatchObject({ steps: [], settings: 0, cuts: 0, strokes: 0, turns: 0, fewest: true });
  });

  it('says that it is the best up to 24 pieces, and that more are not proven', () => {
    expect(planned(gridToCut(4, 6, 1))).toMatchObject({ fewest: true });
    const more = planned(gridToCut(5, 5, 1));
    expect(more.fewest).toBe(false);
    expect(more.notices[0]).toBe(
      'With so many pieces it is not proven that no other order has fewer cuts or turns.',
    );
  });
});

it('counts a setting only where the back gauge is moved', () => {
  // The sheet is parted at 2 units, and so is one of its columns next.
  const boxes = [
    { x: 0, y: 0, w: 2, h: 3 },
    { x: 0, y: 3, w: 2, h: 2 },
    { x: 2, y: 0, w: 2, h: 2.5 },
    { x: 2, y: 3, w: 2, h: 2 },
  ];
  const { steps, settings } = planned(sheetToCut({ w: 4, h: 5 }, boxes, 72));
  expect(steps.map((s) => s.distance / 72)).toEqual([2, 2, 2.5, 2]);
  expect(settings).toBe(3);
});

describe('the steps of two by two with gutters', () => {
  const steps = () => planned(gridToCut(2, 2, 1)).steps;

  it('square the sheet, part it into strips and then the strips', () => {
    expect(steps().map((s) => [s.turned, s.gauge, s.distance / 72, s.kind, s.parts.length])).toEqual([
      [0, 'lead', 8, 'margin', 1],
      [1, 'left', 6, 'margin', 1],
      [1, 'tail', 7, 'margin', 1],
      [1, 'right', 5, 'margin', 1],
      [0, 'right', 3, 'gutter', 1],
      [0, 'right', 2, 'second', 1],
      [1, 'lead', 4, 'gutter', 2],
      [0, 'lead', 3, 'second', 2],
    ]);
  });

  it('name the stacks as they are parted, and say what comes of each', () => {
    const [, , , , fifth, , seventh, eighth] = steps();
    expect(fifth!.parts[0]).toEqual({
      stack: 'A',
      area: { x: 72, y: 72, w: 360, h: 504 },
      line: [
        { x: 216, y: 72 },
        { x: 216, y: 576 },
      ],
      behind: { becomes: 'stack', area: { x: 216, y: 72, w: 216, h: 504 }, stack: 'A' },
      inFront: { becomes: 'stack', area: { x: 72, y: 72, w: 144, h: 504 }, stack: 'B' },
    });
    expect(seventh!.parts.map((p) => [p.stack, p.behind.becomes, p.inFront.becomes])).toEqual([
      ['A', 'stack', 'piece'],
      ['B', 'stack', 'piece'],
    ]);
    // Both columns, 2 in wide, 4 in below the upper trim at 8 in.
    expect(seventh!.parts.map(({ line }) => line)).toEqual([
      [
        { x: 288, y: 288 },
        { x: 432, y: 288 },
      ],
      [
        { x: 72, y: 288 },
        { x: 216, y: 288 },
      ],
    ]);
    expect(eighth!.parts.map((p) => p.behind)).toMatchObject([{ position: 1 }, { position: 0 }]);
  });

  it('use the side guide where a true edge lies, the left one first', () => {
    expect(steps().map((s) => `${s.side.hand}: ${s.side.edge}`)).toEqual([
      'left: left',
      'left: tail',
      'left: right',
      'left: lead',
      'left: lead',
      'left: lead',
      'left: left',
      'left: left',
    ]);
    const right = planned(gridToCut(2, 2, 1, { hold: { across: 'right', along: 'lead' } }));
    expect(right.knockUp).toEqual(['lead', 'right']);
    expect(right.steps[0]!.side).toEqual({ hand: 'right', edge: 'right' });
    const only = { ...LARGE_CUTTER, guides: ['left'] as const };
    const oneGuide = planned(gridToCut(2, 2, 1, { hold: { across: 'right', along: 'lead' }, cutter: only }));
    expect(oneGuide.steps[0]!.side).toEqual({ hand: 'left', edge: 'left' });
  });
});

it('tells the second cut of a gutter from an empty strip beside a piece that is narrower than its column', () => {
  const boxes = [
    { x: 1, y: 1, w: 2, h: 2 },
    { x: 1, y: 3, w: 3, h: 2 },
    { x: 4.5, y: 1, w: 2, h: 4 },
  ];
  const kinds = planned(sheetToCut({ w: 7.5, h: 6 }, boxes, 72)).steps.map((s) => s.kind);
  expect(kinds).toEqual(['margin', 'margin', 'margin', 'margin', 'gutter', 'second', 'common', 'offcut']);
});

it('takes two trims for one line only where nobody could tell them apart', () => {
  // A fine printer has its dots 21 micrometres apart. In pt: 3.2 and 3.9 micrometres, a sixth of that and a little more.
  const [NO_PAPER, A_STRIP] = [0.009, 0.011];
  const cutsOf = (gap: number, margin = 72) =>
    planned(
      sheetToCut(
        { w: 2 * margin + 288 + gap, h: 360 },
        [
          { x: margin, y: 72, w: 144, h: 216 },
          { x: margin + 144 + gap, y: 72, w: 144, h: 216 },
        ],
        1,
      ),
    ).cuts;
  // Four trims, and between the neighbours one cut or two.
  expect([cutsOf(0), cutsOf(NO_PAPER), cutsOf(-NO_PAPER)]).toEqual([5, 5, 5]);
  expect(cutsOf(A_STRIP)).toBe(6);
  // Trims at the edges of the paper are not cut: two sides less, and beyond what can be told two more again.
  expect([cutsOf(0, 0), cutsOf(0, NO_PAPER)]).toEqual([3, 3]);
  expect(cutsOf(0, A_STRIP)).toBe(5);
});

it('names stacks by letters, and by two where one is not enough', () => {
  expect([0, 1, 25, 26, 27, 51, 52, 701, 702].map(letterFor)).toEqual([
    'A',
    'B',
    'Z',
    'AA',
    'AB',
    'AZ',
    'BA',
    'ZZ',
    'AAA',
  ]);
});

describe('strips of several widths', () => {
  /** Columns of these widths, 5 units high, each cut at its distances from the lead edge: what is cut, and where. */
  const columns = (...parts: readonly (readonly [number, ...number[]])[]) => {
    let x = 0;
    const boxes = parts.flatMap(([w, ...distances]) => {
      const at = { x, w };
      x += w;
      const ends = [0, ...distances, 5];
      return distances
        .map((_d, i) => i + 1)
        .concat(0)
        .map((i) => ({ ...at, y: 5 - ends[i + 1]!, h: ends[i + 1]! - ends[i]! }));
    });
    const { steps } = planned(sheetToCut({ w: x, h: 5 }, boxes, 72));
    return steps
      .filter((s) => s.gauge === 'lead')
      .map((s) => [...s.parts.map((p) => p.area.w / 72), 'at', s.distance / 72]);
  };

  it('are cut with one setting where they are cut at one distance, the widest first', () => {
    expect(columns([4, 2], [5, 3], [2, 3])).toEqual([
      [2, 5, 'at', 3],
      [4, 'at', 2],
    ]);
    expect(columns([2.5, 3], [4, 2], [5, 1])).toEqual([
      [5, 'at', 1],
      [4, 'at', 2],
      [2.5, 'at', 3],
    ]);
  });

  it('follow at once where the back gauge stands as they want it, though a wider one waits', () => {
    expect(columns([4, 2], [5, 3], [2, 1, 3])).toEqual([
      [5, 'at', 3],
      [2, 'at', 3],
      [2, 'at', 1],
      [4, 'at', 2],
    ]);
    expect(columns([2.5, 1, 3], [5, 3], [4, 2])).toEqual([
      [5, 'at', 3],
      [2.5, 'at', 3],
      [2.5, 'at', 1],
      [4, 'at', 2],
    ]);
  });
});

describe('strips that are cut side by side', () => {
  /** Pairs of pieces, upright and lying in turn as on a draughts board, 4 by 3 pairs. */
  const pairs = Array.from({ length: 12 }, (_, i) => {
    const [column, row] = [i % 4, Math.floor(i / 4)];
    const [x, y] = [1 + 2 * column, 1 + 2 * row];
    return (column + row) % 2 === 0
      ? [
          { x, y, w: 1, h: 2 },
          { x: x + 1, y, w: 1, h: 2 },
        ]
      : [
          { x, y, w: 2, h: 1 },
          { x, y: y + 1, w: 2, h: 1 },
        ];
  }).flat();
  const lastStep = (widest: number) => {
    const cutter = { ...LARGE_CUTTER, widest: widest * 72 };
    return planned(sheetToCut({ w: 10, h: 8 }, pairs, 72, { cutter })).steps.at(-1)!;
  };

  it('take as many strokes as the length of the knife asks for', () => {
    // Six pairs of 2 x 2 units are left: five lie side by side on 10 units, six on 12.
    expect(lastStep(10)).toMatchObject({ strokes: 2, distance: 72 });
    expect(lastStep(10).parts).toHaveLength(6);
    expect(lastStep(12)).toMatchObject({ strokes: 1 });
    expect(lastStep(11.999)).toMatchObject({ strokes: 2 });
  });

  it('are laid together so that each stroke takes as many as it can', () => {
    // On 10 units; as they come, 2 + 5, 5 and 8, they would take three strokes.
    let x = 0;
    const boxes = [2, 8, 5, 5].flatMap((w) => {
      const at = { x, w };
      x += w;
      return [
        { ...at, y: 2, h: 3 },
        { ...at, y: 0, h: 2 },
      ];
    });
    const cutter = { ...LARGE_CUTTER, widest: 720 };
    const last = planned(sheetToCut({ w: 20, h: 5 }, boxes, 72, { cutter })).steps.at(-1)!;
    expect(last.parts.map((part) => part.area.w / 72)).toEqual([2, 5, 5, 8]);
    expect(last.strokes).toBe(2);
  });
});

describe('the lifts', () => {
  const lifts = (sheets: number, caliper: number) =>
    planned(gridToCut(1, 1, 0, { run: { sheets, caliper } })).lifts;

  it('are as few as go under the clamp, as even as can be', () => {
    expect(lifts(100, 1)).toEqual({ sheets: [100], height: 100 });
    expect(lifts(300, 0.5)).toEqual({ sheets: [150, 150], height: 75 });
    expect(lifts(144, 1)).toEqual({ sheets: [144], height: 144 });
    expect(lifts(145, 1)).toEqual({ sheets: [73, 72], height: 73 });
    expect(lifts(500, 1)).toEqual({ sheets: [125, 125, 125, 125], height: 125 });
  });

  it('are not higher than the clamp opens', () => {
    const low = { ...LARGE_CUTTER, opening: 10 };
    expect(planned(gridToCut(1, 1, 0, { cutter: low, run: { sheets: 21, caliper: 1 } })).lifts).toEqual({
      sheets: [7, 7, 7],
      height: 7,
    });
  });

  it('are of one sheet each where no two go under the clamp, which takes 144 pt', () => {
    expect(lifts(3, 100)).toEqual({ sheets: [1, 1, 1], height: 100 });
  });
});
