// Which design lies in which cell: copies of one design together, so that they are cut and sorted together.
import type { Block, CutTree } from './cutTree.ts';

/** The designs that wait for cells of one size, in order, with the copies they still need. */
export interface Waiting {
  readonly kind: number;
  readonly copies: number;
}

/**
 * Puts the designs into the cells of a tree whose kinds are sizes: `waiting[size]` lists who needs cells of that size,
 * one after the other. In every block the cells are filled along the rows or along the columns, whichever brings fewer
 * different neighbours. Cells that nobody needs stay empty.
 */
export function shareOut(tree: CutTree, waiting: readonly (readonly Waiting[])[]): CutTree {
  const queues = waiting.map((designs) =>
    designs.flatMap(({ kind, copies }) => Array<number>(copies).fill(kind)),
  );
  const fill = (part: CutTree): CutTree => {
    if (part.is === 'cut') return { ...part, parts: part.parts.map(fill) };
    const counts = queues.map((_, size) => part.kinds.filter((kind) => kind === size).length);
    const next = queues.map((queue, size) => queue.splice(0, counts[size]));
    const byRows = filled(part, next, rowByRow(part));
    const byColumns = filled(part, next, columnByColumn(part));
    return unlikeNeighbours(byColumns) < unlikeNeighbours(byRows) ? byColumns : byRows;
  };
  return fill(tree);
}

function rowByRow({ across, up }: Block): number[] {
  return Array.from({ length: across * up }, (_, place) => place);
}

function columnByColumn({ across, up }: Block): number[] {
  return Array.from({ length: across * up }, (_, k) => (k % up) * across + Math.floor(k / up));
}

/** The block with its places taken in this order, each by the next design that waits for its size. */
function filled(block: Block, waiting: readonly (readonly number[])[], order: readonly number[]): Block {
  const kinds = [...block.kinds];
  const taken = waiting.map(() => 0);
  for (const place of order) {
    const size = block.kinds[place];
    if (size === undefined) continue;
    kinds[place] = waiting[size]?.[taken[size] as number];
    taken[size] = (taken[size] as number) + 1;
  }
  return { ...block, kinds };
}

function unlikeNeighbours({ kinds, across }: Block): number {
  return (
    kinds.filter((kind, place) => {
      const right = (place + 1) % across === 0 ? kind : kinds[place + 1];
      return kind !== right;
    }).length + kinds.slice(across).filter((kind, place) => kind !== kinds[place]).length
  );
}
