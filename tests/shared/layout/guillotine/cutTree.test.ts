// The tree of cuts: where its cells lie, and how parts are joined tidily.
import { describe, expect, it } from 'vitest';
import { blockOf, type CutTree, cellsOf, sizeOf } from '../../../../shared/layout/guillotine/cutTree.ts';
import { mostInGrid, tidiestGrid } from '../../../../shared/layout/guillotine/grid.ts';
import { joinParts } from '../../../../shared/layout/guillotine/joinParts.ts';
import { waysToLie } from '../../../../shared/layout/guillotine/ways.ts';

const cell = { w: 5, h: 7 };
const block = (kind: number, onItsSide: boolean, across: number, up: number, filled?: number) =>
  blockOf(kind, cell, { onItsSide, across, up }, filled);

describe('a block', () => {
  it('has its cells row by row from the lower left', () => {
    const tree = block(4, false, 2, 2, 3);
    expect(cellsOf(tree)).toEqual([
      { x: 0, y: 0, w: 5, h: 7, onItsSide: false, kind: 4 },
      { x: 5, y: 0, w: 5, h: 7, onItsSide: false, kind: 4 },
      { x: 0, y: 7, w: 5, h: 7, onItsSide: false, kind: 4 },
    ]);
    expect(sizeOf(tree)).toEqual({ w: 10, h: 14 });
    expect(tree.kinds).toEqual([4, 4, 4, undefined]);
  });

  it('turns its cells when they lie on their side', () => {
    expect(block(0, true, 3, 1)).toEqual({
      is: 'block',
      cell: { w: 7, h: 5 },
      onItsSide: true,
      across: 3,
      up: 1,
      kinds: [0, 0, 0],
    });
  });
});

describe('parts', () => {
  it('lie side by side or stacked, pushed together', () => {
    const parts = [block(0, false, 1, 2), block(1, true, 1, 2)];
    const beside: CutTree = { is: 'cut', way: 'side-by-side', parts };
    expect(sizeOf(beside)).toEqual({ w: 12, h: 14 });
    expect(cellsOf(beside, 100, 10).map(({ x, y, kind }) => [x, y, kind])).toEqual([
      [100, 10, 0],
      [100, 17, 0],
      [105, 10, 1],
      [105, 15, 1],
    ]);
    const stacked: CutTree = { is: 'cut', way: 'stacked', parts };
    expect(sizeOf(stacked)).toEqual({ w: 7, h: 24 });
    expect(cellsOf(stacked, 100, 10).map(({ x, y, kind }) => [x, y, kind])).toEqual([
      [100, 10, 0],
      [100, 17, 0],
      [100, 24, 1],
      [100, 29, 1],
    ]);
  });

  it('become one grid where they make one', () => {
    expect(joinParts('side-by-side', [block(0, false, 1, 2), block(0, false, 2, 2)])).toEqual(
      block(0, false, 3, 2),
    );
    expect(joinParts('stacked', [block(0, true, 2, 1), block(0, true, 2, 3)])).toEqual(block(0, true, 2, 4));
  });

  it('keep who lies where when they become one grid', () => {
    const a = { ...block(0, false, 2, 2), kinds: [1, 2, 3, 4] };
    const b = { ...block(0, false, 1, 2), kinds: [5, 6] };
    expect(joinParts('side-by-side', [a, b])).toMatchObject({ across: 3, up: 2, kinds: [1, 2, 5, 3, 4, 6] });
    expect(joinParts('side-by-side', [b, a])).toMatchObject({ across: 3, kinds: [1, 2, 5, 3, 4, 6] });
    const c = { ...block(0, false, 2, 1), kinds: [5, 6] };
    const d = { ...block(0, false, 2, 2), kinds: [5, 6, 7, 8] };
    expect(joinParts('side-by-side', [a, d])).toMatchObject({ across: 4, kinds: [1, 2, 5, 6, 3, 4, 7, 8] });
    expect(joinParts('stacked', [a, c])).toMatchObject({ across: 2, up: 3, kinds: [1, 2, 3, 4, 5, 6] });
  });

  it('of different kinds become one grid too, since they are cut as one', () => {
    expect(joinParts('side-by-side', [block(1, false, 1, 2), block(0, false, 1, 2)])).toMatchObject({
      across: 2,
      up: 2,
      kinds: [0, 1, 0, 1],
    });
  });

  it('stay apart where they make no grid', () => {
    const shapes = (way: 'side-by-side' | 'stacked', a: CutTree, b: CutTree) => {
      const joined = joinParts(way, [a, b]);
      return joined.is === 'cut' && joined.parts.length;
    };
    expect(shapes('side-by-side', block(0, false, 1, 2), block(0, false, 1, 3))).toBe(2);
    expect(shapes('stacked', block(0, false, 1, 2), block(0, false, 2, 2))).toBe(2);
    expect(shapes('side-by-side', block(0, false, 1, 2), block(0, true, 1, 2))).toBe(2);
    const wider = blockOf(0, { w: 6, h: 7 }, { onItsSide: false, across: 1, up: 2 });
    const higher = blockOf(0, { w: 5, h: 8 }, { onItsSide: false, across: 1, up: 2 });
    expect(shapes('side-by-side', block(0, false, 1, 2), wider)).toBe(2);
    expect(shapes('stacked', block(0, false, 1, 2), higher)).toBe(2);
    const square = { w: 5, h: 5 };
    const upright = blockOf(0, square, { onItsSide: false, across: 1, up: 1 });
    expect(shapes('stacked', upright, blockOf(0, square, { onItsSide: true, across: 1, up: 1 }))).toBe(2);
  });

  it('come with the one that reaches farthest first, so that the block is settled in the corner', () => {
    const low = block(0, false, 3, 1);
    const high = block(1, false, 1, 3);
    expect(joinParts('side-by-side', [low, high])).toEqual({
      is: 'cut',
      way: 'side-by-side',
      parts: [high, low],
    });
    expect(joinParts('stacked', [high, low])).toEqual({ is: 'cut', way: 'stacked', parts: [low, high] });
  });

  it('that reach equally far come like beside like, then the longer first', () => {
    const [a, b, c] = [
      block(0, false, 1, 2),
      blockOf(1, { w: 6, h: 7 }, { onItsSide: false, across: 2, up: 2 }),
      block(0, false, 3, 2),
    ];
    expect(joinParts('side-by-side', [a, b, c])).toMatchObject({ parts: [{ across: 4 }, { across: 2 }] });
    const [p, q, r] = [block(2, false, 1, 1), block(2, true, 1, 1), block(1, true, 2, 1)].map((part) => ({
      ...part,
      cell: { w: 5, h: 5 },
    }));
    expect(joinParts('stacked', [p!, q!])).toMatchObject({
      parts: [{ onItsSide: false }, { onItsSide: true }],
    });
    expect(joinParts('stacked', [q!, p!])).toMatchObject({
      parts: [{ onItsSide: false }, { onItsSide: true }],
    });
    expect(joinParts('side-by-side', [p!, r!])).toMatchObject({ parts: [{ kinds: [1, 1] }, { kinds: [2] }] });
    const mixed: CutTree = {
      is: 'cut',
      way: 'stacked',
      parts: [block(0, true, 2, 1), block(0, false, 2, 1)],
    };
    const higher = blockOf(7, { w: 1, h: 12 }, { onItsSide: false, across: 1, up: 1 });
    expect(joinParts('side-by-side', [mixed, higher])).toMatchObject({
      parts: [{ is: 'block' }, { is: 'cut' }],
    });
    const [d, e] = [
      blockOf(0, { w: 5, h: 6 }, { onItsSide: false, across: 1, up: 1 }),
      block(0, false, 1, 2),
    ];
    expect(joinParts('stacked', [d, e])).toMatchObject({ parts: [{ up: 2 }, { up: 1 }] });
    const [f, g] = [
      blockOf(0, { w: 4, h: 7 }, { onItsSide: false, across: 1, up: 1 }),
      block(0, false, 1, 1),
    ];
    expect(joinParts('side-by-side', [f, g])).toMatchObject({
      parts: [{ cell: { w: 5 } }, { cell: { w: 4 } }],
    });
  });

  it('of one way are joined in one go', () => {
    const [a, b, c] = [block(0, false, 1, 3), block(1, true, 1, 2), block(2, false, 1, 1)];
    const inner = joinParts('side-by-side', [a, b]);
    expect(joinParts('side-by-side', [c, inner])).toEqual({
      is: 'cut',
      way: 'side-by-side',
      parts: [a, b, c],
    });
    const other = joinParts('stacked', [c, inner]);
    expect(other.is === 'cut' && other.parts).toEqual([inner, c]);
    expect(joinParts('stacked', [a])).toEqual(a);
  });
});

