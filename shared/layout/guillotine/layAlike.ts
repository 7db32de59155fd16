// So many cells of one size, no more, laid as tidily as can be.
import type { Size } from '../../geometry/space.ts';
import { blockOf, type CutTree } from './cutTree.ts';
import { tidiestGrid } from './grid.ts';
import type { SizeOnSheet } from './sizes.ts';

/**
 * A layout of `count` cells (>= 1) of one size in the room (ticks): the tidiest grid if one has places enough, else the
 * first cells of `fullest`, which holds at least `count`. A cell's kind is 0.
 */
export function layAlike(size: SizeOnSheet, count: number, room: Size, fullest: CutTree): CutTree {
  const grid = tidiestGrid(count, size.ways, room);
  return grid === undefined ? firstCells(fullest, count) : blockOf(0, size.cell, grid, count);
}

function firstCells(tree: CutTree, count: number): CutTree {
  let left = count;
  const keep = (part: CutTree): CutTree[] => {
    if (part.is === 'block') {
      const kinds = part.kinds.map((kind) => (left-- > 0 ? kind : undefined));
      return kinds[0] === undefined ? [] : [{ ...part, kinds }];
    }
    const parts = part.parts.flatMap(keep);
    const [only, ...others] = parts;
    return only !== undefined && others.length === 0
      ? [only]
      : parts.length === 0
        ? []
        : [{ ...part, parts }];
  };
  return keep(tree)[0] ?? tree;
}
