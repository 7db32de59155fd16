// Joining the parts of a sheet tidily: like beside like, the largest in the corner, no cut where none is needed.
import { type Block, type CutTree, type CutWay, sizeOf } from './cutTree.ts';

/**
 * The parts joined one way. Joins of the same way become one, the parts that reach farthest across the join come
 * first, and blocks that make one plain grid together become one block.
 */
export function joinParts(way: CutWay, parts: readonly CutTree[]): CutTree {
  const flat = parts.flatMap((part) => (part.is === 'cut' && part.way === way ? part.parts : [part]));
  const joined: CutTree[] = [];
  for (const part of flat.toSorted((a, b) => tidyOrder(way, a, b))) {
    const before = joined.at(-1);
    const one = before?.is === 'block' && part.is === 'block' ? asOneBlock(way, before, part) : undefined;
    if (one === undefined) joined.push(part);
    else joined[joined.length - 1] = one;
  }
  const [only, ...others] = joined;
  return only !== undefined && others.length === 0 ? only : { is: 'cut', way, parts: joined };
}

function tidyOrder(way: CutWay, a: CutTree, b: CutTree): number {
  const sizeA = sizeOf(a);
  const sizeB = sizeOf(b);
  const beside = way === 'side-by-side';
  return (
    (beside ? sizeB.h - sizeA.h : sizeB.w - sizeA.w) ||
    likeness(a) - likeness(b) ||
    (beside ? sizeB.w - sizeA.w : sizeB.h - sizeA.h)
  );
}

/** A number by which blocks of the same kind and lie come together, before everything that must still be cut. */
function likeness(tree: CutTree): number {
  if (tree.is === 'cut') return Number.MAX_SAFE_INTEGER;
  return 2 * (tree.kinds[0] ?? 0) + (tree.onItsSide ? 1 : 0);
}

function asOneBlock(way: CutWay, a: Block, b: Block): Block | undefined {
  const alike = a.onItsSide === b.onItsSide && a.cell.w === b.cell.w && a.cell.h === b.cell.h;
  if (!alike) return undefined;
  if (way === 'stacked') {
    if (a.across !== b.across) return undefined;
    return { ...a, up: a.up + b.up, kinds: [...a.kinds, ...b.kinds] };
  }
  if (a.up !== b.up) return undefined;
  const kinds = Array.from({ length: a.up }, (_, row) => [
    ...a.kinds.slice(row * a.across, (row + 1) * a.across),
    ...b.kinds.slice(row * b.across, (row + 1) * b.across),
  ]).flat();
  return { ...a, across: a.across + b.across, kinds };
}
