// Which printer is the cheapest, and from which quantity on.
import { describe, expect, it } from 'vitest';
import { changesOfCheapest, lastChanges } from '../../../shared/plan/cheapest.ts';
import type { CostCurve } from '../../../shared/plan/costCurve.ts';

const curve = (printer: string, ...totals: number[]): CostCurve => ({
  printer,
  quantities: { from: 10, to: 9 + totals.length },
  totals,
  best: totals.map(() => printer),
});

describe('the cheapest printer', () => {
  it('changes where another becomes cheaper than all, not where two of the dearer ones change places', () => {
    const changes = changesOfCheapest([
      curve('A', 1, 2, 5, 9, 9),
      curve('B', 4, 4, 4, 6, 9),
      curve('C', 9, 5, 4.5, 4.5, 4.5),
    ]);
    expect(changes).toEqual([
      { quantity: 12, cheaperBefore: 'A', cheaperFrom: 'B' },
      { quantity: 13, cheaperBefore: 'B', cheaperFrom: 'C' },
    ]);
  });

  it('stays where another costs just the same', () => {
    expect(changesOfCheapest([curve('A', 1, 3, 3), curve('B', 2, 3, 3)])).toEqual([]);
    expect(changesOfCheapest([])).toEqual([]);
  });

  it('that changes to and fro with the steps of whole sheets has settled at the last change', () => {
    const changes = changesOfCheapest([curve('A', 1, 4, 1, 4, 4), curve('B', 2, 2, 2, 3, 3)]);
    expect(changes.map((c) => c.quantity)).toEqual([11, 12, 13]);
    expect(lastChanges(changes)).toEqual([{ quantity: 13, cheaperBefore: 'A', cheaperFrom: 'B' }]);
  });
});
