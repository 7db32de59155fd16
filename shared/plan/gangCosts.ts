// What a sheet and a form of a gang run cost on the printer and the paper of a candidate.
import type { GangCosts } from '../gang/gangJob.ts';
import type { PlanCandidate } from './candidate.ts';

/** A form costs its make-ready and the sheets that this spoils; a sheet its share of all else. In the library's currency. */
export function gangCostsOf({
  cost,
  count,
}: Pick<PlanCandidate, 'cost' | 'count'>): Pick<GangCosts, 'sheetCost' | 'formCost'> {
  const sheetCost = (cost.total - cost.makeReady) / count.sheets;
  return { sheetCost, formCost: cost.makeReady + count.makeReady * sheetCost };
}
