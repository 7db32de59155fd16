// The pictures of the piece in hand, as sharp as the screen shows it.
import { useMemo } from 'react';
import type { SeenFace } from '../art-pictures/artPictures.ts';
import { faceArtOf, printedPart } from '../art-pictures/faceArt.ts';
import type { PicturesOf } from '../sheet/paint/paintPieces.ts';
import { usePicturesOf, useShownFaces } from '../sheet/pieces/usePicturesOf.ts';
import { useJob } from '../state/store.ts';
import type { HeldPiece } from './cardInHand.ts';

export function usePicturesInHand(held: HeldPiece, zoom: number): PicturesOf {
  const job = useJob();
  const { front, behind } = held;
  const names = [front.printed, behind?.printed].flatMap((p) => (p?.face ? [`${p.face} ${p.piece}`] : []));
  const { brief, art } = job;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the names of the faces are all that matters of the piece.
  const faces = useMemo(
    () =>
      [front.printed, behind?.printed].flatMap((p): SeenFace[] => {
        const face = p?.face && faceArtOf({ brief, art }, p.piece, p.face);
        return face === undefined ? [] : [{ face, seen: printedPart(face), scale: zoom * devicePixelRatio }];
      }),
    [names.join('\n'), brief, art, zoom],
  );
  useShownFaces(faces);
  return usePicturesOf(job);
}
