// The middle of a run sheet: both sides as the hands see them, and the turn between them.
import { paperError } from '../geometry/register.ts';
import { type Job, sheetOf } from '../job/job.ts';
import { below, beside, indent, type PageBlock, space } from '../pdf/document/block.ts';
import type { Passage } from '../pdf/document/fillPages.ts';
import { setHeading, setParagraph } from '../pdf/document/setWords.ts';
import { drawPass, type PassDrawing, scaleFor } from './drawPass.ts';
import { lettersOf } from './letters.ts';
import { drawMovement } from './movement.ts';
import type { RunSheetInput } from './runSheetInput.ts';
import { seenPasses } from './seenPasses.ts';
import { BODY, HEADING, NOTE } from './styles.ts';
import { turnOfRun } from './turnOfRun.ts';

const ABOVE_PT = 10;
const GAP_PT = 5;
/** A drawing of one side is no wider than this, in pt. */
const MAX_DRAWING_PT = 300;

/** The drawing of both sides, its heading and what is said of it, together as high as `height` (pt) at the most. */
export function setSheetInHand({ job, measures }: RunSheetInput, width: number, height: number): Passage {
  const { brief } = job;
  const sheet = sheetOf(brief).size;
  const turn = turnOfRun(job);
  const itself = brief.work.style === 'perfecting';
  const passes = seenPasses(job);
  const heading = setHeading('The sheet in hand', HEADING, width, measures);
  const words = [
    ...(turn === undefined
      ? []
      : [setParagraph(paperError(turn, brief.sheet.hold).words, BODY, width, measures)]),
    setParagraph(legendOf(job, turn !== undefined && !itself), NOTE, width, measures),
  ];
  const between = turn === undefined ? 0 : 112;
  const room = {
    w: Math.min(MAX_DRAWING_PT, (width - between - 12) / passes.length),
    h: height - ABOVE_PT - below([heading, ...words], GAP_PT).h - GAP_PT,
  };
  const scale = scaleFor(sheet, room);
  const [first, second] = passes.map((pass): PageBlock => {
    const drawing: PassDrawing = {
      pass,
      sheet,
      byHand: turn !== undefined && !itself,
      letters: lettersOf(job),
    };
    return drawPass(drawing, scale, measures);
  });
  const drawing = (): readonly PageBlock[] => {
    if (first === undefined) return [];
    if (turn === undefined || second === undefined) return [indent(first, (width - first.w) / 2)];
    const movement = drawMovement(turn, sheet, itself, between, measures);
    const slack = Math.max(0, width - first.w - second.w - movement.w) / 2;
    const level = below([space(Math.max(0, (first.h - movement.h) / 2)), movement], 0);
    return [beside([first, level, second], slack)];
  };
  return { blocks: [heading, ...drawing(), ...words], gap: GAP_PT, above: ABOVE_PT };
}

function legendOf(job: Job, byHand: boolean): string {
  const guide =
    job.brief.sheet.hold.across === 'centre'
      ? 'open blocks are guides on both sides'
      : 'the black block is the side guide';
  if (turnOfRun(job) === undefined) {
    return `F is a front, and the triangle points to its head; ${guide}.`;
  }
  const pencil = byHand ? '; three strokes are the pencil line of the pile' : '';
  return `F is a front, B (shaded, dashed) a back, and the triangle points to its head. A number names the same piece on both sides; ${guide}${pencil}. Edges keep the names they have on side 1.`;
}
