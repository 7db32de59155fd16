import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Alignment, align, distribute } from '../../../shared/bench/align.ts';

const trims = [
  { x: 10, y: 20, w: 30, h: 40 },
  { x: 100, y: 50, w: 20, h: 10 },
];

const aligned = (by: Alignment, frame?: { x: number; y: number; w: number; h: number }) =>
  align(trims, by, frame).map(({ dx, dy }, i) => [trims[i]!.x + dx, trims[i]!.y + dy]);

describe('aligning', () => {
  it.each<[Alignment, number[][]]>([
    [
      'left',
      [
        [10, 20],
        [10, 50],
      ],
    ],
    [
      'right',
      [
        [90, 20],
        [100, 50],
      ],
    ],
    [
      'middle-across',
      [
        [50, 20],
        [55, 50],
      ],
    ],
    [
      'tail',
      [
        [10, 20],
        [100, 20],
      ],
    ],
    [
      'lead',
      [
        [10, 20],
        [100, 50],
      ],
    ],
    [
      'middle-along',
      [
        [10, 20],
        [100, 35],
      ],
    ],
  ])('by %s brings pieces in line with one another', (by, places) => {
    expect(aligned(by)).toEqual(places);
  });

  it('within a frame brings each piece to the frame', () => {
    const frame = { x: 0, y: 0, w: 200, h: 300 };
    expect(aligned('right', frame)).toEqual([
      [170, 20],
      [180, 50],
    ]);
    expect(aligned('lead', frame)).toEqual([
      [10, 260],
      [100, 290],
    ]);
  });

  it('moves nothing where there is nothing', () => {
    expect(align([], 'left')).toEqual([]);
  });
});

describe('distributing', () => {
  const row = [
    { x: 90, y: 0, w: 10, h: 5 },
    { x: 0, y: 7, w: 20, h: 5 },
    { x: 25, y: 3, w: 30, h: 5 },
  ];

  it('shares the free room equally in the order in which pieces lie', () => {
    // From 0 to 100 there are 60 filled and two gaps of 20.
    expect(distribute(row, 'x')).toEqual([
      { dx: 0, dy: 0 },
      { dx: 0, dy: 0 },
      { dx: 15, dy: 0 },
    ]);
  });

  it('sets gaps of a given length from the first piece on', () => {
    expect(distribute(row, 'x', 5).map((s) => s.dx)).toEqual([60 - 90, 0, 0]);
  });

  it('works along the feed as well', () => {
    // y runs 0..5, 3..8, 7..12: 15 filled in 12, so the pieces overlap by 1.5 each.
    expect(distribute(row, 'y').map((s) => [s.dx, s.dy])).toEqual([
      [0, 0],
      [0, 0],
      [0, 0.5],
    ]);
  });

  it('leaves one piece where it is, and none nowhere', () => {
    expect(distribute([row[0]!], 'x')).toEqual([{ dx: 0, dy: 0 }]);
    expect(distribute([], 'x')).toEqual([]);
  });

  it('takes pieces in the order of their middles', () => {
    const two = [
      { x: 0, y: 0, w: 30, h: 1 },
      { x: 0, y: 0, w: 10, h: 1 },
    ];
    expect(distribute(two, 'x', 2).map((s) => s.dx)).toEqual([12, 0]);
  });

  it('leaves equal gaps whatever the pieces, the first and the last unmoved', () => {
    const piece = fc.record({ x: fc.integer({ min: 0, max: 900 }), w: fc.integer({ min: 1, max: 90 }) });
    const middle = (p: { x: number; w: number }) => 2 * p.x + p.w;
    fc.assert(
      fc.property(fc.uniqueArray(piece, { minLength: 2, maxLength: 8, selector: middle }), (pieces) => {
        const rects = pieces.map((p) => ({ ...p, y: 0, h: 1 }));
        const moved = distribute(rects, 'x').map((s, i) => ({ from: rects[i]!, x: rects[i]!.x + s.dx }));
        const order = moved.sort((a, b) => middle(a.from) - middle(b.from));
        const gaps = order.slice(1).map((p, i) => p.x - (order[i]!.x + order[i]!.from.w));
        for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0]!, 6);
        for (const end of [order[0]!, order.at(-1)!]) expect(end.x).toBeCloseTo(end.from.x, 6);
      }),
    );
  });
});
