// Designs among the cells: who shares a size, who lies where, and how many sheets that takes.
import { describe, expect, it } from 'vitest';
import { blockOf, type CutTree, cellsOf, sizeOf } from '../../../../shared/layout/guillotine/cutTree.ts';
import { type Fit, fewestSheets } from '../../../../shared/layout/guillotine/fewestSheets.ts';
import { fitTogether } from '../../../../shared/layout/guillotine/fitTogether.ts';
import { layInKindBlocks } from '../../../../shared/layout/guillotine/kindBlocks.ts';
import { layAlike } from '../../../../shared/layout/guillotine/layAlike.ts';
import { shareOut } from '../../../../shared/layout/guillotine/shareOut.ts';
import { type SizeOnSheet, sizesOf } from '../../../../shared/layout/guillotine/sizes.ts';
import { offeredRegion } from '../../../../shared/layout/guillotine/ticks.ts';
import { asItLies, waysToLie } from '../../../../shared/layout/guillotine/ways.ts';
import type { Lies } from '../../../../shared/layout/lies.ts';
import { isCuttable, liesClean } from '../../../kit/cuttable.ts';

const room = (w: number, h: number) => offeredRegion({ w, h });
const kind = (w: number, h: number, lies: Lies = 'either') => ({ cell: { w, h }, lies });

describe('ways to lie', () => {
  const lies = (w: number, h: number, how: Lies) =>
    waysToLie({ w, h }, how, room(10, 10)).map((way) => [
      way.onItsSide,
      way.w / 1_016_000,
      way.h / 1_016_000,
    ]);

  it('are those allowed that differ and fit', () => {
    expect(lies(5, 7, 'either')).toEqual([
      [false, 5, 7],
      [true, 7, 5],
    ]);
    expect(lies(5, 7, 'upright')).toEqual([[false, 5, 7]]);
    expect(lies(5, 7, 'on-its-side')).toEqual([[true, 7, 5]]);
    expect(lies(5, 5, 'either')).toEqual([[false, 5, 5]]);
    expect(lies(5, 5, 'on-its-side')).toEqual([[true, 5, 5]]);
    expect(lies(5, 11, 'either')).toEqual([]);
    expect(waysToLie({ w: 5, h: 11 }, 'either', room(11, 10))).toMatchObject([{ onItsSide: true }]);
    expect(waysToLie({ w: 11, h: 5 }, 'either', room(11, 10))).toMatchObject([{ onItsSide: false }]);
  });

  it('swap the sides of what lies on its side', () => {
    expect(asItLies({ w: 5, h: 7 }, false)).toEqual({ w: 5, h: 7 });
    expect(asItLies({ w: 5, h: 7 }, true)).toEqual({ w: 7, h: 5 });
  });
});

describe('sizes', () => {
  it('are shared by designs whose pieces can change places, the wide with the high', () => {
    const sizes = sizesOf([kind(5, 7), kind(9, 4), kind(7, 5), kind(5, 7)], room(20, 20));
    expect(sizes.map(({ cell, members }) => [cell, members])).toEqual([
      [
        { w: 5, h: 7 },
        [
          { kind: 0, crossed: false },
          { kind: 2, crossed: true },
          { kind: 3, crossed: false },
        ],
      ],
      [{ w: 9, h: 4 }, [{ kind: 1, crossed: false }]],
    ]);
  });

  it('are shared by designs that lie differently but need the same room', () => {
    const [size, another] = sizesOf([kind(5, 7, 'upright'), kind(7, 5, 'on-its-side')], room(20, 20));
    expect(another).toBeUndefined();
    expect(size?.members).toEqual([
      { kind: 0, crossed: false },
      { kind: 1, crossed: true },
    ]);
  });

  it('are not shared where one may lie in a way that the other may not', () => {
    expect(
      sizesOf([kind(5, 7), kind(5, 7, 'upright'), kind(5, 7, 'on-its-side')], room(20, 20)),
    ).toHaveLength(3);
  });
});

describe('cells of one size', () => {
  const fullest = (): CutTree & { readonly is: 'cut' } => ({
    is: 'cut',
    way: 'side-by-side',
    parts: [
      blockOf(0, { w: 5, h: 7 }, { onItsSide: true, across: 1, up: 3 }),
      blockOf(0, { w: 5, h: 7 }, { onItsSide: false, across: 1, up: 2 }),
    ],
  });
  const region = () => room(12.5, 18.5);
  const size = () => sizesOf([kind(5.25, 7.25)], region())[0] as SizeOnSheet;

  it('make a plain grid where a grid has places enough', () => {
    expect(layAlike(size(), 4, region(), fullest())).toEqual(
      blockOf(0, { w: 5.25, h: 7.25 }, { onItsSide: false, across: 2, up: 2 }),
    );
  });

  it('are the first of the fullest sheet where a grid has not', () => {
    expect(layAlike(size(), 5, region(), fullest())).toEqual(fullest());
    expect(layAlike(size(), 3, room(1, 1), fullest())).toEqual(fullest().parts[0]);
    const seven: CutTree = { ...fullest(), parts: [...fullest().parts, fullest()] };
    const kept = layAlike(size(), 7, room(1, 1), seven);
    expect(cellsOf(kept)).toEqual(cellsOf(seven).slice(0, 7));
    // The part of which only its first block is left is that block.
    expect(kept.is === 'cut' && kept.parts.map((part) => part.is)).toEqual(['block', 'block', 'block']);
    // A part of which nothing is left is gone.
    const six: CutTree = { is: 'cut', way: 'stacked', parts: [fullest(), fullest(), fullest()] };
    expect(layAlike(size(), 5, room(1, 1), six)).toEqual(fullest());
    expect(layAlike(size(), 2, room(1, 1), fullest())).toMatchObject({
      is: 'block',
      kinds: [0, 0, undefined],
    });
  });
});

