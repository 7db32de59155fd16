// Finding out what lies at a position: what should be there is tried first, then everything else of the job.
import { equalIn, isBlank, likeness } from './band.ts';
import { type Album, type ArtFace, fits, IN_PLACE } from './gallery.ts';
import type { Picture } from './picture.ts';
import { type Candidate, type Lie, rankCandidates } from './recognise.ts';
import { areaInView, bend, type Found, type Settled, settle } from './settle.ts';

/** A face that lies some way round somewhere, and how far it agrees with what was found. */
export interface Identified extends Settled, Lie {
  readonly is: 'face';
  readonly face: ArtFace;
}

/** What lies at a position: a face, nothing at all, or something unknown (`instead` of the face that should). */
export type Identity =
  | Identified
  | { readonly is: 'nothing' }
  | { readonly is: 'unknown'; readonly instead: Settled };

const UPRIGHT: Lie = { mirrored: false, turned: 0 };
/** How alike art and print must be (their correlation) to be the same face, though something in it differs. */
const ALIKE = 0.85;
/** How many candidates are tried at most. */
const MOST_TRIED = 12;

/** Whether a face lies as it should. */
export function isUpright({ mirrored, turned }: Lie): boolean {
  return !mirrored && turned === 0;
}

/** What a proof knows: the faces of the job, their pictures, and the last mistake that was found with each of them. */
export interface Known {
  readonly faces: readonly ArtFace[];
  readonly album: Album;
  readonly mistakes: Map<ArtFace, { readonly picture: Picture; readonly identity: Identity }>;
}

/** Finds out what was found where `expected` should be. */
export function identify(found: Found, expected: ArtFace, known: Known): Identity {
  const picture = known.album.show(expected, found.lie);
  const area = areaInView(found, IN_PLACE);
  const inPlace: Settled = { placed: IN_PLACE, picture, area, agrees: true };
  if (equalIn(found.picture, picture, area)) return { is: 'face', ...inPlace, ...UPRIGHT, face: expected };
  if (isBlank(found.picture, area)) return { is: 'nothing' };
  // One mistake is often made at every position alike.
  const before = known.mistakes.get(expected);
  if (before !== undefined && equalIn(found.picture, before.picture, area)) return before.identity;
  const moved = settle(found, expected, IN_PLACE, 'shift', picture);
  if (moved.agrees) {
    return { is: 'face', ...bend(found, expected, moved), ...UPRIGHT, face: expected };
  }
  const identity = recognise(found, expected, known) ?? { is: 'unknown', instead: inPlace };
  known.mistakes.set(expected, { picture: found.picture, identity });
  return identity;
}

/** The face of the job that was found, whichever way it lies; those that are likelier mistakes are looked at first. */
function recognise(found: Found, expected: ArtFace, { faces, album }: Known): Identified | undefined {
  const oddness = (face: ArtFace) => (face === expected ? 0 : face.piece === expected.piece ? 1 : 2);
  const fitting = faces
    .filter((face) => fits(face.trim, expected.trim))
    .toSorted((a, b) => oddness(a) - oddness(b));
  return tryInTurn(found, expected, rankCandidates(found, fitting, album.thumbs));
}

/** The first candidate that agrees, else the one that is most alike, if any is. */
function tryInTurn(
  found: Found,
  expected: ArtFace,
  candidates: readonly Candidate[],
): Identified | undefined {
  let best: Identified | undefined;
  let alike = ALIKE;
  for (const { placed, face, mirrored, turned } of candidates.slice(0, MOST_TRIED)) {
    const mayBend = face === expected && isUpright({ mirrored, turned });
    const moved = settle(found, face, placed, 'shift');
    const settled = mayBend && !moved.agrees ? settle(found, face, placed, 'affine') : moved;
    const identified: Identified = { is: 'face', ...settled, mirrored, turned, face };
    if (settled.agrees) return mayBend ? { ...identified, ...bend(found, face, settled) } : identified;
    const likely = likeness(found.picture, settled.picture, settled.area);
    if (likely >= alike) [best, alike] = [identified, likely];
  }
  return best;
}
