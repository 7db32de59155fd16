// The pieces that the knife made of the printed sheets, and those of them that were delivered.
import { ok, type Result, refuse } from '../fault/result.ts';
import type { RunEvent } from './events.ts';
import type { RunPlan } from './plan.ts';
import { refusedCount } from './refusedCount.ts';

/** What has become of the pieces of one design. */
export interface CutPieces {
  readonly piece: string;
  readonly good: number;
  readonly spoiled: number;
  /** Of the good ones. */
  readonly delivered: number;
}

/** The events that move pieces. */
type PieceEvent = Extract<RunEvent, { kind: 'trimmed' | 'delivered' }>;

export function noPieces(plan: RunPlan): readonly CutPieces[] {
  return plan.designs.map(({ piece }) => ({ piece, good: 0, spoiled: 0, delivered: 0 }));
}

/** The pieces after the event, or why it cannot have happened. `done`: sheets that came good out of the last pass. */
export function countPieces(
  pieces: readonly CutPieces[],
  event: PieceEvent,
  plan: RunPlan,
  done: number,
): Result<readonly CutPieces[]> {
  return event.kind === 'trimmed' ? trim(pieces, event, plan, done) : deliver(pieces, event);
}

function trim(
  pieces: readonly CutPieces[],
  { piece, good, spoiled }: PieceEvent & { readonly kind: 'trimmed' },
  plan: RunPlan,
  done: number,
): Result<readonly CutPieces[]> {
  const before = pieces.find((p) => p.piece === piece);
  const perSheet = plan.designs.find((d) => d.piece === piece)?.perSheet ?? 0;
  if (before === undefined) return refuse(unknown(piece));
  if (good + spoiled === 0)
    return refuse(refusedCount('No pieces were counted.', 'Type how many there are.'));
  const uncut = done * perSheet - before.good - before.spoiled;
  if (good + spoiled > uncut) {
    return refuse(
      refusedCount(
        `The knife cannot have made ${good + spoiled} ${piece}: the printed sheets hold ${done * perSheet}, and ${uncut} of them ${uncut === 1 ? 'is' : 'are'} not counted yet.`,
        'Count again, or set the count of the last pass right first.',
      ),
    );
  }
  return ok(replace(pieces, { ...before, good: before.good + good, spoiled: before.spoiled + spoiled }));
}

function deliver(
  pieces: readonly CutPieces[],
  event: PieceEvent & { readonly kind: 'delivered' },
): Result<readonly CutPieces[]> {
  let after = pieces;
  for (const { piece, pieces: count } of event.pieces) {
    const before = after.find((p) => p.piece === piece);
    if (before === undefined) return refuse(unknown(piece));
    const there = before.good - before.delivered;
    if (count > there) {
      return refuse(
        refusedCount(
          `${count} ${piece} cannot be delivered: ${there} good ${there === 1 ? 'one is' : 'ones are'} counted and not delivered yet.`,
          'Count the trimmed pieces first.',
        ),
      );
    }
    after = replace(after, { ...before, delivered: before.delivered + count });
  }
  return ok(after);
}

function replace(pieces: readonly CutPieces[], by: CutPieces): readonly CutPieces[] {
  return pieces.map((p) => (p.piece === by.piece ? by : p));
}

function unknown(piece: string) {
  return refusedCount(
    `This run has no piece called ${piece}.`,
    'Count it under the name that it has in the run.',
  );
}
