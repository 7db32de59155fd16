// The art of the job, hung ready: each face upright, to be photographed as it would look wherever it was printed.
import type { Head } from '../geometry/head.ts';
import type { Size } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import { chain } from '../geometry/transform.ts';
import type { FaceName } from '../layout/position.ts';
import { type Grid, gridFor, lensOverPiece, pictureSize } from './grid.ts';
import type { FaceArt, FaceOf, ProofJob } from './job.ts';
import type { Picture } from './picture.ts';
import { RecentlyUsed } from './recentlyUsed.ts';
import { enlargeSight, type Lens, photographLying, type Sight, turnSight } from './sight.ts';

/** Where a piece is printed, in its own frame: pt from the middle of the trim, y up. This is its place. */
export const IN_PLACE: Lens = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** One face of a piece as the art shows it. */
export interface ArtFace extends FaceOf {
  /** The trim with the head up, in pt. */
  readonly trim: Size;
  readonly grid: Grid;
  /** The page of the art, upright, and the middle of the trim on it. */
  readonly sight: Sight;
  readonly middle: { readonly x: number; readonly y: number };
}

/** All faces of the job, in the order of its pieces, front before back. `pageOf` opens a page of the art. */
export function hangFaces(job: ProofJob, pageOf: (art: FaceArt) => Sight, dpi: number): readonly ArtFace[] {
  return job.pieces.flatMap((piece) => {
    const grid = gridFor(piece.trim, piece.bleed, dpi);
    const hang = (face: FaceName, art: FaceArt | undefined): readonly ArtFace[] => {
      if (art === undefined) return [];
      const sight = turnSight(enlargeSight(pageOf(art), art.userUnit ?? 1), art.rotate);
      const middle = { x: art.trim.x + art.trim.w / 2, y: art.trim.y + art.trim.h / 2 };
      return [{ piece: piece.name, face, trim: piece.trim, grid, sight, middle }];
    };
    return [...hang('front', piece.faces.front), ...hang('back', piece.faces.back)];
  });
}

/** Whether two faces have the same trim, upright or one of them on its side. */
export function fits(a: Size, b: Size): boolean {
  return (same(a.w, b.w) && same(a.h, b.h)) || (same(a.w, b.h) && same(a.h, b.w));
}

/** From the page of a face to the middle of its trim, in pt. */
export function toMiddle({ middle }: ArtFace): Lens {
  return { ...IN_PLACE, e: -middle.x, f: -middle.y };
}

/** The face as it looks when it is printed at `placed`, in the pixels of this grid; `lie` as for `photographLying`. */
export function photographFace(face: ArtFace, placed: Lens, grid: Grid, lie: Head): Picture {
  const lens = chain(chain(toMiddle(face), placed), lensOverPiece(grid));
  const { width, height } = pictureSize(grid, 0);
  return photographLying(face.sight, lens, width, height, lie);
}

/** As many pixels of pictures as are kept for the next position, about 200 MB of them. */
const MAX_PIXELS_KEPT = 64_000_000;

/** Keeps the pictures of faces in their place, so that a face that is placed 400 times is photographed once. */
export class Album {
  /** Faces seen small, for recognising. */
  readonly thumbs = new Map<ArtFace, Picture>();
  private readonly shown = new RecentlyUsed<Picture>(MAX_PIXELS_KEPT);

  /** The face in its place. */
  show(face: ArtFace, lie: Head): Picture {
    const { width, height } = pictureSize(face.grid, 0);
    return this.shown.get(JSON.stringify([face.piece, face.face, lie]), width * height, () =>
      photographFace(face, IN_PLACE, face.grid, lie),
    );
  }
}
