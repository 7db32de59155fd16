// The good pieces of each design against the order: what can go to the customer, and what is lacking or over.
import type { PrintRun } from './run.ts';

/** One design, in pieces. */
export interface DeliveryLine {
  readonly piece: string;
  readonly wanted: number;
  /** On all finished sheets. */
  readonly printed: number;
  readonly spoiled: number;
  /** Counted as good from the knife. */
  readonly good: number;
  readonly delivered: number;
  /** Good ones that are still in the house. */
  readonly inHouse: number;
  /** What a delivery now would best hold: all that is wanted and not delivered yet, as far as it is in the house. */
  readonly due: number;
}

export function deliveryOf({ plan, sheets, pieces }: PrintRun): readonly DeliveryLine[] {
  return plan.designs.map(({ piece, wanted, perSheet }, i) => {
    const { good = 0, spoiled = 0, delivered = 0 } = pieces[i] ?? {};
    const inHouse = good - delivered;
    return {
      piece,
      wanted,
      printed: sheets.done * perSheet,
      spoiled,
      good,
      delivered,
      inHouse,
      due: Math.max(0, Math.min(inHouse, wanted - delivered)),
    };
  });
}

/** How a number of pieces stands against the order, in words: `as ordered`, `3 short`, `4 over`. */
export function againstOrder(count: number, wanted: number): string {
  if (count === wanted) return 'as ordered';
  return count < wanted ? `${wanted - count} short` : `${count - wanted} over`;
}
