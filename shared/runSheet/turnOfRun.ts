// The turn that a run really has: none where no piece has a back, whatever the way of working.
import type { Turn } from '../geometry/turn.ts';
import { turnOf } from '../geometry/work.ts';
import type { Job } from '../job/job.ts';

/** How the sheet is turned between the passes; `undefined` where nothing is printed behind. */
export function turnOfRun({ brief }: Job): Turn | undefined {
  return brief.pieces.some((piece) => piece.back !== undefined) ? turnOf(brief.work) : undefined;
}
