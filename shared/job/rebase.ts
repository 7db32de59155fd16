// Moving a brief to another folder: the names of its art files changed so that they still mean the same files.
import type { Brief, Face } from './brief.ts';

/** The brief with every art file named as `rename` says. */
export function rebaseArt(brief: Brief, rename: (file: string) => string): Brief {
  const moved = (face: Face): Face => ({ ...face, file: rename(face.file) });
  return {
    ...brief,
    pieces: brief.pieces.map((piece) => ({
      ...piece,
      front: moved(piece.front),
      ...(piece.back === undefined ? {} : { back: moved(piece.back) }),
    })),
  };
}
