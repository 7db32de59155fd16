import { describe, expect, it } from 'vitest';
import { apply } from '../../../shared/geometry/transform.ts';
import {
  type ArtFace,
  artFacesOf,
  FacePictures,
  haveSameTrim,
  IDENTITY,
  renderFace,
} from '../../../shared/proof/artFaces.ts';
import { gridFor, WORKING_DPI } from '../../../shared/proof/grid.ts';
import type { FaceArt, ProofJob } from '../../../shared/proof/job.ts';
import type { Affine, PageSource } from '../../../shared/proof/pageSource.ts';
import { sourceBy } from '../../kit/sourceBy.ts';

/** A source that only remembers how it was rendered. */
function watched(size = { w: 100, h: 100 }): { source: PageSource; matrices: Affine[] } {
  const matrices: Affine[] = [];
  const render: PageSource['render'] = (matrix, width, height) => {
    matrices.push(matrix);
    return { width, height, pixels: new Uint8Array() };
  };
  return { source: sourceBy(size, render), matrices };
}

function faceOf(source: PageSource, name = 'Poster', trim = { w: 2000, h: 3000 }): ArtFace {
  return {
    piece: name,
    face: 'front',
    trim,
    grid: gridFor(trim, 0, WORKING_DPI),
    source: source,
    centre: { x: 1, y: 2 },
  };
}

describe('The faces of a job', () => {
  const art = (page: number, rotate: FaceArt['rotate'] = 0): FaceArt => ({
    art: 'art.pdf',
    page,
    rotate,
    trim: { x: 9, y: 12, w: 60, h: 40 },
  });

  it('hang in the order of the pieces, upright, each with the middle of its trim', () => {
    const job: ProofJob = {
      sheet: { w: 500, h: 500 },
      turn: 'side-to-side',
      positions: [],
      pieces: [
        {
          name: 'A',
          trim: { w: 60, h: 40 },
          bleed: 9,
          turned: 'head-to-head',
          faces: { front: art(1), back: art(2, 90) },
        },
        {
          name: 'B',
          trim: { w: 60, h: 40 },
          bleed: 0,
          turned: 'head-to-head',
          faces: { front: { ...art(3), userUnit: 2 } },
        },
      ],
    };
    const faces = artFacesOf(job, ({ page }) => watched({ w: 80, h: 50 + page }).source, 150);
    expect(faces.map(({ piece, face, source: { size } }) => [piece, face, size.w, size.h])).toEqual([
      ['A', 'front', 80, 51],
      ['A', 'back', 52, 80],
      ['B', 'front', 160, 106],
    ]);
    expect(faces[0]?.centre).toEqual({ x: 39, y: 32 });
    expect(faces[1]?.grid).toEqual(gridFor({ w: 60, h: 40 }, 9, 150));
  });

  it('are rendered with the middle of the trim in the middle of the picture, when they are in their place', () => {
    const { source, matrices } = watched();
    const face = faceOf(source, 'Card', { w: 72, h: 36 });
    const picture = renderFace(face, IDENTITY, face.grid, 0);
    expect([picture.width, picture.height]).toEqual([154, 79]);
    expect(apply(matrices[0]!, { x: 1, y: 2 })).toEqual({ x: 77, y: 39.5 });
  });

  it('are rendered where they are supposed to be printed', () => {
    const { source, matrices } = watched();
    const face = faceOf(source, 'Card', { w: 72, h: 36 });
    renderFace(face, { ...IDENTITY, e: 7.2, f: 3.6 }, face.grid, 0);
    const { x, y } = apply(matrices[0]!, { x: 1, y: 2 });
    expect(x).toBeCloseTo(77 + 15, 9);
    expect(y).toBeCloseTo(39.5 - 7.5, 9);
  });

  it('fit where another has the same trim, upright or on its side', () => {
    expect(haveSameTrim({ w: 60, h: 40 }, { w: 60.009, h: 39.991 })).toBe(true);
    expect(haveSameTrim({ w: 60, h: 40 }, { w: 40, h: 60 })).toBe(true);
    expect(haveSameTrim({ w: 60, h: 40 }, { w: 60, h: 41 })).toBe(false);
    expect(haveSameTrim({ w: 60, h: 40 }, { w: 41, h: 60 })).toBe(false);
    expect(haveSameTrim({ w: 60, h: 40 }, { w: 40, h: 40 })).toBe(false);
  });
});

describe('The facePictures', () => {
  it('has a face rendered once for each way it lies', () => {
    const { source, matrices } = watched();
    const facePictures = new FacePictures();
    const face = faceOf(source);
    const first = facePictures.pictureOf(face, 0);
    expect(facePictures.pictureOf(face, 0)).toBe(first);
    facePictures.pictureOf({ ...face, face: 'back' }, 0);
    facePictures.pictureOf(face, 180);
    facePictures.pictureOf(face, 0);
    expect(matrices).toHaveLength(3);
  });

  it('lets go of the longest unused pictures when it is full', () => {
    const facePictures = new FacePictures();
    const sources = Array.from({ length: 12 }, () => watched());
    const faces = sources.map(({ source }, i) => faceOf(source, `Poster ${i}`));
    // Ten pictures of 6 million pixels have room.
    for (const face of faces.slice(0, 10)) facePictures.pictureOf(face, 0);
    facePictures.pictureOf(faces[0]!, 0);
    facePictures.pictureOf(faces[10]!, 0);
    facePictures.pictureOf(faces[0]!, 0);
    facePictures.pictureOf(faces[2]!, 0);
    expect(sources.map(({ matrices }) => matrices.length)).toEqual([1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0]);
    facePictures.pictureOf(faces[1]!, 0);
    expect(sources[1]!.matrices).toHaveLength(2);
    facePictures.pictureOf(faces[0]!, 0);
    expect(sources[0]!.matrices).toHaveLength(1);
  });
});
