// Finding the pictures of what lies on a side, for one state of the brief and its art.
import type { Job } from '../../../shared/job/job.ts';
import type { ArtPictures } from '../../art-pictures/artPictures.ts';
import { faceArtOf, type PlacedFaceArt } from '../../art-pictures/faceArt.ts';
import type { PicturesOf } from '../paint/paintPieces.ts';

export function picturesFinder(job: Pick<Job, 'brief' | 'art'>, pictures: ArtPictures): PicturesOf {
  const faces = new Map<string, PlacedFaceArt | undefined>();
  return ({ piece, face }) => {
    if (face === undefined) return [];
    const key = `${face} ${piece}`;
    if (!faces.has(key)) faces.set(key, faceArtOf(job, piece, face));
    const art = faces.get(key);
    return art === undefined ? [] : pictures.of(art);
  };
}
