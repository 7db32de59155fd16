// How much of each face its inks cover, and how that is known.
import type { CoverageOfFaces } from './coverageOfFaces.ts';

export interface KnownCoverage {
  readonly faces: CoverageOfFaces;
  readonly said: string;
}

const GUESS: KnownCoverage = { faces: [], said: 'The art is taken to be covered once with ink.' };

export function useCoverage(): KnownCoverage {
  return GUESS;
}
