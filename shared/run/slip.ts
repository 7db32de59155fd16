// What a delivery holds, against the order and the deliveries before it: the lines of its packing slip.
import { ok, type Result, refuse } from '../fault/result.ts';
import type { RunEvent, RunLogEntry } from './events.ts';
import { refusedCount } from './refusedCount.ts';
import { type PrintRun, standing } from './run.ts';

/** A delivery of a run. */
export interface Slip {
  readonly title: string;
  /** Which delivery of the run it is, from 1. */
  readonly number: number;
  /** When it was counted out, in UTC. */
  readonly at: string;
  readonly lines: readonly SlipLine[];
}

/** One design, in pieces. */
export interface SlipLine {
  readonly piece: string;
  readonly wanted: number;
  readonly now: number;
  /** In earlier deliveries. */
  readonly before: number;
}

type Delivery = RunLogEntry & { readonly event: RunEvent & { readonly kind: 'delivered' } };

/** The deliveries that stand, the first one first. */
export function deliveriesOf(run: PrintRun): readonly Delivery[] {
  return standing(run).filter((entry): entry is Delivery => entry.event.kind === 'delivered');
}

/** The slip of the delivery that was entered under this number. Refused where there is none, or it was taken back. */
export function slipOf(run: PrintRun, id: number): Result<Slip> {
  const deliveries = deliveriesOf(run);
  const index = deliveries.findIndex((d) => d.id === id);
  const delivery = deliveries[index];
  if (delivery === undefined) {
    return refuse(
      refusedCount(
        'That delivery is not there: it was taken back.',
        'Count the delivery first, then make its slip.',
      ),
    );
  }
  const countIn = (from: readonly Delivery[], piece: string) =>
    from
      .flatMap((d) => d.event.pieces)
      .filter((p) => p.piece === piece)
      .reduce((sum, p) => sum + p.pieces, 0);
  return ok({
    title: run.plan.title,
    number: index + 1,
    at: delivery.at,
    lines: run.plan.designs.map(({ piece, wanted }) => ({
      piece,
      wanted,
      now: countIn([delivery], piece),
      before: countIn(deliveries.slice(0, index), piece),
    })),
  });
}
