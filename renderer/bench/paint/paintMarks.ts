// Drawing what is said of pieces: which are chosen, which are wrong, how they are numbered.
import type { View } from '../../../shared/bench/view.ts';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import { ON_PAPER } from '../../sheet/paint/inks.ts';
import { paintSign } from '../../sheet/paint/paintSign.ts';
import { addRect, onScreen, type Pen, strokeOnArt, TINY_TYPE } from '../../sheet/paint/pen.ts';
import type { ShownPiece } from '../../sheet/pieces/shownPieces.ts';

/** Whether a finding spoils the sheet, or only wants a look. */
export function spoils({ kind }: LayoutFinding): boolean {
  return kind !== 'bleed-clipped' && kind !== 'margins-unequal';
}

/** The chosen pieces: a heavy frame with a square at each corner. */
export function paintChosen(pen: Pen, pieces: readonly ShownPiece[], view: View): void {
  const frames = pieces.map((p) => onScreen(view, p.trim));
  pen.beginPath();
  for (const frame of frames) addRect(pen, frame);
  strokeOnArt(pen, ON_PAPER.accent, 3);
  pen.beginPath();
  for (const { x, y, w, h } of frames) {
    for (const [cx, cy] of [
      [x, y],
      [x + w, y],
      [x, y + h],
      [x + w, y + h],
    ] as const) {
      addRect(pen, { x: cx - 4, y: cy - 4, w: 8, h: 8 });
    }
  }
  pen.fillStyle = '#fff';
  pen.fill();
  pen.strokeStyle = ON_PAPER.accent;
  pen.lineWidth = 2;
  pen.stroke();
}

/** The partners that follow what is chosen: the same frame, broken. */
export function paintFollowing(pen: Pen, pieces: readonly ShownPiece[], view: View): void {
  pen.beginPath();
  for (const { trim } of pieces) addRect(pen, onScreen(view, trim));
  strokeOnArt(pen, ON_PAPER.accent, 2, [10, 6]);
}

/** What is wrong: a frame and slanting lines over the piece, and a sign: a cross where it spoils the sheet, else a point. */
export function paintFindings(
  pen: Pen,
  pieces: readonly ShownPiece[],
  findings: readonly LayoutFinding[],
  view: View,
): void {
  for (const piece of pieces) {
    const own = findings.filter((f) => f.positions.includes(piece.position));
    if (own.length === 0) continue;
    const grave = own.some(spoils);
    const colour = grave ? ON_PAPER.bad : ON_PAPER.ask;
    const room = onScreen(view, piece.trim);
    pen.beginPath();
    addRect(pen, room);
    strokeOnArt(pen, colour, grave ? 3 : 2, grave ? [] : [4, 3]);
    paintSign(pen, room, grave, colour);
  }
}

/** The numbers by which words speak of positions, in the upper left where there is room for them. */
export function paintNumbers(pen: Pen, pieces: readonly ShownPiece[], view: View): void {
  for (const { trim, position } of pieces) {
    const { x, y, w, h } = onScreen(view, trim);
    if (Math.min(w, h) < 50) continue;
    const words = String(position + 1);
    pen.font = TINY_TYPE;
    const width = Math.ceil(pen.measureText(words).width) + 8;
    pen.fillStyle = 'rgb(255 255 255 / 88%)';
    pen.fillRect(Math.round(x) + 1, Math.round(y) + 1, width, 15);
    pen.fillStyle = ON_PAPER.dark;
    pen.textAlign = 'center';
    pen.textBaseline = 'middle';
    pen.fillText(words, Math.round(x) + 1 + width / 2, Math.round(y) + 9);
  }
}
