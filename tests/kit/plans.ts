// Plans for tests: a brief and a library laid out, priced with the same coverage everywhere.
import type { Brief } from '../../shared/job/brief.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import type { PlanCandidate } from '../../shared/plan/candidate.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import type { WhatIf } from '../../shared/plan/whatIf.ts';
import { libraryWith } from './libraries.ts';

/** The ink that the tests' faces take, all inks together. */
export const COVERED = 1.5;
export const coverage = () => COVERED;

export function briefOf(written: unknown): Brief {
  const read = readBrief(written);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}

/** Every candidate of a brief in a library with some of it changed, the cheapest first. */
export function planned(
  written: unknown,
  changes: object = {},
  whatIf: WhatIf = {},
): readonly PlanCandidate[] {
  const library = libraryWith(changes);
  return costCandidates(layOutCandidates(briefOf(written), library), library, coverage, whatIf);
}

/** The one candidate that is worked and laid like this. */
export function only(
  candidates: readonly PlanCandidate[],
  like: (one: PlanCandidate) => boolean,
): PlanCandidate {
  const found = candidates.filter(like);
  const [first] = found;
  if (first === undefined || found.length > 1) throw new Error(`${found.length} candidates are like that`);
  return first;
}
