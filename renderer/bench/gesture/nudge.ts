// Nudging with the arrow keys: the edit that one press makes, whichever side of the sheet is looked at.
import { nudgeStep } from '../../../shared/bench/nudge.ts';
import type { Command } from '../../../shared/job/commands.ts';
import type { Job } from '../../../shared/job/job.ts';
import { ontoArrangement, type SideUp } from '../../sheet/pieces/shownPieces.ts';

const WAYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The edit for a pressed key, or `undefined` where it is no arrow or nothing is chosen. */
export function nudge(
  job: Job,
  side: SideUp,
  chosen: readonly number[],
  key: string,
  large: boolean,
): Command | undefined {
  const way = WAYS[key];
  if (way === undefined || chosen.length === 0) return undefined;
  const step = nudgeStep(job.brief.units, large);
  const { a, d } = ontoArrangement(job, side);
  return { do: 'move', positions: chosen, dx: a * way[0] * step, dy: d * way[1] * step };
}
