// The job: the brief, what was found in its art, and where the pieces lie. One immutable document.
import type { ReaderTurn } from '../geometry/head.ts';
import { type SheetEdges, usableArea } from '../geometry/sheet.ts';
import type { Rect, Size } from '../geometry/space.ts';
import { turnOf } from '../geometry/work.ts';
import type { Design } from '../layout/forms.ts';
import type { FaceName, Position } from '../layout/position.ts';
import { points } from '../units/length.ts';
import type { Brief, Face, Piece } from './brief.ts';

/** The version of the job file that this program writes. */
export const JOB_SCHEMA = 2;

/** A job as it is worked on. Every change gives a new one. */
export interface Job {
  readonly schema: typeof JOB_SCHEMA;
  readonly brief: Brief;
  /** What was found in the art of each face when it was last looked at. */
  readonly art: readonly FoundArt[];
  readonly arrangement: readonly Position[];
}

/** The art of one face as it was when the job was laid out. A file whose hash differs has changed since. */
export interface FoundArt {
  readonly piece: string;
  readonly face: FaceName;
  /** SHA-256 of the whole file, in hex. */
  readonly sha256: string;
  /** The trim on the page, turned so that its head is up, in pt from the lower left of its media box. */
  readonly trim: Rect<'art'>;
  /** In words, how the trim was found. */
  readonly said: string;
}

/** The sheet in pt. */
export function sheetOf(brief: Brief): { readonly size: Size; readonly unprintable: SheetEdges } {
  const { size, unprintable } = brief.sheet;
  return {
    size: { w: points(size[0]), h: points(size[1]) },
    unprintable: {
      lead: points(unprintable.lead),
      tail: points(unprintable.tail),
      left: points(unprintable.left),
      right: points(unprintable.right),
    },
  };
}

/** What can be printed on both sides, in pt on side 1: room for trims with their bleed. `undefined` where nothing is left. */
export function usableOf(brief: Brief): Rect<'side1'> | undefined {
  const { size, unprintable } = sheetOf(brief);
  return usableArea(size, unprintable, turnOf(brief.work));
}

/** A piece's trim in pt, head up. */
export function trimOf(piece: Piece): Size {
  return { w: points(piece.trim[0]), h: points(piece.trim[1]) };
}

/** What the forms need to know of each piece. */
export function designsOf(brief: Brief): readonly (Design & { readonly turned: ReaderTurn })[] {
  return brief.pieces.map((p) => ({
    name: p.name,
    bleed: points(p.bleed),
    turned: p.turned,
    hasBack: p.back !== undefined,
  }));
}

/** Every face of every piece that has art, in the order of the brief. */
export function facesOf(
  brief: Brief,
): readonly { readonly piece: Piece; readonly name: FaceName; readonly face: Face }[] {
  return brief.pieces.flatMap((piece) => [
    { piece, name: 'front' as const, face: piece.front },
    ...(piece.back === undefined ? [] : [{ piece, name: 'back' as const, face: piece.back }]),
  ]);
}