describe('designs in their cells', () => {
  const grid = () => blockOf(0, { w: 5, h: 7 }, { onItsSide: false, across: 3, up: 2 });
  const kinds = (tree: CutTree) => (tree.is === 'block' ? tree.kinds : []);

  it('lie in whole columns where that parts them better', () => {
    const tree = shareOut(grid(), [
      [
        { kind: 8, copies: 4 },
        { kind: 9, copies: 2 },
      ],
    ]);
    expect(kinds(tree)).toEqual([8, 8, 9, 8, 8, 9]);
  });

  it('lie in whole rows where that parts them better or as well', () => {
    const tree = shareOut(grid(), [
      [
        { kind: 8, copies: 3 },
        { kind: 9, copies: 3 },
      ],
    ]);
    expect(kinds(tree)).toEqual([8, 8, 8, 9, 9, 9]);
    const square = blockOf(0, { w: 5, h: 7 }, { onItsSide: false, across: 2, up: 2 });
    expect(
      kinds(
        shareOut(square, [
          [
            { kind: 1, copies: 2 },
            { kind: 2, copies: 2 },
          ],
        ]),
      ),
    ).toEqual([1, 1, 2, 2]);
  });

  it('follow one another from block to block, each in cells of its size', () => {
    const small = blockOf(1, { w: 2, h: 2 }, { onItsSide: false, across: 2, up: 1 });
    const tree: CutTree = { is: 'cut', way: 'stacked', parts: [grid(), small, grid()] };
    const shared = shareOut(tree, [
      [
        { kind: 3, copies: 7 },
        { kind: 4, copies: 4 },
      ],
      [{ kind: 5, copies: 2 }],
    ]);
    expect(shared.is === 'cut' && shared.parts.map(kinds)).toEqual([
      [3, 3, 3, 3, 3, 3],
      [5, 5],
      [3, 4, 4, 4, 4, undefined],
    ]);
  });

  it('leave empty places empty', () => {
    const four = blockOf(0, { w: 5, h: 7 }, { onItsSide: false, across: 3, up: 2 }, 4);
    expect(kinds(shareOut(four, [[{ kind: 2, copies: 4 }]]))).toEqual([2, 2, 2, 2, undefined, undefined]);
  });
});

describe('the fewest sheets', () => {
  const upTo = (most: number): ((copies: readonly number[]) => Fit<string>) => {
    return (copies) =>
      copies.reduce((a, b) => a + b, 0) <= most ? { layOut: () => copies.join(' + ') } : 'cannot';
  };
  const numbers = (quantities: number[], most: number) => {
    const found = fewestSheets(quantities, upTo(most));
    return typeof found === 'string' ? found : [found.sheets, found.copies, found.layOut(), found.proven];
  };

  it('are those at which the copies needed just fit', () => {
    expect(numbers([300, 100], 4)).toEqual([100, [3, 1], '3 + 1', true]);
    expect(numbers([300, 100], 5)).toEqual(
      [75, [4, 2], '4 + 2', true].slice(0, 0).length ? [] : [100, [3, 1], '3 + 1', true],
    );
    expect(numbers([300, 100], 6)).toEqual([75, [4, 2], '4 + 2', true]);
    expect(numbers([1, 1], 6)).toEqual([1, [1, 1], '1 + 1', true]);
    expect(numbers([7], 7)).toEqual([1, [7], '7', true]);
    expect(numbers([7], 6)).toEqual([2, [4], '4', true]);
    expect(numbers([1000, 1], 3)).toEqual([500, [2, 1], '2 + 1', true]);
    expect(numbers([1, 1000], 2)).toEqual([1000, [1, 1], '1 + 1', true]);
  });

  it('are none where one of each does not fit', () => {
    expect(numbers([5, 5, 5], 2)).toBe('cannot');
    expect(fewestSheets([5, 5], () => 'unknown')).toBe('unknown');
  });

  it('are not proven where it is not known whether fewer do', () => {
    const unsure = (copies: readonly number[]): Fit<string> => {
      const fit = upTo(4)(copies);
      return fit === 'cannot' ? 'unknown' : fit;
    };
    expect(fewestSheets([300, 100], unsure)).toMatchObject({ sheets: 100, proven: false });
    expect(fewestSheets([1, 1], unsure)).toMatchObject({ sheets: 1, proven: true });
  });

  it('are found with few questions, however large the order', () => {
    let asked = 0;
    const found = fewestSheets([1_000_000, 700_000, 3], (copies) => {
      asked++;
      return upTo(9)(copies);
    });
    expect(found).toMatchObject({ sheets: 233_334, copies: [5, 3, 1], proven: true });
    expect(asked).toBeLessThan(9);
  });
});

