// A side of the sheet as one page: its paper and all that is printed on it, as a canvas that can be turned.
import type { Backed } from '../../shared/bench/backUp.ts';
import type { View } from '../../shared/bench/view.ts';
import type { Size } from '../../shared/geometry/space.ts';
import type { ShownPiece } from '../bench/model/shownPieces.ts';
import { ON_PAPER } from '../bench/paint/inks.ts';
import { paintSign } from '../bench/paint/paintMarks.ts';
import { type PicturesOf, paintArt, paintLines } from '../bench/paint/paintPieces.ts';
import { addRect, onScreen, strokeOnArt } from '../bench/paint/pen.ts';

/** A page is no larger than this many pixels; a sheet seen very near is turned a little coarser. */
const MOST_PIXELS = 2 ** 22;

export interface PageParts {
  readonly sheet: Size;
  readonly pieces: readonly ShownPiece[];
  readonly picturesOf: PicturesOf;
  /** What is wrong behind pieces whose outlines show through the paper; none where the sheet is turned as it should be. */
  readonly through: readonly Backed[];
}

/** Paints the page into a canvas that takes `zoom` px of the window for each pt of the sheet. */
export function paintPage(canvas: HTMLCanvasElement, parts: PageParts, zoom: number, density: number): void {
  const { sheet, pieces, picturesOf, through } = parts;
  const sharp = Math.min(density, Math.sqrt(MOST_PIXELS / (sheet.w * sheet.h)) / zoom);
  canvas.width = Math.max(1, Math.round(sheet.w * zoom * sharp));
  canvas.height = Math.max(1, Math.round(sheet.h * zoom * sharp));
  const paper = canvas.getContext('2d');
  if (paper === null) throw new Error('This window cannot draw');
  paper.scale(sharp, sharp);
  const view: View = { x: 0, y: sheet.h * zoom, zoom };
  paper.fillStyle = '#fff';
  paper.fillRect(0, 0, sheet.w * zoom, sheet.h * zoom);
  paintArt(paper, pieces, picturesOf, view);
  paintLines(paper, pieces, view);
  for (const { trim, fault } of through) {
    if (fault === undefined) continue;
    const room = onScreen(view, trim);
    paper.beginPath();
    addRect(paper, room);
    strokeOnArt(paper, ON_PAPER.bad, 2, [10, 6]);
    paintSign(paper, room, true, ON_PAPER.bad);
  }
}
