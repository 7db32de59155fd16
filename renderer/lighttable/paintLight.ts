// Drawing the light table: one side with the other shining through the paper in register, and where the two differ.
import type { Backed } from '../../shared/bench/backUp.ts';
import { toScreen, type View } from '../../shared/bench/view.ts';
import { grow, wholeOf } from '../../shared/geometry/rect.ts';
import type { Rect, Side, Size } from '../../shared/geometry/space.ts';
import { applyToRect, chain, inverse, type Transform } from '../../shared/geometry/transform.ts';
import { lookFromBehind, type Turn } from '../../shared/geometry/turn.ts';
import type { ShownPiece } from '../bench/model/shownPieces.ts';
import { type Inks, ON_PAPER } from '../bench/paint/inks.ts';
import { paintSign } from '../bench/paint/paintMarks.ts';
import { type PicturesOf, paintArt } from '../bench/paint/paintPieces.ts';
import { paintFeed } from '../bench/paint/paintSheet.ts';
import { addRect, hatch, onScreen, type Paper, strokeOnArt } from '../bench/paint/pen.ts';

export interface LightScene {
  readonly sheet: Size;
  readonly turn: Turn | undefined;
  readonly view: View;
  readonly front: readonly ShownPiece[];
  readonly behind: readonly ShownPiece[];
  readonly backed: readonly Backed[];
  readonly picturesOf: PicturesOf;
  /** 0: only what lies up; 1: only what shines through; both fully in the middle. */
  readonly through: number;
  /** The piece that the pointer or the keys are on. */
  readonly lit: number | undefined;
}

export function paintLight(paper: Paper, scene: LightScene, inks: Inks): void {
  const { sheet, turn, view, front, behind, picturesOf, through } = scene;
  const whole = onScreen(view, wholeOf<Side>(sheet));
  paper.fillStyle = '#fff';
  paper.shadowColor = 'rgb(255 250 225 / 75%)';
  paper.shadowBlur = 30;
  paper.fillRect(whole.x, whole.y, whole.w, whole.h);
  paper.shadowColor = 'transparent';
  paintFeed(paper, sheet, view, inks);

  paper.save();
  paper.beginPath();
  paper.rect(whole.x, whole.y, whole.w, whole.h);
  paper.clip();
  paper.globalCompositeOperation = 'multiply';
  paper.globalAlpha = Math.min(1, 2 - 2 * through);
  paintArt(paper, front, picturesOf, view);
  paper.globalAlpha = Math.min(1, 2 * through);
  if (turn !== undefined) {
    const see = toScreen<Side>(view);
    const back = chain(inverse(see), chain(throughPaper(turn, sheet), see));
    paper.transform(back.a, back.b, back.c, back.d, back.e, back.f);
    paintArt(paper, behind, picturesOf, view);
  }
  paper.restore();

  paintEdges(paper, scene);
  paintDifferences(paper, scene);
}

/** Trims: an unbroken line where this side has them, a broken one where the other side has them. */
function paintEdges(paper: Paper, { front, behind, sheet, turn, view, lit }: LightScene): void {
  paper.beginPath();
  for (const { trim } of front) addRect(paper, onScreen(view, trim));
  strokeOnArt(paper, ON_PAPER.dark, 1);
  if (turn === undefined) return;
  paper.beginPath();
  for (const { trim } of behind) addRect(paper, onScreen(view, applyToRect(throughPaper(turn, sheet), trim)));
  strokeOnArt(paper, ON_PAPER.accent, 1, [9, 6]);
  const piece = front.find((p) => p.position === lit);
  if (piece === undefined) return;
  paper.beginPath();
  addRect(paper, onScreen(view, piece.trim));
  strokeOnArt(paper, ON_PAPER.accent, 3);
}

/** Where a piece and what is printed behind it do not cover each other: hatched. And a sign on each that is wrong. */
function paintDifferences(paper: Paper, { backed, front, sheet, turn, view }: LightScene): void {
  if (turn === undefined) return;
  for (const { position, printed, fault } of backed) {
    const piece = front[position];
    if (piece === undefined || fault === undefined) continue;
    const room = onScreen(view, piece.trim);
    paper.beginPath();
    addRect(paper, room);
    if (printed !== undefined && fault === 'off-place') {
      addRect(paper, onScreen(view, applyToRect(throughPaper(turn, sheet), printed.trim as Rect<Side>)));
    }
    hatch(paper, grow(room, Math.max(room.w, room.h)), 8, ON_PAPER.bad);
    paper.beginPath();
    addRect(paper, room);
    strokeOnArt(paper, ON_PAPER.bad, 3);
    paintSign(paper, room, true, ON_PAPER.bad);
  }
}

/** A place of the other side as it is seen through the paper; the two ways are one. */
function throughPaper(turn: Turn, sheet: Size): Transform<Side, Side> {
  return lookFromBehind(turn, sheet) as Transform<Side, Side>;
}
