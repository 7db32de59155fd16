// The ways in which the size of a page may be read when it gives no trim of its own.
import type { Rect, Size } from '../../geometry/space.ts';
import { showLength } from '../../units/show.ts';
import { alike, fits, middleOf } from './fit.ts';
import type { TurnedPage } from './turnArt.ts';

/** The size of a piece, in pt: its trim with the head up, and the bleed on every side. */
export interface PieceSize {
  readonly trim: Size;
  readonly bleed: number;
}

/** One way to understand a page. */
export interface Reading {
  readonly trim: Rect<'art'>;
  readonly said: string;
}

/** The size of a piece with its bleeds. */
export function withBleeds({ trim, bleed }: PieceSize): Size {
  return { w: trim.w + 2 * bleed, h: trim.h + 2 * bleed };
}

/** Every way in which the size of the page agrees with the brief; readings that mean the same trim count once. */
export function readPageSize(page: TurnedPage, piece: PieceSize): readonly Reading[] {
  const boxes = alike(page.crop, page.media)
    ? [{ box: page.crop, is: 'The page', alone: ', without bleed' }]
    : [
        { box: page.media, is: 'The media box', alone: ', without bleed' },
        { box: page.crop, is: 'The crop box', alone: '' },
      ];
  const readings = boxes.flatMap(({ box, is, alone }): Reading[] => {
    const trim = middleOf(box, piece.trim);
    if (bleeds(box, piece)) {
      const bleed = `${showLength(piece.bleed, 'in')} (${showLength(piece.bleed, 'mm')})`;
      return [{ trim, said: `${is} is the trim and a bleed of ${bleed} on every side.` }];
    }
    return fits(box, piece.trim) ? [{ trim, said: `${is} is the trim${alone}.` }] : [];
  });
  return readings.filter((one, i) => readings.findIndex((other) => alike(one.trim, other.trim)) === i);
}

/** Whether a box has the size of the piece with its bleeds, and is no nearer to its trim alone. */
function bleeds(box: Size, piece: PieceSize): boolean {
  return piece.bleed > 0 && fits(box, withBleeds(piece)) && box.w > piece.trim.w + piece.bleed;
}
