// The sheet as the hands see it in each pass: its pieces and heads, which edge leads, and which edge meets the guide.
import type { Head } from '../geometry/head.ts';
import type { Rect, Side, Size } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import { applyToRect } from '../geometry/transform.ts';
import { lookFromBehind, type Turn } from '../geometry/turn.ts';
import { designsOf, type Job, sheetOf } from '../job/job.ts';
import { formsOfJob } from '../job/nameJobFiles.ts';
import { behind, designNamed } from '../layout/forms.ts';
import type { FaceName } from '../layout/position.ts';
import { turnOfRun } from './turnOfRun.ts';

/** One place on a side. */
export interface SeenPiece {
  /** The position of the arrangement that is cut out here, from 1; the same on both sides. None if no position is. */
  readonly number: number | undefined;
  readonly piece: string;
  readonly face: FaceName;
  /** Whether anything is printed here: a piece without a back stays blank behind. */
  readonly printed: boolean;
  /** In the frame of the side, lead edge up, in pt. */
  readonly trim: Rect<Side>;
  readonly head: Head;
}

/** The sheet in one pass, lead edge up. */
export interface SeenPass {
  readonly side: 1 | 2;
  readonly pieces: readonly SeenPiece[];
  /** Which edge of the paper leads, as named on side 1. */
  readonly leads: 'lead' | 'tail';
  /** On which side of the view the paper is held; none where the printer centres it. */
  readonly guide: 'left' | 'right' | undefined;
  /** Which edge of the paper lies there, as named on side 1. */
  readonly meets: 'left' | 'right' | undefined;
  /** Where the pencil line down the side of the pile, drawn near the lead edge of side 1, is seen. */
  readonly pencil: { readonly side: 'left' | 'right'; readonly at: 'lead' | 'tail' };
}

/** The passes of a job in their order: one, or two where the sheet is turned. */
export function seenPasses(job: Job): readonly SeenPass[] {
  const turn = turnOfRun(job);
  return turn === undefined ? [seenFirst(job)] : [seenFirst(job), seenTurned(job, turn)];
}

/** The sheet in the first pass. */
export function seenFirst(job: Job): SeenPass {
  const guide = guideOf(job);
  const pencil = { side: guide ?? 'left', at: 'lead' } as const;
  return { side: 1, pieces: piecesOnSide1(job), leads: 'lead', guide, meets: guide, pencil };
}

/** The sheet in the second pass, turned. */
export function seenTurned(job: Job, turn: Turn): SeenPass {
  const guide = guideOf(job);
  const pencil = guide ?? 'left';
  const sideways = turn === 'side-to-side';
  return {
    side: 2,
    pieces: piecesOnSide2(job, turn),
    leads: sideways ? 'lead' : 'tail',
    guide,
    meets: guide !== undefined && sideways ? otherHand(guide) : guide,
    pencil: sideways ? { side: otherHand(pencil), at: 'lead' } : { side: pencil, at: 'tail' },
  };
}

function guideOf({ brief }: Job): 'left' | 'right' | undefined {
  const { across } = brief.sheet.hold;
  return across === 'centre' ? undefined : across;
}

function otherHand(side: 'left' | 'right'): 'left' | 'right' {
  return side === 'left' ? 'right' : 'left';
}

function piecesOnSide1(job: Job): readonly SeenPiece[] {
  const designs = designsOf(job.brief);
  return job.arrangement.map(({ piece, face, trim, head }, i) => {
    const printed = face === 'front' || designNamed(designs, piece).hasBack;
    return { number: i + 1, piece, face, printed, trim, head };
  });
}

/** What side 2 really prints, and the places behind pieces without a back. */
function piecesOnSide2(job: Job, turn: Turn): readonly SeenPiece[] {
  const sheet = sheetOf(job.brief).size;
  const designs = designsOf(job.brief);
  const form = formsOfJob(job).find((f) => f.sides.includes(2));
  const printed = (form?.placements ?? []).map(({ piece, face, trim, head }) => ({
    number: numberBehind(job, trim, turn, sheet),
    piece,
    face,
    printed: true,
    trim,
    head,
  }));
  const blank = job.arrangement.flatMap((position, i) => {
    const design = designNamed(designs, position.piece);
    const lying = behind(position, design.turned, turn, sheet);
    return design.hasBack || lying.face === 'front' ? [] : [{ ...lying, number: i + 1, printed: false }];
  });
  return [...printed, ...blank];
}

function numberBehind(job: Job, trim: Rect<Side>, turn: Turn, sheet: Size): number | undefined {
  const on1 = applyToRect(lookFromBehind<'side2'>(turn, sheet), trim as Rect<'side2'>);
  const index = job.arrangement.findIndex(({ trim: t }) => same(t.x, on1.x) && same(t.y, on1.y));
  return index < 0 ? undefined : index + 1;
}
