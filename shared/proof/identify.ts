// Finding out what lies at a position: what should be there is tried first, then everything else of the job.
import { equalIn, isBlank, likeness } from './band.ts';
import { type Album, type ArtFace, fits, IN_PLACE } from './gallery.ts';
import { type Candidate, type Lie, rankCandidates } from './recognise.ts';
import { areaInView, type Found, type Settled, settle } from './settle.ts';

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
/** How many candidates are tried at most, and how much farther than the nearest they may be. */
const MOST_TRIED = 12;
const MUCH_FARTHER = 2;

/** Whether a face lies as it should. */
export function isUpright({ mirrored, turned }: Lie): boolean {
  return !mirrored && turned === 0;
}

/** Finds out what was found where `expected` should be. */
export function identify(found: Found, expected: ArtFace, faces: readonly ArtFace[], album: Album): Identity {
  const picture = album.show(expected, found.lie);
  const area = areaInView(found, IN_PLACE);
  const inPlace: Settled = { placed: IN_PLACE, picture, area, agrees: true };
  if (equalIn(found.picture, picture, area)) return { is: 'face', ...inPlace, ...UPRIGHT, face: expected };
  if (isBlank(found.picture, area)) return { is: 'nothing' };
  const moved = settle(found, expected, IN_PLACE, 'shift');
  if (moved.agrees) return { is: 'face', ...moved, ...UPRIGHT, face: expected };
  const fitting = faces.filter((face) => fits(face.trim, expected.trim));
  const candidates = rankCandidates(found, fitting);
  return tryInTurn(found, expected, candidates) ?? { is: 'unknown', instead: inPlace };
}

/** The first candidate that agrees, else the one that is most alike, if any is. */
function tryInTurn(
  found: Found,
  expected: ArtFace,
  candidates: readonly Candidate[],
): Identified | undefined {
  const farthest = MUCH_FARTHER * (candidates[0]?.distance ?? 0);
  let best: Identified | undefined;
  let alike = ALIKE;
  for (const { distance, placed, face, mirrored, turned } of candidates.slice(0, MOST_TRIED)) {
    if (distance > farthest) break;
    const mayBend = face === expected && isUpright({ mirrored, turned });
    for (const freedom of mayBend ? (['shift', 'affine'] as const) : (['shift'] as const)) {
      const settled = settle(found, face, placed, freedom);
      const identified: Identified = { is: 'face', ...settled, mirrored, turned, face };
      if (settled.agrees) return identified;
      const likely = likeness(found.picture, settled.picture, settled.area);
      if (likely >= alike) [best, alike] = [identified, likely];
    }
  }
  return best;
}
