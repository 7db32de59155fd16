// The page that a face is printed from, and where the piece lies on it.
import type { ArtHandle } from '../../shared/contract/handles.ts';
import { artOf } from '../../shared/contract/handles.ts';
import type { Head } from '../../shared/geometry/head.ts';
import { grow, wholeOf } from '../../shared/geometry/rect.ts';
import type { Rect } from '../../shared/geometry/space.ts';
import { chain, type Transform } from '../../shared/geometry/transform.ts';
import type { Job } from '../../shared/job/job.ts';
import type { FaceName } from '../../shared/layout/position.ts';
import type { ArtPage } from '../../shared/pdf/art/artPage.ts';
import { turnArt } from '../../shared/pdf/art/turnArt.ts';
import { points } from '../../shared/units/length.ts';

export interface PlacedFaceArt {
  readonly art: ArtHandle;
  /** From 1. */
  readonly page: number;
  /** How far the page is turned to bring its head up, in degrees counter-clockwise. */
  readonly rotate: Head;
  /** The trim on the turned page, and how far beyond it the art is printed; in pt. */
  readonly trim: Rect<'art'>;
  readonly bleed: number;
}

/** The art of a face, or `undefined` where there is none or nobody knows yet where its trim lies. */
export function faceArtOf(
  job: Pick<Job, 'brief' | 'art'>,
  pieceName: string,
  faceName: FaceName,
): PlacedFaceArt | undefined {
  const piece = job.brief.pieces.find((p) => p.name === pieceName);
  const face = piece?.[faceName];
  const found = job.art.find((a) => a.piece === pieceName && a.face === faceName);
  if (piece === undefined || face === undefined || found === undefined) return undefined;
  const { page, rotate } = face;
  return { art: artOf(face), page, rotate, trim: found.trim, bleed: points(piece.bleed) };
}

/** Two faces with the same key look the same, wherever they are placed. */
export function faceArtKey({ art, page, rotate, trim, bleed }: PlacedFaceArt): string {
  return [art, page, rotate, trim.x, trim.y, trim.w, trim.h, bleed].join(' ');
}

/** All that is printed of the piece, in pt from the lower left of its trim, head up. */
export function printedPart({ trim, bleed }: PlacedFaceArt): Rect<'piece'> {
  return grow(wholeOf<'piece'>({ w: trim.w, h: trim.h }), bleed);
}

/** From the page as its file counts to the piece. */
export function toPiece(face: PlacedFaceArt, page: ArtPage): Transform<'user', 'piece'> {
  const { a, b, c, d, e, f } = turnArt(page.size, face.rotate);
  const turned: Transform<'art', 'piece'> = { a, b, c, d, e: e - face.trim.x, f: f - face.trim.y };
  return chain(page.toArt, turned);
}
