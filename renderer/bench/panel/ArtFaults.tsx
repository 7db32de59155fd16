// Faces whose art cannot be shown, and why.
import { useSyncExternalStore } from 'react';
import type { Fault } from '../../../shared/fault/result.ts';
import { facesOf, type Job } from '../../../shared/job/job.ts';
import { faceArtOf } from '../../art-pictures/faceArt.ts';
import { artPictures } from '../../art-pictures/windowArt.ts';
import { FaultNote } from '../../controls/Note.tsx';
import { useSettledJob } from '../useSettledJob.ts';

export function ArtFaults() {
  const job = useSettledJob();
  const told = useSyncExternalStore(artPictures.subscribe, () =>
    faultsOf(job)
      .map((f) => f.message)
      .join('\n'),
  );
  if (told === '') return null;
  return (
    <section className="block" aria-label="Art that cannot be shown">
      <h2>Art that cannot be shown</h2>
      {faultsOf(job).map((fault) => (
        <FaultNote key={fault.message} fault={fault} />
      ))}
    </section>
  );
}

/** One for each kind of trouble, however many faces have it. */
function faultsOf(job: Job): readonly Fault[] {
  const faults = facesOf(job.brief).flatMap(({ piece, name }) => {
    const face = faceArtOf(job, piece.name, name);
    return (face && artPictures.faultOf(face)) ?? [];
  });
  return faults.filter((fault, i) => faults.findIndex((other) => other.message === fault.message) === i);
}
