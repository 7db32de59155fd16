// The ink of the open job's art as it is known now: measured anew whenever the art is another.
import { useEffect, useState } from 'react';
import type { Job } from '../../shared/job/job.ts';
import { type KnownCoverage, MEASURING, measureCoverage } from '../desk/coverage.ts';
import { useJob } from '../state/store.ts';

export function useCoverage(): KnownCoverage {
  const job = useJob();
  const [known, setKnown] = useState(MEASURING);
  const art = artOf(job);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only other art makes other ink.
  useEffect(() => {
    let wanted = true;
    setKnown(MEASURING);
    void measureCoverage(job).then((measured) => {
      if (wanted) setKnown(measured);
    });
    return () => {
      wanted = false;
    };
  }, [art]);
  return known;
}

/** What the ink depends on: which art each face is printed from, and how much of it is placed. */
function artOf({ brief, art }: Job): string {
  return JSON.stringify([
    art.map(({ piece, face, sha256, trim }) => [piece, face, sha256, trim]),
    brief.pieces.map(({ name, bleed, front, back }) => [
      name,
      bleed.typed,
      front.page,
      front.rotate,
      back?.page,
      back?.rotate,
    ]),
  ]);
}
