// Drawing what is said of pieces: which are chosen, which are wrong, how they are numbered.
import type { View } from '../../../shared/bench/view.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import type { ShownPiece } from '../model/shownPieces.ts';
import { ON_PAPER } from './inks.ts';
import { addRect, onScreen, type Paper, strokeOnArt, TINY_TYPE } from './pen.ts';

/** Whether a finding spoils the sheet, or only wants a look. */
export function spoils({ kind }: LayoutFinding): boolean {
  return kind !== 'bleed-clipped' && kind !== 'margins-unequal';
}

/** The chosen pieces: a heavy frame with a square at each corner. */
export function paintChosen(paper: Paper, pieces: readonly ShownPiece[], view: View): void {
  const frames = pieces.map((p) => onScreen(view, p.trim));
  paper.beginPath();
  for (const frame of frames) addRect(paper, frame);
  strokeOnArt(paper, ON_PAPER.accent, 3);
  paper.beginPath();
  for (const { x, y, w, h } of frames) {
    for (const [cx, cy] of [
      [x, y],
      [x + w, y],
      [x, y + h],
      [x + w, y + h],
    ] as const) {
      addRect(paper, { x: cx - 4, y: cy - 4, w: 8, h: 8 });
    }
  }
  paper.fillStyle = '#fff';
  paper.fill();
  paper.strokeStyle = ON_PAPER.accent;
  paper.lineWidth = 2;
  paper.stroke();
}

/** The partners that follow what is chosen: the same frame, broken. */
export function paintFollowing(paper: Paper, pieces: readonly ShownPiece[], view: View): void {
  paper.beginPath();
  for (const { trim } of pieces) addRect(paper, onScreen(view, trim));
  strokeOnArt(paper, ON_PAPER.accent, 2, [10, 6]);
}

/** What is wrong: a frame and slanting lines over the piece, and a sign: a cross where it spoils the sheet, else a point. */
export function paintFindings(
  paper: Paper,
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
    paper.beginPath();
    addRect(paper, room);
    strokeOnArt(paper, colour, grave ? 3 : 2, grave ? [] : [4, 3]);
    paintSign(paper, room, grave, colour);
  }
}

/** The sign stands in the upper right of its room, or in the middle of a small one. */
export function paintSign(
  paper: Paper,
  { x, y, w, h }: Rect<'screen'>,
  grave: boolean,
  colour: string,
): void {
  const r = Math.max(5, Math.min(11, w / 4, h / 4));
  const [cx, cy] = [Math.max(x + w / 2, x + w - r - 8), Math.min(y + h / 2, y + r + 8)];
  paper.beginPath();
  paper.arc(cx, cy, r, 0, 2 * Math.PI);
  paper.fillStyle = colour;
  paper.fill();
  paper.strokeStyle = '#fff';
  paper.lineWidth = 2;
  paper.stroke();
  paper.beginPath();
  const d = r * 0.4;
  if (grave) {
    paper.moveTo(cx - d, cy - d);
    paper.lineTo(cx + d, cy + d);
    paper.moveTo(cx + d, cy - d);
    paper.lineTo(cx - d, cy + d);
  } else {
    paper.moveTo(cx, cy - r * 0.55);
    paper.lineTo(cx, cy + r * 0.15);
    paper.moveTo(cx, cy + r * 0.45);
    paper.lineTo(cx, cy + r * 0.5);
  }
  paper.stroke();
}

/** The numbers by which words speak of positions, in the upper left where there is room for them. */
export function paintNumbers(paper: Paper, pieces: readonly ShownPiece[], view: View): void {
  for (const { trim, position } of pieces) {
    const { x, y, w, h } = onScreen(view, trim);
    if (Math.min(w, h) < 50) continue;
    const words = String(position + 1);
    paper.font = TINY_TYPE;
    const width = Math.ceil(paper.measureText(words).width) + 8;
    paper.fillStyle = 'rgb(255 255 255 / 88%)';
    paper.fillRect(Math.round(x) + 1, Math.round(y) + 1, width, 15);
    paper.fillStyle = ON_PAPER.dark;
    paper.textAlign = 'center';
    paper.textBaseline = 'middle';
    paper.fillText(words, Math.round(x) + 1 + width / 2, Math.round(y) + 9);
  }
}
