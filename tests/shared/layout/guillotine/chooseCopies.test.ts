// How many copies of each design share a sheet, against trying every number of copies and every cut.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseCopies, type OrderedKind } from '../../../../shared/layout/guillotine/chooseCopies.ts';
import { cellsOf } from '../../../../shared/layout/guillotine/cutTree.ts';
import { reachable } from '../../../kit/cutByBruteForce.ts';
import { isCuttable, liesClean } from '../../../kit/cuttable.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';

const card = (name: string, quantity: number, changes: Partial<OrderedKind> = {}): OrderedKind => ({
  name,
  cell: { w: 5, h: 7 },
  lies: 'either',
  quantity,
  ...changes,
});

function choose(kinds: readonly OrderedKind[], w: number, h: number) {
  const chosen = chooseCopies(kinds, { w, h });
  if (!chosen.ok) throw new Error(chosen.fault.message);
  return chosen.value;
}

function refusal(kinds: readonly OrderedKind[], w: number, h: number) {
  const chosen = chooseCopies(kinds, { w, h });
  if (chosen.ok) throw new Error('It was laid out');
  return chosen.fault;
}

describe('one design', () => {
  it('fills its sheet with as many as can be cut, however few are ordered', () => {
    const { copies, sheets, proven } = choose([card('Supper', 1)], 22, 30);
    expect([copies, sheets, proven]).toEqual([[18], 1, true]);
    expect(choose([card('Supper', 100)], 22, 30).sheets).toBe(6);
  });
});

describe('designs of one size', () => {
  it('share the places so that the fewest sheets are printed', () => {
    // 300 and 100 on four places: three and one, 100 sheets; two and two would take 150.
    const { copies, sheets } = choose([card('A', 300), card('B', 100)], 10, 14);
    expect([copies, sheets]).toEqual([[3, 1], 100]);
  });

  it('leave a place empty rather than print what nobody ordered', () => {
    const { copies, sheets, cells } = choose([card('A', 10), card('B', 10), card('C', 10)], 10, 14);
    expect([copies, sheets]).toEqual([[1, 1, 1], 10]);
    expect(cells).toHaveLength(3);
  });

  it('lie together, so that they are sorted while they are cut', () => {
    const { cells } = choose([card('A', 400), card('B', 200)], 15, 14);
    const columns = (kind: number) => new Set(cells.filter((c) => c.kind === kind).map((c) => c.x));
    expect([...columns(0)].filter((x) => columns(1).has(x))).toEqual([]);
  });
});

describe('wide and high designs', () => {
  it('share the places of their size, each lying as it must', () => {
    const wide = card('Wide', 20, { cell: { w: 7, h: 5 } });
    const { copies, sheets, cells, proven } = choose([card('High', 20), wide], 10, 14);
    expect([copies, sheets, proven]).toEqual([[2, 2], 10, true]);
    expect(cells.map(({ kind, onItsSide, w, h }) => [kind, onItsSide, w, h])).toEqual([
      [0, false, 5, 7],
      [0, false, 5, 7],
      [1, true, 5, 7],
      [1, true, 5, 7],
    ]);
  });
});

describe('designs of several sizes', () => {
  it('take the fewest sheets that edge-to-edge cuts allow, each size in a block of its own', () => {
    const menu = card('Menu', 60, { cell: { w: 10, h: 7 } });
    const { copies, sheets, cells, tree, proven } = choose([card('A', 60), menu, card('B', 60)], 20, 21);
    expect([copies, sheets, proven]).toEqual([[3, 3, 3], 20, true]);
    expect(isCuttable(cells)).toBe(true);
    expect(liesClean(cells, { w: 20, h: 21 })).toBe(true);
    expect(cellsOf(tree)).toEqual(cells);
  });

  it('take any layout that can be cut where blocks of their own do not fit', () => {
    // 8 x 8: one A of 5 x 3 lies below, the other stands beside B; a grid of both leaves B no room.
    const kinds = [card('A', 20, { cell: { w: 5, h: 3 } }), card('B', 10, { cell: { w: 4, h: 4 } })];
    const { copies, sheets, cells, proven } = choose(kinds, 8, 8);
    expect([copies, sheets, proven]).toEqual([[2, 1], 10, true]);
    expect(cells).toHaveLength(3);
    expect(isCuttable(cells)).toBe(true);
  });
});

