// The pictures of a job's faces for the canvases that draw them: another finder whenever a picture has come.
import { useEffect, useMemo, useReducer } from 'react';
import type { Job } from '../../../shared/job/job.ts';
import type { SeenFace } from '../../art-pictures/artPictures.ts';
import { artPictures } from '../../art-pictures/windowArt.ts';
import type { PicturesOf } from '../paint/paintPieces.ts';
import { picturesFinder } from './picturesFinder.ts';

export function usePicturesOf({ brief, art }: Pick<Job, 'brief' | 'art'>): PicturesOf {
  const [come, hear] = useReducer((count: number) => count + 1, 0);
  useEffect(() => artPictures.subscribe(hear), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a picture that has come is found by another finder.
  return useMemo(() => picturesFinder({ brief, art }, artPictures), [brief, art, come]);
}

/** Has these faces drawn as long as the component is on the screen; `undefined` leaves them as they are. */
export function useShownFaces(faces: readonly SeenFace[] | undefined): void {
  useEffect(() => {
    if (faces !== undefined) artPictures.show(faces);
  }, [faces]);
  useEffect(() => () => artPictures.show([]), []);
}