describe('several sizes', () => {
  const region = { w: 20, h: 20 };
  const sizes = () => sizesOf([kind(5, 7), kind(4, 3), kind(9, 9)], offeredRegion(region));

  it('lie in one grid each where they can, in the smallest outline', () => {
    const tree = layInKindBlocks(sizes(), [4, 6, 1], offeredRegion(region), 1);
    if (tree === undefined) throw new Error('It fits');
    const cells = cellsOf(tree);
    expect([0, 1, 2].map((k) => cells.filter((c) => c.kind === k).length)).toEqual([4, 6, 1]);
    expect(isCuttable(cells)).toBe(true);
    expect(liesClean(cells, region)).toBe(true);
  });

  it('may fill the room to the last tick, but no further', () => {
    const exactly = (w: number, h: number) => ({ w: w * 1_016_000, h: h * 1_016_000 });
    const two = sizesOf([kind(5, 7), kind(6, 7)], exactly(11, 7));
    const lay = (w: number, h: number) => layInKindBlocks(two, [1, 1], { ...exactly(w, h) }, 1);
    expect(lay(11, 7)).toBeDefined();
    expect(layInKindBlocks(two, [1, 1], { w: 11 * 1_016_000 - 1, h: 7 * 1_016_000 }, 1)).toBeUndefined();
    const high = sizesOf([kind(7, 5), kind(7, 6)], exactly(7, 11));
    expect(layInKindBlocks(high, [1, 1], exactly(7, 11), 1)).toMatchObject({ is: 'cut', way: 'stacked' });
    expect(waysToLie({ w: 7, h: 5 }, 'upright', exactly(7, 5))).toHaveLength(1);
    expect(waysToLie({ w: 7, h: 5 }, 'upright', { w: 7 * 1_016_000, h: 5 * 1_016_000 - 1 })).toEqual([]);
  });

  it('cover the least that they can, wide or high', () => {
    // One of 6 x 2 and three of 2 x 2: a row of three on top of it is 6 x 4, and nothing squarer covers so little.
    const two = sizesOf([kind(6, 2, 'upright'), kind(2, 2)], offeredRegion(region));
    const tree = layInKindBlocks(two, [1, 3], offeredRegion(region), 1);
    expect(tree && sizeOf(tree)).toEqual({ w: 6, h: 4 });
    const other = sizesOf([kind(2, 6, 'upright'), kind(2, 2)], offeredRegion(region));
    const turned = layInKindBlocks(other, [1, 3], offeredRegion(region), 1);
    expect(turned && sizeOf(turned)).toEqual({ w: 4, h: 6 });
  });

  it('cover the least, and of two alike take the narrower', () => {
    const two = sizesOf([kind(5, 7), kind(6, 10)], offeredRegion(region));
    const tree = layInKindBlocks(two, [4, 1], offeredRegion(region), 1);
    expect(tree && sizeOf(tree)).toEqual({ w: 10, h: 20 });
  });

  it('do not lie in one grid each where the grids leave no room', () => {
    // Eleven of 5 x 7 want a grid of twelve, and neither lie has places for more than ten.
    expect(layInKindBlocks(sizes().slice(0, 1), [11], offeredRegion(region), 1)).toBeUndefined();
    expect(
      layInKindBlocks(Array(8).fill(sizes()[1]), Array(8).fill(1), offeredRegion(region), 1),
    ).toBeUndefined();
    expect(
      layInKindBlocks(Array(7).fill(sizes()[1]), Array(7).fill(1), offeredRegion(region), 1),
    ).toBeDefined();
  });

  it('lie in two grids each where one leaves no room', () => {
    // Seven of 2 x 3 in 6 x 7: three upright above two rows of two on their side.
    const tags = sizesOf([kind(2, 3)], room(6, 7));
    expect(layInKindBlocks(tags, [7], room(6, 7), 1)).toBeUndefined();
    const tree = layInKindBlocks(tags, [7], room(6, 7), 2);
    expect(tree && cellsOf(tree)).toHaveLength(7);
    expect(tree && isCuttable(cellsOf(tree))).toBe(true);
    expect(layInKindBlocks(tags, [2], room(2, 6), 2)).toMatchObject({ is: 'block', across: 1, up: 2 });
  });

  it('fit together in any way that can be cut, or surely do not', () => {
    const fits = (copies: number[]) => {
      const fit = fitTogether(sizes(), copies, offeredRegion(region));
      return typeof fit === 'string' ? fit : cellsOf(fit.layOut()).length;
    };
    expect(fits([4, 6, 1])).toBe(11);
    expect(fits([12, 1, 1])).toBe('cannot');
    expect(fits([4, 6, 3])).toBe('cannot');
  });
});
