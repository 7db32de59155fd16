// Which printer is the cheapest at each quantity, and from where on.
import type { CostCurve } from './costCurve.ts';

/** A quantity from which on another printer is the cheaper one. */
export interface BreakEven {
  /** In pieces of all designs together. */
  readonly quantity: number;
  readonly cheaperBefore: string;
  readonly cheaperFrom: string;
}

/**
 * Every quantity from which on another printer is the cheapest of all. Costs go up in steps, so two printers may change
 * places more than once; where two cost the same, the one that was the cheapest before still is.
 *
 * @param curves - over the same quantities
 */
export function changesOfCheapest(curves: readonly CostCurve[]): readonly BreakEven[] {
  const [first] = curves;
  if (first === undefined) return [];
  const found: BreakEven[] = [];
  let cheapest: CostCurve | undefined;
  for (const i of first.totals.keys()) {
    const now = curves.reduce(
      (best, curve) => (at(curve, i) < at(best, i) ? curve : best),
      cheapest ?? first,
    );
    if (cheapest !== undefined && now !== cheapest) {
      const quantity = first.quantities.from + i;
      found.push({ quantity, cheaperBefore: cheapest.printer, cheaperFrom: now.printer });
    }
    cheapest = now;
  }
  return found;
}

/** Of changes to and fro between the same printers only the last: from there on it stays so. */
export function lastChanges(changes: readonly BreakEven[]): readonly BreakEven[] {
  const pairOf = ({ cheaperBefore, cheaperFrom }: BreakEven) =>
    [cheaperBefore, cheaperFrom].toSorted().join('\n');
  return changes.filter(
    (change, i) => !changes.slice(i + 1).some((later) => pairOf(later) === pairOf(change)),
  );
}

function at(curve: CostCurve, i: number): number {
  return curve.totals[i] ?? Number.POSITIVE_INFINITY;
}
