// What the drawing of the turn shows: the sheet as it lies in each pass, its pieces, its heads, and where it is held.
import type { Head } from '../../shared/geometry/head.ts';
import type { Size } from '../../shared/geometry/space.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import { designsOf, type Job, sheetOf } from '../../shared/job/job.ts';
import { formsOf } from '../../shared/layout/forms.ts';
import type { FaceName } from '../../shared/layout/position.ts';

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
export interface DrawnPass {
  readonly side: 1 | 2;
  readonly pieces: readonly DrawnPiece[];
  /** Which edge of the paper leads, as named on side 1. */
  readonly leads: 'lead' | 'tail';
  /** On which side of the drawing the paper is held; none where the printer centres it. */
  readonly guide: 'left' | 'right' | undefined;
  /** Which edge of the paper lies there, as named on side 1. */
  readonly meets: 'left' | 'right' | undefined;
  /** Where the pencil line down the side of the pile is seen. */
  readonly pencil: { readonly side: 'left' | 'right'; readonly at: 'lead' | 'tail' };
}

export interface TurnScene {
  /** Of the drawn sheet. */
  readonly size: Size;
  readonly passes: readonly [DrawnPass, DrawnPass];
}

/** The two passes of a job whose sheet is turned, no part of the sheet longer than `longest`. */
export function sceneOf(job: Job, turn: Turn, longest: number): TurnScene {
  const { brief } = job;
  const sheet = sheetOf(brief).size;
  const scale = longest / Math.max(sheet.w, sheet.h);
  const forms = formsOf(job.arrangement, designsOf(brief), brief.work, sheet);
  const piecesOf = (side: 1 | 2) =>
    (forms.find((form) => form.sides.includes(side))?.placements ?? []).map(({ trim, head, face }) => ({
      x: trim.x * scale,
      y: (sheet.h - trim.y - trim.h) * scale,
      w: trim.w * scale,
      h: trim.h * scale,
      head,
      face,
    }));
  const { across } = brief.sheet.hold;
  const guide = across === 'centre' ? undefined : across;
  const pencil = guide ?? 'left';
  const sideways = turn === 'side-to-side';
  return {
    size: { w: sheet.w * scale, h: sheet.h * scale },
    passes: [
      {
        side: 1,
        pieces: piecesOf(1),
        leads: 'lead',
        guide,
        meets: guide,
        pencil: { side: pencil, at: 'lead' },
      },
      {
        side: 2,
        pieces: piecesOf(2),
        leads: sideways ? 'lead' : 'tail',
        guide,
        meets: guide === undefined || !sideways ? guide : otherSide(guide),
        pencil: sideways ? { side: otherSide(pencil), at: 'lead' } : { side: pencil, at: 'tail' },
      },
    ],
  };
}

function otherSide(side: 'left' | 'right'): 'left' | 'right' {
  return side === 'left' ? 'right' : 'left';
}
