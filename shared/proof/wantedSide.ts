// What belongs on a side as a whole: the pieces with their bleeds, as they lie on that side, and its marks.
import { grow } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { seenFromBehind } from '../geometry/turn.ts';
import { otherFace } from '../layout/position.ts';
import type { Mark } from '../marks/mark.ts';
import type { SideNumber } from './finding.ts';
import type { ProofJob } from './job.ts';
import type { WantedSide } from './waste.ts';

/** The trims of the positions, as they lie on a side. */
export function trimsOn(job: ProofJob, side: SideNumber): readonly Rect[] {
  return job.positions.map(({ trim }): Rect => {
    return side === 1 || job.turn === undefined ? trim : seenFromBehind(trim, job.turn, job.sheet);
  });
}

/**
 * The pieces of a side, in its own frame, with the bleed of those that print on it. One that should be blank has its
 * trim looked at by itself.
 */
export function wantedSide(job: ProofJob, side: SideNumber, marks: readonly Mark[]): WantedSide {
  const trims = trimsOn(job, side);
  const printed = job.positions.map(({ piece, face, trim }, i): Rect => {
    const design = job.pieces.find(({ name }) => name === piece);
    const shown = side === 1 ? face : otherFace(face);
    return grow(trims[i] ?? trim, design?.faces[shown] === undefined ? 0 : design.bleed);
  });
  return { printed, marks };
}
