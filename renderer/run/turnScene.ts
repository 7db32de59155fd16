// What the drawing of the turn shows: the sheet as it lies in each pass, scaled to the drawing, y down.
import type { Head } from '../../shared/geometry/head.ts';
import type { Size } from '../../shared/geometry/space.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import { type Job, sheetOf } from '../../shared/job/job.ts';
import type { FaceName } from '../../shared/layout/position.ts';
import { type SeenPass, seenFirst, seenTurned } from '../../shared/runSheet/seenPasses.ts';

/** A piece on the drawn sheet, from its upper left, y down. */
export interface DrawnPiece {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly head: Head;
  readonly face: FaceName;
}

/** The sheet in one pass, lead edge up. */
export type DrawnPass = Omit<SeenPass, 'pieces'> & { readonly pieces: readonly DrawnPiece[] };

export interface TurnScene {
  /** Of the drawn sheet. */
  readonly size: Size;
  readonly passes: readonly [DrawnPass, DrawnPass];
}

/** The two passes of a job whose sheet is turned, no part of the sheet longer than `longest`. */
export function sceneOf(job: Job, turn: Turn, longest: number): TurnScene {
  const sheet = sheetOf(job.brief).size;
  const scale = longest / Math.max(sheet.w, sheet.h);
  const draw = ({ pieces, ...pass }: SeenPass): DrawnPass => ({
    ...pass,
    pieces: pieces
      .filter((piece) => piece.printed)
      .map(({ trim, head, face }) => ({
        x: trim.x * scale,
        y: (sheet.h - trim.y - trim.h) * scale,
        w: trim.w * scale,
        h: trim.h * scale,
        head,
        face,
      })),
  });
  return {
    size: { w: sheet.w * scale, h: sheet.h * scale },
    passes: [draw(seenFirst(job)), draw(seenTurned(job, turn))],
  };
}
