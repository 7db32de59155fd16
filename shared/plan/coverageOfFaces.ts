// How much of each face its inks cover, as it was measured, or a guess where it was not measured yet.
import type { FaceName } from '../layout/position.ts';
import type { Coverage } from './candidate.ts';

export interface FaceInkTotal {
  readonly piece: string;
  readonly face: FaceName;
  /** The sum of all inks, 0 to 4. */
  readonly total: number;
}

export type CoverageOfFaces = readonly FaceInkTotal[];

/** What is taken for a face that was not measured yet: as much ink as would cover it once. */
const GUESSED_COVERAGE = 1;

export function coverageFrom(faces: CoverageOfFaces): Coverage {
  const known = new Map(faces.map(({ piece, face, total }) => [`${face} ${piece}`, total]));
  return (piece, face) => known.get(`${face} ${piece}`) ?? GUESSED_COVERAGE;
}