describe('a plain grid', () => {
  const room = { w: 20_000_000, h: 30_000_000 };
  const ways = (lies: 'upright' | 'on-its-side' | 'either') => waysToLie(cell, lies, room);

  it('holds whole rows of the better lie', () => {
    // 20 million ticks are 19.7 pt, 30 million are 29.5 pt.
    expect(mostInGrid(ways('upright'), room)).toBe(3 * 4);
    expect(mostInGrid(ways('on-its-side'), room)).toBe(2 * 5);
    expect(mostInGrid(ways('either'), room)).toBe(12);
    expect(mostInGrid([], room)).toBe(0);
  });

  it('has the fewest empty places, then the fewest lines, then the shortest outline, then lies upright', () => {
    expect(tidiestGrid(12, ways('either'), room)).toMatchObject({ onItsSide: false, across: 3, up: 4 });
    expect(tidiestGrid(10, ways('either'), room)).toMatchObject({ onItsSide: true, across: 2, up: 5 });
    // Four: two rows of two rather than a row of four.
    expect(tidiestGrid(4, ways('either'), room)).toMatchObject({ onItsSide: false, across: 2, up: 2 });
    // Six: two rows of three, 15 x 14, rather than three rows of two, 10 x 21.
    expect(tidiestGrid(6, ways('either'), room)).toMatchObject({ onItsSide: false, across: 3, up: 2 });
    // Eleven leave one of twelve places empty.
    expect(tidiestGrid(11, ways('either'), room)).toMatchObject({ onItsSide: false, across: 3, up: 4 });
    expect(tidiestGrid(13, ways('either'), room)).toBeUndefined();
    expect(tidiestGrid(11, ways('on-its-side'), room)).toBeUndefined();
  });

  it('has few lines before it has a short outline', () => {
    const narrow = waysToLie({ w: 1, h: 9 }, 'upright', room);
    // 2 x 2 is 2 x 18, 4 x 1 would be 4 x 9.
    expect(tidiestGrid(4, narrow, room)).toMatchObject({ across: 2, up: 2 });
  });

  it('takes no more rows across than there are pieces', () => {
    expect(tidiestGrid(1, ways('either'), room)).toMatchObject({ onItsSide: false, across: 1, up: 1 });
    expect(tidiestGrid(2, ways('upright'), room)).toMatchObject({ across: 2, up: 1 });
  });
});
