// Drawing the pieces: their art as it will print, and the lines of trim, bleed and safe margin.
import { toScreen, type View } from '../../../shared/bench/view.ts';
import { layInto } from '../../../shared/geometry/lie.ts';
import { centre, intersection } from '../../../shared/geometry/rect.ts';
import type { Rect, Side, Size } from '../../../shared/geometry/space.ts';
import { chain, type Transform } from '../../../shared/geometry/transform.ts';
import type { ArtPicture } from '../../art-pictures/artPictures.ts';
import type { ShownPiece } from '../pieces/shownPieces.ts';
import { ON_PAPER } from './inks.ts';
import { addRect, onScreen, type Pen, SMALL_TYPE, strokeOnArt } from './pen.ts';

/** The pictures of a face: none while they are being drawn. */
export type PicturesOf = (piece: ShownPiece) => readonly ArtPicture[];

/** Pieces smaller than this on the screen, in px, are drawn without the lines inside and around them. */
const MIN_SIDE_FOR_LINES_PX = 44;

/** The pieces of which something is in the window. */
export function inWindow(pieces: readonly ShownPiece[], view: View, window: Size): readonly ShownPiece[] {
  const all: Rect<'screen'> = { x: 0, y: 0, ...window };
  return pieces.filter((p) => intersection(all, onScreen(view, p.bleed)) !== undefined);
}

export function paintArt(pen: Pen, pieces: readonly ShownPiece[], picturesOf: PicturesOf, view: View): void {
  for (const piece of pieces) {
    const pictures = picturesOf(piece);
    pen.beginPath();
    for (const area of piece.printed) {
      const { x, y, w, h } = onScreen(view, area);
      pen.rect(x, y, w, h);
    }
    if (pictures.length === 0) {
      pen.fillStyle = piece.face === undefined ? 'rgb(0 0 0 / 4%)' : 'rgb(0 0 0 / 12%)';
      pen.fill();
      if (piece.face !== undefined) nameFace(pen, piece, view);
      continue;
    }
    pen.save();
    pen.clip();
    layPictures(pen, pictures, chain(layInto<'piece', Side>(piece.trim, piece.head), toScreen<Side>(view)));
    pen.restore();
  }
}

/** Lays the pictures of a face where the transform takes the piece. */
export function layPictures(
  pen: Pen,
  pictures: readonly ArtPicture[],
  lay: Transform<'piece', 'screen'>,
): void {
  pen.transform(lay.a, lay.b, lay.c, lay.d, lay.e, lay.f);
  for (const { canvas, part } of pictures) {
    pen.save();
    pen.transform(1, 0, 0, -1, part.x, part.y + part.h);
    pen.drawImage(canvas, 0, 0, part.w, part.h);
    pen.restore();
  }
}

/** Trim: an unbroken line. Bleed: fine dots. Safe margin: short dashes. The head: a small wedge at its edge. */
export function paintLines(pen: Pen, pieces: readonly ShownPiece[], view: View): void {
  const large = pieces.filter(({ trim }) => Math.min(trim.w, trim.h) * view.zoom >= MIN_SIDE_FOR_LINES_PX);
  pen.beginPath();
  for (const { bleed } of large) addRect(pen, onScreen(view, bleed));
  strokeOnArt(pen, ON_PAPER.dark, 1, [1, 3]);
  pen.beginPath();
  for (const { safe } of large) addRect(pen, onScreen(view, safe));
  strokeOnArt(pen, ON_PAPER.dark, 1, [6, 5]);
  pen.beginPath();
  for (const { trim } of pieces) addRect(pen, onScreen(view, trim));
  strokeOnArt(pen, ON_PAPER.dark, 1);
  pen.beginPath();
  for (const piece of large) addWedge(pen, piece, view);
  strokeOnArt(pen, ON_PAPER.dark, 1);
  pen.fillStyle = ON_PAPER.dark;
  pen.fill();
}

/** A wedge on the edge of the trim where the head is, pointing outwards. */
function addWedge(pen: Pen, { trim, head }: ShownPiece, view: View): void {
  const { x, y, w, h } = onScreen(view, trim);
  const [cx, cy] = [x + w / 2, y + h / 2];
  const up = { 0: [0, -1], 90: [-1, 0], 180: [0, 1], 270: [1, 0] } as const;
  const [dx, dy] = up[head];
  const [ex, ey] = [cx + (dx * w) / 2, cy + (dy * h) / 2];
  pen.moveTo(ex - 5 * dy, ey - 5 * dx);
  pen.lineTo(ex + 6 * dx, ey + 6 * dy);
  pen.lineTo(ex + 5 * dy, ey + 5 * dx);
  pen.closePath();
}

/** What stands in the place of a picture that is not there: the piece and its face. */
function nameFace(pen: Pen, { piece, face, trim }: ShownPiece, view: View): void {
  const { x, y, w, h } = onScreen(view, trim);
  if (w < 50 || h < 24) return;
  const middle = centre({ x, y, w, h });
  pen.save();
  pen.beginPath();
  pen.rect(x + 2, y, w - 4, h);
  pen.clip();
  pen.font = SMALL_TYPE;
  pen.fillStyle = ON_PAPER.dark;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.fillText(`${piece}, ${face}`, middle.x, middle.y);
  pen.restore();
}
