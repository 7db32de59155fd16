// What lies on the side that is looked at: each piece with its printed area, ready to be drawn and picked.

import type { Head } from '../../../shared/geometry/head.ts';
import { grow, intersection } from '../../../shared/geometry/rect.ts';
import type { Rect, Side } from '../../../shared/geometry/space.ts';
import type { Transform } from '../../../shared/geometry/transform.ts';
import { lookFromBehind } from '../../../shared/geometry/turn.ts';
import { hasOneForm, turnOf } from '../../../shared/geometry/work.ts';
import { designsOf, type Job, sheetOf } from '../../../shared/job/job.ts';
import { type BleedArea, bleedAreas } from '../../../shared/layout/bleeds.ts';
import { behind, designNamed } from '../../../shared/layout/forms.ts';
import type { FaceName } from '../../../shared/layout/position.ts';
import { points } from '../../../shared/units/length.ts';

/** The side of the sheet that lies up. */
export type SideUp = 1 | 2;

/** A piece as it lies on the side that is looked at. Lengths in pt, in the frame of that side. */
export interface ShownPiece {
  /** The index of its position in the arrangement. */
  readonly position: number;
  readonly piece: string;
  /** The face that is printed there; none where the piece is blank on this side. */
  readonly face: FaceName | undefined;
  readonly trim: Rect<Side>;
  readonly head: Head;
  /** As far as its art is printed. */
  readonly printed: BleedArea<Side>;
  /** As far as its art reaches when nothing is near. */
  readonly bleed: Rect<Side>;
  readonly safe: Rect<Side>;
}

/** The pieces on a side, in the order of the arrangement. A form that serves both sides looks the same on both. */
export function shownPieces(job: Job, side: SideUp): readonly ShownPiece[] {
  const lying = side === 1 || hasOneForm(job.brief.work) ? job.arrangement : behindEach(job);
  const designs = designsOf(job.brief);
  const areas = bleedAreas(
    lying.map(({ piece, trim }) => ({ trim, bleed: designNamed(designs, piece).bleed })),
  );
  return lying.map(({ piece, face, trim, head }, position) => {
    const { bleed, hasBack } = designNamed(designs, piece);
    return {
      position,
      piece,
      face: face === 'front' || hasBack ? face : undefined,
      trim,
      head,
      printed: areas[position] ?? [trim],
      bleed: grow<Side>(trim, bleed),
      safe: grow<Side>(trim, -points(designNamed(job.brief.pieces, piece).safe)),
    };
  });
}

/**
 * The pieces as a gesture has moved some of them: those that move are worked out anew among those that are near, the
 * others stay as they were before.
 */
export function moveShownPieces(
  before: readonly ShownPiece[],
  job: Job,
  side: SideUp,
  moving: ReadonlySet<number>,
): readonly ShownPiece[] {
  const alone = [...moving];
  const moved = shownPieces(pick(job, alone), side).map((p) => p.bleed);
  const meeting = (bleeds: readonly Rect<Side>[]) =>
    before.filter(
      (b) => !moving.has(b.position) && bleeds.some((m) => intersection(m, b.bleed) !== undefined),
    );
  // What a neighbour may claim depends on its own neighbours too.
  const near = meeting([...moved, ...meeting(moved).map((b) => b.bleed)]).map(({ position }) => position);
  const worked = shownPieces(pick(job, [...alone, ...near]), side);
  const pieces = [...before];
  alone.forEach((position, i) => {
    const piece = worked[i];
    if (piece !== undefined) pieces[position] = { ...piece, position };
  });
  return pieces;
}

function pick(job: Job, positions: readonly number[]): Job {
  return { ...job, arrangement: positions.flatMap((i) => job.arrangement[i] ?? []) };
}

function behindEach(job: Job) {
  const turn = turnOf(job.brief.work);
  if (turn === undefined) return [];
  const designs = designsOf(job.brief);
  const { size } = sheetOf(job.brief);
  return job.arrangement.map((p) => behind(p, designNamed(designs, p.piece).turned, turn, size));
}

/**
 * From the side that is looked at to the frame in which the arrangement is edited, and back again: the two ways are
 * one. A form that serves both sides is edited as it lies, whichever side shows it.
 */
export function ontoArrangement(job: Job, side: SideUp): Transform<Side, Side> {
  const turn = turnOf(job.brief.work);
  if (side === 1 || turn === undefined || hasOneForm(job.brief.work)) {
    return { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  }
  return lookFromBehind(turn, sheetOf(job.brief).size) as Transform<Side, Side>;
}
