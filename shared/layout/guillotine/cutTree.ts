// How a sheet is cut: a tree of edge-to-edge cuts that ends in blocks of equal cells.
import type { Size } from '../../geometry/space.ts';
import type { Grid } from './grid.ts';
import { asItLies } from './ways.ts';

/** A plain grid of equal cells that all lie the same way. Lengths in pt. */
export interface Block {
  readonly is: 'block';
  /** One cell as it lies here. */
  readonly cell: Size;
  readonly onItsSide: boolean;
  readonly across: number;
  readonly up: number;
  /** Whose copy lies in each cell (the number of its kind), row by row from the lower left; `undefined` is empty. */
  readonly kinds: readonly (number | undefined)[];
}

/** Parts that are parted by cuts from edge to edge, the first at the left or at the bottom. */
export interface Cut {
  readonly is: 'cut';
  /** `side-by-side` parts are parted by cuts that run up the sheet, `stacked` ones by cuts that run across it. */
  readonly way: CutWay;
  readonly parts: readonly CutTree[];
}

export type CutWay = 'side-by-side' | 'stacked';

/** What is left of a region once the waste is trimmed off: one block, or parts to be cut further. */
export type CutTree = Block | Cut;

/** A cell on the region, lower left origin, in pt: which kind lies in it and how. */
export interface LaidCell {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly onItsSide: boolean;
  readonly kind: number;
}

/** A block of `across` by `up` cells (pt, as they lie upright) of one kind, the first `filled` of them used. */
export function blockOf(
  kind: number,
  cell: Size,
  { onItsSide, across, up }: Grid,
  filled = across * up,
): Block {
  const kinds = Array.from({ length: across * up }, (_, k) => (k < filled ? kind : undefined));
  return { is: 'block', cell: asItLies(cell, onItsSide), onItsSide, across, up, kinds };
}

/** The room a tree needs, in pt, its parts pushed together. */
export function sizeOf(tree: CutTree): Size {
  if (tree.is === 'block') return { w: tree.across * tree.cell.w, h: tree.up * tree.cell.h };
  const sizes = tree.parts.map(sizeOf);
  const widths = sizes.map((size) => size.w);
  const heights = sizes.map((size) => size.h);
  return tree.way === 'side-by-side'
    ? { w: sum(widths), h: Math.max(...heights) }
    : { w: Math.max(...widths), h: sum(heights) };
}

/** The cells of a tree, its parts pushed together into the lower left of the region. Empty cells are left out. */
export function cellsOf(tree: CutTree, x = 0, y = 0): LaidCell[] {
  if (tree.is === 'block') {
    const { cell, onItsSide, across } = tree;
    return tree.kinds.flatMap((kind, k) => {
      if (kind === undefined) return [];
      const column = k % across;
      const row = (k - column) / across;
      return [{ x: x + column * cell.w, y: y + row * cell.h, w: cell.w, h: cell.h, onItsSide, kind }];
    });
  }
  const cells: LaidCell[] = [];
  let at = tree.way === 'side-by-side' ? x : y;
  for (const part of tree.parts) {
    const size = sizeOf(part);
    if (tree.way === 'side-by-side') {
      cells.push(...cellsOf(part, at, y));
      at += size.w;
    } else {
      cells.push(...cellsOf(part, x, at));
      at += size.h;
    }
  }
  return cells;
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((total, length) => total + length, 0);
}
