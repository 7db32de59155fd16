// Drawing the light table: one side with the other shining through the paper in register, and where the two differ.
import type { Backed } from '../../shared/bench/backUp.ts';
import { toScreen, type View } from '../../shared/bench/view.ts';
import { grow, wholeOf } from '../../shared/geometry/rect.ts';
import type { Rect, Side, Size } from '../../shared/geometry/space.ts';
import { applyToRect, chain, inverse, type Transform } from '../../shared/geometry/transform.ts';
import { lookFromBehind, type Turn } from '../../shared/geometry/turn.ts';
import { type Inks, ON_PAPER } from '../sheet/paint/inks.ts';
import { type PicturesOf, paintArt } from '../sheet/paint/paintPieces.ts';
import { paintFeed } from '../sheet/paint/paintSheet.ts';
import { paintSign } from '../sheet/paint/paintSign.ts';
import { addRect, hatchPath, onScreen, type Pen, strokeOnArt } from '../sheet/paint/pen.ts';
import type { ShownPiece } from '../sheet/pieces/shownPieces.ts';

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

export function paintLight(pen: Pen, scene: LightScene, inks: Inks): void {
  const { sheet, turn, view, front, behind, picturesOf, through } = scene;
  const whole = onScreen(view, wholeOf<Side>(sheet));
  pen.fillStyle = '#fff';
  pen.shadowColor = 'rgb(255 250 225 / 75%)';
  pen.shadowBlur = 30;
  pen.fillRect(whole.x, whole.y, whole.w, whole.h);
  pen.shadowColor = 'transparent';
  paintFeed(pen, sheet, view, inks);

  pen.save();
  pen.beginPath();
  pen.rect(whole.x, whole.y, whole.w, whole.h);
  pen.clip();
  pen.globalCompositeOperation = 'multiply';
  pen.globalAlpha = Math.min(1, 2 - 2 * through);
  paintArt(pen, front, picturesOf, view);
  pen.globalAlpha = Math.min(1, 2 * through);
  if (turn !== undefined) {
    const see = toScreen<Side>(view);
    const back = chain(inverse(see), chain(throughPaper(turn, sheet), see));
    pen.transform(back.a, back.b, back.c, back.d, back.e, back.f);
    paintArt(pen, behind, picturesOf, view);
  }
  pen.restore();

  paintEdges(pen, scene);
  paintDifferences(pen, scene);
}

/** Trims: an unbroken line where this side has them, a broken one where the other side has them. */
function paintEdges(pen: Pen, { front, behind, sheet, turn, view, lit }: LightScene): void {
  pen.beginPath();
  for (const { trim } of front) addRect(pen, onScreen(view, trim));
  strokeOnArt(pen, ON_PAPER.dark, 1);
  if (turn === undefined) return;
  pen.beginPath();
  for (const { trim } of behind) addRect(pen, onScreen(view, applyToRect(throughPaper(turn, sheet), trim)));
  strokeOnArt(pen, ON_PAPER.accent, 1, [9, 6]);
  const piece = front.find((p) => p.position === lit);
  if (piece === undefined) return;
  pen.beginPath();
  addRect(pen, onScreen(view, piece.trim));
  strokeOnArt(pen, ON_PAPER.accent, 3);
}

/** Where a piece and what is printed behind it do not cover each other: hatched. And a sign on each that is wrong. */
function paintDifferences(pen: Pen, { backed, front, sheet, turn, view }: LightScene): void {
  if (turn === undefined) return;
  for (const { position, printed, fault } of backed) {
    const piece = front[position];
    if (piece === undefined || fault === undefined) continue;
    const room = onScreen(view, piece.trim);
    pen.beginPath();
    addRect(pen, room);
    if (printed !== undefined && fault === 'off-place') {
      addRect(pen, onScreen(view, applyToRect(throughPaper(turn, sheet), printed.trim as Rect<Side>)));
    }
    hatchPath(pen, grow(room, Math.max(room.w, room.h)), 8, ON_PAPER.bad);
    pen.beginPath();
    addRect(pen, room);
    strokeOnArt(pen, ON_PAPER.bad, 3);
    paintSign(pen, room, true, ON_PAPER.bad);
  }
}

/** A place of the other side as it is seen through the paper; the two ways are one. */
function throughPaper(turn: Turn, sheet: Size): Transform<Side, Side> {
  return lookFromBehind(turn, sheet) as Transform<Side, Side>;
}
