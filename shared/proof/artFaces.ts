// The faces of the job as the art shows them: each upright, to be rendered as it would look wherever it was printed.
import type { Head } from '../geometry/head.ts';
import type { Size } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import { chain } from '../geometry/transform.ts';
import type { FaceName } from '../layout/position.ts';
import { gridFor, type PixelGrid, pictureSize, pieceToPicture } from './grid.ts';
import type { FaceArt, FaceOf, ProofJob } from './job.ts';
import { type Affine, type PageSource, renderLying, scaleSource, turnSource } from './pageSource.ts';
import type { Picture } from './picture.ts';
import { RecentlyUsed } from './recentlyUsed.ts';

/** Where a piece is printed, in its own frame: pt from the middle of the trim, y up. This is its place. */
export const IDENTITY: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** One face of a piece as the art shows it. */
export interface ArtFace extends FaceOf {
  /** The trim with the head up, in pt. */
  readonly trim: Size;
  readonly grid: PixelGrid;
  /** The page of the art, upright, and the middle of the trim on it. */
  readonly source: PageSource;
  readonly centre: { readonly x: number; readonly y: number };
}

/** All faces of the job, in the order of its pieces, front before back. `pageOf` opens a page of the art. */
export function artFacesOf(
  job: ProofJob,
  pageOf: (art: FaceArt) => PageSource,
  dpi: number,
): readonly ArtFace[] {
  return job.pieces.flatMap((piece) => {
    const grid = gridFor(piece.trim, piece.bleed, dpi);
    const faceOf = (face: FaceName, art: FaceArt | undefined): readonly ArtFace[] => {
      if (art === undefined) return [];
      const source = turnSource(scaleSource(pageOf(art), art.userUnit ?? 1), art.rotate);
      const centre = { x: art.trim.x + art.trim.w / 2, y: art.trim.y + art.trim.h / 2 };
      return [{ piece: piece.name, face, trim: piece.trim, grid, source, centre }];
    };
    return [...faceOf('front', piece.faces.front), ...faceOf('back', piece.faces.back)];
  });
}

/** Whether two faces have the same trim, upright or one of them on its side. */
export function haveSameTrim(a: Size, b: Size): boolean {
  return (same(a.w, b.w) && same(a.h, b.h)) || (same(a.w, b.h) && same(a.h, b.w));
}

/** From the page of a face to the middle of its trim, in pt. */
export function toTrimCentre({ centre }: ArtFace): Affine {
  return { ...IDENTITY, e: -centre.x, f: -centre.y };
}

/** The face as it looks when it is printed at `placed`, in the pixels of this grid; `lie` as for `renderLying`. */
export function renderFace(face: ArtFace, placed: Affine, grid: PixelGrid, lie: Head): Picture {
  const matrix = chain(chain(toTrimCentre(face), placed), pieceToPicture(grid));
  const { width, height } = pictureSize(grid, 0);
  return renderLying(face.source, matrix, width, height, lie);
}

/** As many pixels of pictures as are kept for the next position, about 200 MB of them. */
const MAX_PIXELS_KEPT = 64_000_000;

/** Keeps the pictures of faces in their place, so that a face that is placed 400 times is rendered once. */
export class FacePictures {
  /** Faces seen small, for recognising. */
  readonly thumbnails = new Map<ArtFace, Picture>();
  private readonly rendered = new RecentlyUsed<Picture>(MAX_PIXELS_KEPT);

  /** The face in its place. */
  pictureOf(face: ArtFace, lie: Head): Picture {
    const { width, height } = pictureSize(face.grid, 0);
    return this.rendered.get(JSON.stringify([face.piece, face.face, lie]), width * height, () =>
      renderFace(face, IDENTITY, face.grid, lie),
    );
  }
}
