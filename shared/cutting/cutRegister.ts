// Register at the knife: how far an error in the size of the paper parts a cut from the image of either side.
import { paperError, type SheetHold } from '../geometry/register.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import { turnOf, type Work } from '../geometry/work.ts';
import { dimensionOf, oppositeEdge } from './lie.ts';
import type { CutRegister } from './order.ts';

/**
 * What a cut that goes back to the raw edge `from` is off by, for an error of one in the size of the paper.
 *
 * The image of a side lies true to the edge that was laid to the guide in its pass. Held from that edge the cut is
 * true; held from the other one the whole error lies between; where the printer centres the sheet, half of it does.
 *
 * @source Derived; proved by laying, turning and cutting wrong sheets in the tests.
 */
export function cutRegister(from: SheetEdge, work: Work, hold: SheetHold): CutRegister {
  const dimension = dimensionOf(from);
  const first = dimension === 'width' ? hold.across : hold.along;
  const register = { dimension, from, side1: shareFrom(from, first) };
  const turn = turnOf(work);
  if (turn === undefined) return register;
  const turned = paperError(turn, hold);
  const second = turned.dimension === dimension ? (turned.laidTo?.[1] ?? 'centre') : first;
  return { ...register, side2: shareFrom(from, second) };
}

function shareFrom(from: SheetEdge, laid: SheetEdge | 'centre'): 0 | 0.5 | 1 {
  if (laid === 'centre') return 0.5;
  return laid === oppositeEdge(from) ? 1 : 0;
}
