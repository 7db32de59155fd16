// How much of each face its inks cover: asked of the host, which measures the art; until it has, a guess stands in.
import { inkCoverage } from '../../shared/ink/coverage.ts';
import type { Job } from '../../shared/job/job.ts';
import type { CoverageOfFaces } from '../../shared/plan/coverageOfFaces.ts';
import { host } from '../hostClient/host.ts';

export interface KnownCoverage {
  readonly faces: CoverageOfFaces;
  /** How it is known, in words. */
  readonly said: string;
}

const GUESS = 'Until it is known, each face is taken to be covered once.';
/** Until the host has answered. */
export const MEASURING: KnownCoverage = { faces: [], said: `The ink of the art is being measured. ${GUESS}` };

/** How much of each face its inks cover, as the host measures it, and how that is known. */
export async function measureCoverage(job: Job): Promise<KnownCoverage> {
  const measured = await host.ink.coverage({ job });
  if (!measured.ok) {
    return { faces: [], said: `${measured.fault.message} ${measured.fault.remedy} ${GUESS}` };
  }
  const faces = measured.value.map(({ piece, face, coverage }) => ({
    piece,
    face,
    total: inkCoverage(coverage),
  }));
  const said = faces.map(({ piece, face, total }) => `${piece}, ${face} ${Math.round(total * 100)} %`);
  return { faces, said: `Ink measured from the art, all inks together: ${said.join('; ')}.` };
}
