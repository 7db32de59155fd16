// A side of the sheet as one page: its paper and all that is printed on it, as it is turned over.
import type { Backed } from '../../../shared/bench/backUp.ts';
import type { View } from '../../../shared/bench/view.ts';
import type { Size } from '../../../shared/geometry/space.ts';
import { ON_PAPER } from '../paint/inks.ts';
import { type PicturesOf, paintArt, paintLines } from '../paint/paintPieces.ts';
import { paintSign } from '../paint/paintSign.ts';
import { addRect, onScreen, type Pen, strokeOnArt } from '../paint/pen.ts';
import type { ShownPiece } from '../pieces/shownPieces.ts';

export interface PageParts {
  readonly sheet: Size;
  readonly pieces: readonly ShownPiece[];
  readonly picturesOf: PicturesOf;
  /** What is wrong behind pieces whose outlines show through the paper; none where the sheet is turned as it should be. */
  readonly through: readonly Backed[];
}

/** Paints the page at `zoom` px of the window to the pt of the sheet. */
export function paintPage(pen: Pen, parts: PageParts, zoom: number): void {
  const { sheet, pieces, picturesOf, through } = parts;
  const view: View = { x: 0, y: sheet.h * zoom, zoom };
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, sheet.w * zoom, sheet.h * zoom);
  paintArt(pen, pieces, picturesOf, view);
  paintLines(pen, pieces, view);
  for (const { trim, fault } of through) {
    if (fault === undefined) continue;
    const room = onScreen(view, trim);
    pen.beginPath();
    addRect(pen, room);
    strokeOnArt(pen, ON_PAPER.bad, 2, [10, 6]);
    paintSign(pen, room, true, ON_PAPER.bad);
  }
}
