// Drawing a page of the held piece: what its side prints there, cut along the trim and turned as it is held.
import { toScreen, type View } from '../../shared/bench/view.ts';
import type { Side } from '../../shared/geometry/space.ts';
import { chain, inverse, type Transform } from '../../shared/geometry/transform.ts';
import { type PicturesOf, paintArt } from '../sheet/paint/paintPieces.ts';
import type { Pen } from '../sheet/paint/pen.ts';
import type { ShownPiece, SideUp } from '../sheet/pieces/shownPieces.ts';
import { type HeldPage, type HeldPiece, intoHand } from './cardInHand.ts';

/** Paints a page at `zoom` px of the window to the pt; `piecesOn` gives all that a side prints. No page is blank paper. */
export function paintCard(
  pen: Pen,
  { size }: HeldPiece,
  page: HeldPage | undefined,
  piecesOn: (side: SideUp) => readonly ShownPiece[],
  picturesOf: PicturesOf,
  zoom: number,
): void {
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, size.w * zoom, size.h * zoom);
  if (page === undefined) return;
  const view: View = { x: 0, y: size.h * zoom, zoom };
  const see = toScreen<Side>(view);
  const toCanvas: Transform<'piece', 'screen'> = { a: zoom, b: 0, c: 0, d: -zoom, e: 0, f: size.h * zoom };
  const m = chain(inverse(see), chain(intoHand(page), toCanvas));
  pen.transform(m.a, m.b, m.c, m.d, m.e, m.f);
  paintArt(pen, piecesOn(page.side), picturesOf, view);
}
