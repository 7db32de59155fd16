import { describe, expect, it } from 'vitest';
import { apply } from '../../../shared/geometry/transform.ts';
import {
  Album,
  type ArtFace,
  fits,
  hangFaces,
  IN_PLACE,
  photographFace,
} from '../../../shared/proof/gallery.ts';
import { gridFor, WORKING_DPI } from '../../../shared/proof/grid.ts';
import type { FaceArt, ProofJob } from '../../../shared/proof/job.ts';
import type { Lens, Sight } from '../../../shared/proof/sight.ts';
import { sightBy } from '../../kit/sightBy.ts';

/** A sight that only remembers how it was photographed. */
function watched(size = { w: 100, h: 100 }): { sight: Sight; lenses: Lens[] } {
  const lenses: Lens[] = [];
  const photograph: Sight['photograph'] = (lens, width, height) => {
    lenses.push(lens);
    return { width, height, pixels: new Uint8Array() };
  };
  return { sight: sightBy(size, photograph), lenses };
}

function faceOf(sight: Sight, name = 'Poster', trim = { w: 2000, h: 3000 }): ArtFace {
  return {
    piece: name,
    face: 'front',
    trim,
    grid: gridFor(trim, 0, WORKING_DPI),
    sight,
    middle: { x: 1, y: 2 },
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
    const faces = hangFaces(job, ({ page }) => watched({ w: 80, h: 50 + page }).sight, 150);
    expect(faces.map(({ piece, face, sight: { size } }) => [piece, face, size.w, size.h])).toEqual([
      ['A', 'front', 80, 51],
      ['A', 'back', 52, 80],
      ['B', 'front', 160, 106],
    ]);
    expect(faces[0]?.middle).toEqual({ x: 39, y: 32 });
    expect(faces[1]?.grid).toEqual(gridFor({ w: 60, h: 40 }, 9, 150));
  });

  it('are photographed with the middle of the trim in the middle of the picture, when they are in their place', () => {
    const { sight, lenses } = watched();
    const face = faceOf(sight, 'Card', { w: 72, h: 36 });
    const picture = photographFace(face, IN_PLACE, face.grid, 0);
    expect([picture.width, picture.height]).toEqual([154, 79]);
    expect(apply(lenses[0]!, { x: 1, y: 2 })).toEqual({ x: 77, y: 39.5 });
  });

  it('are photographed where they are supposed to be printed', () => {
    const { sight, lenses } = watched();
    const face = faceOf(sight, 'Card', { w: 72, h: 36 });
    photographFace(face, { ...IN_PLACE, e: 7.2, f: 3.6 }, face.grid, 0);
    const { x, y } = apply(lenses[0]!, { x: 1, y: 2 });
    expect(x).toBeCloseTo(77 + 15, 9);
    expect(y).toBeCloseTo(39.5 - 7.5, 9);
  });

  it('fit where another has the same trim, upright or on its side', () => {
    expect(fits({ w: 60, h: 40 }, { w: 60.009, h: 39.991 })).toBe(true);
    expect(fits({ w: 60, h: 40 }, { w: 40, h: 60 })).toBe(true);
    expect(fits({ w: 60, h: 40 }, { w: 60, h: 41 })).toBe(false);
    expect(fits({ w: 60, h: 40 }, { w: 41, h: 60 })).toBe(false);
    expect(fits({ w: 60, h: 40 }, { w: 40, h: 40 })).toBe(false);
  });
});

describe('The album', () => {
  it('has a face photographed once for each way it lies', () => {
    const { sight, lenses } = watched();
    const album = new Album();
    const face = faceOf(sight);
    const first = album.show(face, 0);
    expect(album.show(face, 0)).toBe(first);
    album.show({ ...face, face: 'back' }, 0);
    album.show(face, 180);
    album.show(face, 0);
    expect(lenses).toHaveLength(3);
  });

  it('lets go of the longest unused pictures when it is full', () => {
    const album = new Album();
    const sights = Array.from({ length: 12 }, () => watched());
    const faces = sights.map(({ sight }, i) => faceOf(sight, `Poster ${i}`));
    // Ten pictures of 6 million pixels have room.
    for (const face of faces.slice(0, 10)) album.show(face, 0);
    album.show(faces[0]!, 0);
    album.show(faces[10]!, 0);
    album.show(faces[0]!, 0);
    album.show(faces[2]!, 0);
    expect(sights.map(({ lenses }) => lenses.length)).toEqual([1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0]);
    album.show(faces[1]!, 0);
    expect(sights[1]!.lenses).toHaveLength(2);
    album.show(faces[0]!, 0);
    expect(sights[0]!.lenses).toHaveLength(1);
  });
});
