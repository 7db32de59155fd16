// The pictures of the piece in hand, as sharp as the screen shows it.
import { useEffect, useMemo } from 'react';
import type { SeenFace } from '../art-pictures/artPictures.ts';
import { faceArtOf, printedPart } from '../art-pictures/faceArt.ts';
import { artPictures } from '../art-pictures/windowArt.ts';
import { picturesFinder } from '../bench/model/picturesFinder.ts';
import type { PicturesOf } from '../bench/paint/paintPieces.ts';
import { useJob } from '../state/store.ts';
import type { HeldPiece } from './cardInHand.ts';

export function usePicturesInHand(held: HeldPiece, zoom: number, redraw: () => void): PicturesOf {
  const { brief, art } = useJob();
  const { front, behind } = held;
  const names = [front.printed, behind?.printed].flatMap((p) => (p?.face ? [`${p.face} ${p.piece}`] : []));
  const wanted = names.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the names of the faces are all that matters of the piece.
  useEffect(() => {
    const faces = [front.printed, behind?.printed].flatMap((p): SeenFace[] => {
      const face = p?.face && faceArtOf({ brief, art }, p.piece, p.face);
      return face === undefined ? [] : [{ face, seen: printedPart(face), scale: zoom * devicePixelRatio }];
    });
    artPictures.show(faces);
    return artPictures.subscribe(redraw);
  }, [wanted, brief, art, zoom, redraw]);
  return useMemo(() => picturesFinder({ brief, art }, artPictures), [brief, art]);
}
