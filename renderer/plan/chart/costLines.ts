// The lines of the chart of costs, drawn from the cost at every quantity, and how far the scales reach.
import type { CostCurve, Quantities } from '../../../shared/plan/costCurve.ts';

/** The cost of one piece on one printer, from the smallest quantity to the largest. */
export interface CostLine {
  readonly name: string;
  readonly points: readonly { readonly quantity: number; readonly perPiece: number }[];
}

/** How far around the ordered quantity the chart looks. */
const QUANTITY_RANGE_FACTOR = 5;
/** Points of a line: more would not be told apart on a screen. */
const MAX_POINTS = 300;

/** The quantities that the chart shows around what is ordered. */
export function quantitiesAround(ordered: number): Quantities {
  return {
    from: Math.max(1, Math.floor(ordered / QUANTITY_RANGE_FACTOR)),
    to: ordered * QUANTITY_RANGE_FACTOR,
  };
}

/** At even steps of a scale of ratios, since the chart has one. */
export function linesOf(curves: readonly CostCurve[]): readonly CostLine[] {
  return curves.map(({ printer, quantities: { from, to }, totals }) => {
    const steps = Array.from({ length: MAX_POINTS + 1 }, (_n, i) =>
      Math.round(from * (to / from) ** (i / MAX_POINTS)),
    );
    const points = [...new Set(steps)].map((quantity) => ({
      quantity,
      perPiece: (totals[quantity - from] ?? Number.NaN) / quantity,
    }));
    return { name: printer, points };
  });
}

type Span = readonly [from: number, to: number];

/** How far the quantities and the costs of the lines reach. Costs begin at nothing, so that heights compare. */
export function rangeOf(lines: readonly CostLine[]): { readonly quantity: Span; readonly cost: Span } {
  const points = lines.flatMap((l) => l.points);
  const quantities = points.map((p) => p.quantity);
  return {
    quantity: [Math.min(...quantities), Math.max(...quantities)],
    cost: [0, Math.max(...points.map((p) => p.perPiece))],
  };
}
