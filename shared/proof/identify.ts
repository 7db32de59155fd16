// Finding out what lies at a position: what should be there is tried first, then everything else of the job.

import { alignFace, areaInView, type FaceAlignment, type Found, refineAffine } from './alignment.ts';
import { type ArtFace, type FacePictures, haveSameTrim, IDENTITY } from './artFaces.ts';
import { correlation, equalIn, isBlank } from './band.ts';
import type { Picture } from './picture.ts';
import { type FaceCandidate, type Orientation, rankCandidates } from './recognise.ts';

/** A face that lies some way round somewhere, and how far it agrees with what was found. */
export interface Identified extends FaceAlignment, Orientation {
  readonly is: 'face';
  readonly face: ArtFace;
}

/** What lies at a position: a face, nothing at all, or something unknown (`instead` of the face that should). */
export type Identity =
  | Identified
  | { readonly is: 'nothing' }
  | { readonly is: 'unknown'; readonly instead: FaceAlignment };

const UPRIGHT: Orientation = { mirrored: false, turned: 0 };
/** How alike art and print must be (their correlation) to be the same face, though something in it differs. */
const MIN_CORRELATION = 0.85;
/** How many candidates are tried at most. */
const MAX_TRIED = 12;

/** Whether a face lies as it should. */
export function isUpright({ mirrored, turned }: Orientation): boolean {
  return !mirrored && turned === 0;
}

/** What a proof knows: the faces of the job, their pictures, and the last mistake that was found with each of them. */
export interface ProofKnowledge {
  readonly faces: readonly ArtFace[];
  readonly facePictures: FacePictures;
  readonly mistakes: Map<ArtFace, { readonly picture: Picture; readonly identity: Identity }>;
}

/** Finds out what was found where `expected` should be. */
export function identify(found: Found, expected: ArtFace, known: ProofKnowledge): Identity {
  const picture = known.facePictures.pictureOf(expected, found.lie);
  const area = areaInView(found, IDENTITY);
  const inPlace: FaceAlignment = { placed: IDENTITY, picture, area, agrees: true };
  if (equalIn(found.picture, picture, area)) return { is: 'face', ...inPlace, ...UPRIGHT, face: expected };
  if (isBlank(found.picture, area)) return { is: 'nothing' };
  // One mistake is often made at every position alike.
  const before = known.mistakes.get(expected);
  if (before !== undefined && equalIn(found.picture, before.picture, area)) return before.identity;
  const moved = alignFace(found, expected, IDENTITY, 'translation', picture);
  if (moved.agrees) {
    return { is: 'face', ...refineAffine(found, expected, moved), ...UPRIGHT, face: expected };
  }
  const identity = recognise(found, expected, known) ?? { is: 'unknown', instead: inPlace };
  known.mistakes.set(expected, { picture: found.picture, identity });
  return identity;
}

/** The face of the job that was found, whichever way it lies; those that are likelier mistakes are looked at first. */
function recognise(
  found: Found,
  expected: ArtFace,
  { faces, facePictures }: ProofKnowledge,
): Identified | undefined {
  const rank = (face: ArtFace) => (face === expected ? 0 : face.piece === expected.piece ? 1 : 2);
  const fitting = faces
    .filter((face) => haveSameTrim(face.trim, expected.trim))
    .toSorted((a, b) => rank(a) - rank(b));
  return tryInTurn(found, expected, rankCandidates(found, fitting, facePictures.thumbnails));
}

/** The first candidate that agrees, else the one that is most alike, if any is. */
function tryInTurn(
  found: Found,
  expected: ArtFace,
  candidates: readonly FaceCandidate[],
): Identified | undefined {
  let best: Identified | undefined;
  let alike = MIN_CORRELATION;
  for (const { placed, face, mirrored, turned } of candidates.slice(0, MAX_TRIED)) {
    const mayDeform = face === expected && isUpright({ mirrored, turned });
    const moved = alignFace(found, face, placed, 'translation');
    const alignment = mayDeform && !moved.agrees ? alignFace(found, face, placed, 'affine') : moved;
    const identified: Identified = { is: 'face', ...alignment, mirrored, turned, face };
    if (alignment.agrees)
      return mayDeform ? { ...identified, ...refineAffine(found, face, alignment) } : identified;
    const likely = correlation(found.picture, alignment.picture, alignment.area);
    if (likely >= alike) [best, alike] = [identified, likely];
  }
  return best;
}