describe('designs that do not fit', () => {
  it.each([
    ['either', ', neither upright nor on its side', 'Take a larger sheet or a narrower gutter.'],
    ['upright', ' upright', 'Let it lie the other way too, or take a larger sheet.'],
    ['on-its-side', ' on its side', 'Let it lie the other way too, or take a larger sheet.'],
  ] as const)('are refused by name: %s', (lies, how, remedy) => {
    expect(refusal([card('A', 1), card('Poster', 1, { cell: { w: 50, h: 70 }, lies })], 10, 14)).toEqual({
      code: 'piece-too-large',
      message: `"Poster" does not fit the sheet${how}.`,
      remedy,
    });
  });

  it('are refused together where each would fit alone', () => {
    const five = ['A', 'B', 'C', 'D', 'E'].map((name) => card(name, 1));
    const fault = refusal(five, 10, 14);
    expect(fault).toEqual({
      code: 'pieces-do-not-fit-together',
      message: '"A", "B", "C", "D" and "E" fit the sheet one by one, but not all on one sheet.',
      remedy: 'Take a larger sheet, or make two jobs of it with fewer designs on a sheet.',
    });
    const two = refusal(
      [card('A', 1, { cell: { w: 9, h: 9 } }), card('B', 1, { cell: { w: 8, h: 8 } })],
      10,
      14,
    );
    expect(two.code).toBe('pieces-do-not-fit-together');
  });
});

describe('small cases by trying everything', () => {
  const kind = fc.record({
    w: fc.integer({ min: 2, max: 5 }),
    h: fc.integer({ min: 2, max: 5 }),
    quantity: fc.integer({ min: 1, max: 12 }),
    turns: fc.boolean(),
  });

  it('take as few sheets, and waste as few copies', () => {
    const sides = fc.integer({ min: 5, max: 9 });
    fc.assert(
      fc.property(sides, sides, fc.array(kind, { minLength: 2, maxLength: 3 }), (w, h, kinds) => {
        const copiesLimit = Math.floor((w * h) / 4);
        const reached = [
          ...reachable(
            w,
            h,
            kinds.map((k) => ({ ...k, value: 1, copies: Math.min(copiesLimit, k.quantity) })),
          ),
        ]
          .map((text) => text.split(',').map(Number))
          .filter((counts) => counts.every((n) => n >= 1));
        const sheetsOf = (counts: readonly number[]) =>
          Math.max(...kinds.map((k, i) => Math.ceil(k.quantity / counts[i]!)));
        const fewest = Math.min(...reached.map(sheetsOf));
        const leastCopies = Math.min(
          ...reached.filter((c) => sheetsOf(c) === fewest).map((c) => c.reduce((a, b) => a + b, 0)),
        );
        const ordered = kinds.map((k, i) =>
          card(`K${i}`, k.quantity, { cell: { w: k.w, h: k.h }, lies: k.turns ? 'either' : 'upright' }),
        );
        const chosen = chooseCopies(ordered, { w, h });
        expect(chosen.ok).toBe(reached.length > 0);
        if (!chosen.ok) return;
        const { copies, sheets, cells, proven } = chosen.value;
        expect(proven).toBe(true);
        expect(sheets).toBe(fewest);
        expect(copies.reduce((a, b) => a + b, 0)).toBe(leastCopies);
        copies.forEach((n, i) => {
          expect(cells.filter((c) => c.kind === i)).toHaveLength(n);
        });
        expect(isCuttable(cells)).toBe(true);
        expect(liesClean(cells, { w, h })).toBe(true);
      }),
      drawnCases(150),
    );
  });
});
