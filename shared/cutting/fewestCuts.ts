// How many cuts free every piece of a part, if the machine sets no limits.
import {
  boundsOfPieces,
  type CuttingGrid,
  clearLines,
  type LineWay,
  type Part,
  partAt,
  partKey,
} from './cuttingGrid.ts';
import { CLOCKWISE } from './lie.ts';

const WAYS: readonly LineWay[] = ['up', 'across'];

/**
 * The fewest cuts for any part of a sheet that can be cut; none for waste, infinite for what no guillotine can cut.
 *
 * Waste around all pieces of a part is trimmed first, which never costs a cut: whoever trims later trims the same edge
 * once for every part that still has it. So only what lies between the outermost trims has to be searched. Every clear
 * line is tried until `effort` is spent (about the number of pieces looked at, over all parts); from then on only the
 * last line of each direction is, which is as good for a grid. With infinite effort the answer is the fewest there are.
 */
export function fewestCuts(field: CuttingGrid, effort: number): (part: Part) => number {
  const known = new Map<string, number>();
  let spent = 0;

  function withTrims(part: Part): number {
    if (part.pieces.length === 0) return 0;
    const bounds = boundsOfPieces(field, part.pieces);
    const trims = CLOCKWISE.filter((edge) => bounds[edge] !== part[edge]).length;
    return trims + between({ ...bounds, pieces: part.pieces });
  }

  function between(part: Part): number {
    if (part.pieces.length === 1) return 0;
    const key = partKey(part);
    const before = known.get(key);
    if (before !== undefined) return before;
    let fewest = Infinity;
    for (const way of WAYS) {
      const lines = clearLines(field, part, way);
      for (const line of spent < effort ? lines : lines.slice(-1)) {
        spent += part.pieces.length;
        const [one, other] = partAt(field, part, way, line);
        fewest = Math.min(fewest, 1 + withTrims(one) + withTrims(other));
      }
    }
    known.set(key, fewest);
    return fewest;
  }

  return withTrims;
}
